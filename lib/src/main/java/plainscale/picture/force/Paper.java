package plainscale.picture.force;

import java.util.ArrayList;
import java.util.List;
import plainscale.picture.Box;
import plainscale.picture.Point;
import plainscale.picture.Shade;
import plainscale.picture.Shape;
import plainscale.picture.Stroke;

/** A piece of squared paper; the dot lies on a crossing of its lines. */
record Paper(double left, double top, int across, int down, Point dot) {
  /** The side of a box in pixels. */
  static final double BOX = 18;

  private static final Stroke FINE = Stroke.solid(Shade.BAND, 1);
  private static final double RADIUS = 4.5;

  /** Paper of so many boxes; the dot stands so many boxes from its left upper corner. */
  static Paper of(Point corner, int across, int down, int dotAcross, int dotDown) {
    Point dot = new Point(corner.x() + dotAcross * BOX, corner.y() + dotDown * BOX);
    return new Paper(corner.x(), corner.y(), across, down, dot);
  }

  Box box() {
    return new Box(left, top, across * BOX, down * BOX);
  }

  /** So many boxes to the right of the dot and up from it. */
  Point at(double right, double up) {
    return new Point(dot.x() + right * BOX, dot.y() - up * BOX);
  }

  List<Shape> lines() {
    Box box = box();
    List<Shape> lines = new ArrayList<>();
    for (int i = 0; i <= across; i++) {
      double x = left + i * BOX;
      lines.add(new Shape.Line(new Point(x, top), new Point(x, box.bottom()), FINE));
    }
    for (int i = 0; i <= down; i++) {
      double y = top + i * BOX;
      lines.add(new Shape.Line(new Point(left, y), new Point(box.right(), y), FINE));
    }
    return lines;
  }

  Shape disc() {
    return new Shape.Discs(List.of(dot), RADIUS, Shade.INK);
  }

  /** The room that the disc takes. */
  Box discBox() {
    return new Box(dot.x() - RADIUS, dot.y() - RADIUS, 2 * RADIUS, 2 * RADIUS);
  }
}
