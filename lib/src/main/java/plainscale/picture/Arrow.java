package plainscale.picture;

import java.util.ArrayList;
import java.util.List;

/** A line with a filled head at its end; the head shrinks with a short line. */
public final class Arrow {
  private static final double HEAD = 12;
  private static final double HALF_WIDTH = 0.42;
  private static final double MOST_OF_LENGTH = 0.6;

  private Arrow() {}

  /** The shapes of an arrow with a head of the usual size. */
  public static List<Shape> of(Point from, Point to, Stroke stroke) {
    return of(from, to, stroke, HEAD);
  }

  /** The shapes of an arrow whose head is as long as that, or shorter; none for no length. */
  public static List<Shape> of(Point from, Point to, Stroke stroke, double head) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double length = Math.hypot(dx, dy);
    if (length == 0) {
      return List.of();
    }
    double size = Math.min(head, MOST_OF_LENGTH * length);
    double ux = dx / length;
    double uy = dy / length;
    Point neck = new Point(to.x() - size * ux, to.y() - size * uy);
    double half = HALF_WIDTH * size;
    List<Shape> shapes = new ArrayList<>();
    shapes.add(new Shape.Line(from, neck, stroke));
    shapes.add(
        new Shape.Polygon(
            List.of(
                to,
                new Point(neck.x() - half * uy, neck.y() + half * ux),
                new Point(neck.x() + half * uy, neck.y() - half * ux)),
            stroke.shade()));
    return shapes;
  }
}
