package plainscale.field;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** What all sources ask of the numbers they are made from. */
final class Checks {
  private static final double ROUNDING = 1e-12;

  private Checks() {}

  /** Two lengths that differ by no more than rounding, on the scale given. */
  static boolean same(double a, double b, double scale) {
    return Math.abs(a - b) <= ROUNDING * scale;
  }

  static void finite(double number, String what) {
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException(what + " must be a finite number, not " + number + ".");
    }
  }

  static void finite(Vector3D place, String what) {
    if (place.isNaN() || place.isInfinite()) {
      throw new IllegalArgumentException(what + " must have finite coordinates.");
    }
  }

  static void positive(double number, String what) {
    finite(number, what);
    if (number <= 0) {
      throw new IllegalArgumentException(what + " must be greater than zero, not " + number + ".");
    }
  }

  /** The direction of a vector as a unit vector. */
  static Vector3D unit(Vector3D direction, String what) {
    finite(direction, what);
    if (direction.getNorm() == 0) {
      throw new IllegalArgumentException(what + " needs a direction; it has length zero.");
    }
    return direction.normalize();
  }
}
