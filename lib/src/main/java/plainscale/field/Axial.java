package plainscale.field;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** A place as seen from the centre of a thing that is round about an axis. */
record Axial(double along, double off, Vector3D axis, Vector3D outward) {
  private static final double PARALLEL = 1e-9;

  static Axial of(Vector3D centre, Vector3D axis, Vector3D at) {
    Vector3D seen = at.subtract(centre);
    double along = seen.dotProduct(axis);
    Vector3D across = seen.subtract(along, axis);
    double off = across.getNorm();
    // On the axis any direction across serves: what multiplies it is zero there.
    Vector3D outward = off == 0 ? axis.orthogonal() : across.scalarMultiply(1 / off);
    return new Axial(along, off, axis, outward);
  }

  Vector3D vector(double alongAxis, double outwards) {
    return new Vector3D(alongAxis, axis, off == 0 ? 0 : outwards, outward);
  }

  /** The ends of the diameter in which the plane z = 0 cuts a circle that stands upright on it. */
  static List<Vector3D> diameter(Vector3D centre, Vector3D axis, double radius) {
    Vector3D along = axis.crossProduct(Vector3D.PLUS_K).normalize();
    return List.of(centre.subtract(radius, along), centre.add(radius, along));
  }

  /** The circle lies in the plane z = 0 or parallel to it. */
  static boolean isFlat(Vector3D axis) {
    return axis.crossProduct(Vector3D.PLUS_K).getNorm() < PARALLEL;
  }

  /** The circle stands upright on the plane z = 0. */
  static boolean isUpright(Vector3D axis) {
    return Math.abs(axis.getZ()) < PARALLEL;
  }
}
