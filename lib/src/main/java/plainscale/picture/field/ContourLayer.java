package plainscale.picture.field;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plainscale.field.Contour;
import plainscale.field.Polyline;
import plainscale.picture.Labels;
import plainscale.picture.Point;
import plainscale.picture.Shade;
import plainscale.picture.Shape;
import plainscale.picture.Stroke;
import plainscale.picture.TextRole;
import plainscale.picture.TextStyle;
import plainscale.picture.TextStyle.Weight;

/** Equipotentials: dashed above zero, dotted below, zero solid; numbers where there is room. */
final class ContourLayer {
  private static final TextStyle NUMBER =
      TextStyle.centred(TextRole.SCALE, 16, Weight.NORMAL, Shade.SOFT).withHalo();
  private static final double MIDDLE = 0.36;
  private static final int PLACES = 9;

  /** A line shorter than this, in pixels, gets no number. */
  private static final double SHORTEST = 100;

  private static final int MOST_NUMBERS = 2;

  /** Numbers stand at least so far from one another, in pixels. */
  private static final double APART = 7;

  private final MapPaper paper;
  private final Measure potential;
  private final double step;

  ContourLayer(MapPaper paper, Measure potential, double step) {
    this.paper = paper;
    this.potential = potential;
    this.step = step;
  }

  List<Shape> lines(List<Contour> contours) {
    List<Shape> shapes = new ArrayList<>();
    for (Contour contour : contours) {
      Stroke stroke = stroke(contour.level());
      for (Polyline line : contour.lines()) {
        shapes.add(new Shape.Curve(points(line), stroke));
      }
    }
    return shapes;
  }

  private Stroke stroke(double level) {
    if (Math.abs(level) < step / 2) {
      return Stroke.solid(Shade.LINE, 1.6);
    }
    return level > 0 ? Stroke.dashed(Shade.LINE, 1.2) : Stroke.dotted(Shade.PALE, 1.4);
  }

  private List<Point> points(Polyline line) {
    List<Point> points = new ArrayList<>(paper.curve(line.points()));
    if (line.closed()) {
      points.add(points.get(0));
    }
    return points;
  }

  /** The longest lines of each level first, so that each level is named if it can be. */
  void label(List<Contour> contours, Labels labels) {
    for (Contour contour : contours) {
      contour.lines().stream()
          .map(this::points)
          .filter(points -> length(points) >= SHORTEST)
          .sorted(Comparator.comparingDouble(ContourLayer::length).reversed())
          .limit(MOST_NUMBERS)
          .forEach(points -> label(contour.level(), points, labels));
    }
  }

  private void label(double level, List<Point> points, Labels labels) {
    String number = Math.abs(level) < step / 2 ? "0" : potential.number(level);
    List<Shape.Text> places = new ArrayList<>();
    for (int i = 0; i < PLACES; i++) {
      // From near the middle outwards, a little past it so that symmetric lines do not meet.
      double share = 0.5 + (i % 2 == 0 ? 1 : -1) * (i + 0.6) * 0.9 / (2 * PLACES);
      Point at = along(points, share * length(points));
      places.add(
          new Shape.Text(new Point(at.x(), at.y() + MIDDLE * NUMBER.size()), number, NUMBER));
    }
    labels.putIfFree(number, places, APART);
  }

  static double length(List<Point> points) {
    double sum = 0;
    for (int i = 1; i < points.size(); i++) {
      sum += distance(points.get(i - 1), points.get(i));
    }
    return sum;
  }

  private static double distance(Point a, Point b) {
    return Math.hypot(a.x() - b.x(), a.y() - b.y());
  }

  /** The point at a distance along a curve. */
  static Point along(List<Point> points, double distance) {
    double left = distance;
    for (int i = 1; i < points.size(); i++) {
      Point from = points.get(i - 1);
      Point to = points.get(i);
      double piece = distance(from, to);
      if (left <= piece && piece > 0) {
        double share = left / piece;
        return new Point(
            from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()));
      }
      left -= piece;
    }
    return points.get(points.size() - 1);
  }
}
