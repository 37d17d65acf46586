package plainscale.picture.field;

import java.util.ArrayList;
import java.util.List;
import plainscale.field.Arrows;
import plainscale.field.FieldLine;
import plainscale.field.FieldLines;
import plainscale.picture.Arrow;
import plainscale.picture.Point;
import plainscale.picture.Shade;
import plainscale.picture.Shape;
import plainscale.picture.Stroke;

/** Field lines with arrow heads, or a grid of arrows. */
final class ArrowLayer {
  private static final Stroke LINE = Stroke.solid(Shade.SOFT, 1.4);
  private static final double HEAD = 9;
  private static final double HALF_WIDTH = 3.6;
  private static final double SHORTEST = 22;
  private static final double LONG = 260;
  private static final double FOR_DIRECTION = 3;
  private static final double LEAST_ARROW = 1.5;

  private ArrowLayer() {}

  /** The lines, each with a head in its middle, a long one with two. */
  static List<Shape> lines(FieldLines lines, MapPaper paper) {
    List<Shape> shapes = new ArrayList<>();
    List<Shape> heads = new ArrayList<>();
    for (FieldLine line : lines.lines()) {
      List<Point> points = paper.curve(line.points());
      shapes.add(new Shape.Curve(points, LINE));
      double length = ContourLayer.length(points);
      if (length > LONG) {
        heads.add(head(points, length / 3));
        heads.add(head(points, 2 * length / 3));
      } else if (length > SHORTEST) {
        heads.add(head(points, length / 2));
      }
    }
    shapes.addAll(heads);
    return shapes;
  }

  private static Shape head(List<Point> points, double at) {
    Point before = ContourLayer.along(points, at - FOR_DIRECTION);
    Point after = ContourLayer.along(points, at + FOR_DIRECTION);
    Point here = ContourLayer.along(points, at);
    double length = Math.hypot(after.x() - before.x(), after.y() - before.y());
    double ux = length == 0 ? 1 : (after.x() - before.x()) / length;
    double uy = length == 0 ? 0 : (after.y() - before.y()) / length;
    Point tip = new Point(here.x() + HEAD / 2 * ux, here.y() + HEAD / 2 * uy);
    Point back = new Point(here.x() - HEAD / 2 * ux, here.y() - HEAD / 2 * uy);
    return new Shape.Polygon(
        List.of(
            tip,
            new Point(back.x() - HALF_WIDTH * uy, back.y() + HALF_WIDTH * ux),
            new Point(back.x() + HALF_WIDTH * uy, back.y() - HALF_WIDTH * ux)),
        Shade.SOFT);
  }

  /**
   * Arrows centred on their places, as long as the root of the strength; full strength fills a
   * square of the grid, more is cut to that and drawn thicker.
   */
  static List<Shape> grid(Arrows arrows, MapPaper paper) {
    List<Shape> shapes = new ArrayList<>();
    double longest = paper.pixels(arrows.square());
    for (Arrows.Vector vector : arrows.vectors()) {
      double share = Math.sqrt(vector.strength() / arrows.full());
      boolean cut = share > 1;
      double half = longest * Math.min(1, share) / 2;
      if (arrows.full() > 0 && 2 * half >= LEAST_ARROW) {
        Point at = paper.at(vector.x(), vector.y());
        double dx = half * vector.across() / vector.strength();
        double dy = -half * vector.up() / vector.strength();
        Stroke stroke = Stroke.solid(cut ? Shade.ACCENT : Shade.SOFT, cut ? 3 : 1.4);
        shapes.addAll(
            Arrow.of(
                new Point(at.x() - dx, at.y() - dy),
                new Point(at.x() + dx, at.y() + dy),
                stroke,
                HEAD));
      }
    }
    return shapes;
  }
}
