package plainscale.picture.field;

import plainscale.picture.Point;

/**
 * A central projection in which upright lines stay upright: the picture's plane stands upright, the
 * eye is above and in front of its middle. Across and deep are in widths of the ground, up in the
 * same; the ground is one wide and {@code depth} deep.
 */
record Perspective(double centre, double bottom, double scale) {
  private static final double DISTANCE = 1.75;
  private static final double EYE = 1.25;

  /** So that the front edge is that wide in pixels and stands at that height. */
  static Perspective of(double left, double width, double bottom) {
    return new Perspective(left + width / 2, bottom, width * DISTANCE);
  }

  /** {@code across} from −½ to ½, {@code deep} from 0 at the front. */
  Point at(double across, double deep, double up) {
    double far = DISTANCE + deep;
    double horizon = bottom - scale * EYE / DISTANCE;
    return new Point(centre + scale * across / far, horizon + scale * (EYE - up) / far);
  }
}
