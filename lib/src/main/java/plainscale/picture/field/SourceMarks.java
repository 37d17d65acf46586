package plainscale.picture.field;

import java.util.ArrayList;
import java.util.List;
import plainscale.field.Chart;
import plainscale.field.Footprint;
import plainscale.field.Nature;
import plainscale.field.Source;
import plainscale.picture.Box;
import plainscale.picture.Point;
import plainscale.picture.Shade;
import plainscale.picture.Shape;
import plainscale.picture.Stroke;

/**
 * The sources on a map: positive charges dark with a plus, negative ones light with a minus, masses
 * dark; lines and plates as bars with such signs, spheres with their outline.
 */
final class SourceMarks {
  private static final double RADIUS = 9;
  private static final double SIGN = 5;
  private static final double BAR = 7;
  private static final int AROUND = 48;
  private static final double BETWEEN_SIGNS = 44;

  private final Chart chart;
  private final MapPaper paper;
  private final List<Shape> shapes = new ArrayList<>();
  private final List<Box> boxes = new ArrayList<>();

  SourceMarks(Chart chart, MapPaper paper) {
    this.chart = chart;
    this.paper = paper;
    for (Source source : chart.configuration().sources()) {
      source.footprints(chart.frame()).forEach(this::draw);
    }
  }

  List<Shape> shapes() {
    return shapes;
  }

  /** Where no text goes. */
  List<Box> boxes() {
    return boxes;
  }

  private void draw(Footprint print) {
    boolean positive = print.amount() > 0;
    Point from = paper.at(print.from());
    Point to = paper.at(print.to());
    double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
    if (length > 0) {
      bar(from, to, positive);
    }
    if (print.radius() > 0) {
      outline(print);
    }
    int signs = (int) Math.max(1, Math.rint(length / BETWEEN_SIGNS));
    for (int i = 0; i < signs; i++) {
      double share = (i + 0.5) / signs;
      dot(
          new Point(from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y())),
          positive);
    }
  }

  private void bar(Point from, Point to, boolean positive) {
    shapes.add(new Shape.Line(from, to, Stroke.solid(Shade.INK, BAR)));
    if (!positive) {
      shapes.add(new Shape.Line(from, to, Stroke.solid(Shade.GROUND, BAR - 3)));
    }
  }

  private void outline(Footprint print) {
    List<Point> around = new ArrayList<>();
    boolean whole = true;
    for (int i = 0; i <= AROUND; i++) {
      double angle = 2 * Math.PI * i / AROUND;
      double x = print.from().getX() + print.radius() * Math.cos(angle);
      double y = print.from().getY() + print.radius() * Math.sin(angle);
      boolean inside =
          x >= chart.frame().left()
              && x <= chart.frame().right()
              && y >= chart.frame().bottom()
              && y <= chart.frame().top();
      if (inside) {
        around.add(paper.at(x, y));
      } else {
        close(around);
        around = new ArrayList<>();
        whole = false;
      }
    }
    close(around);
    if (whole && chart.nature() == Nature.GRAVITATIONAL) {
      boxes.add(around(paper.at(print.from()), RADIUS));
    }
  }

  private void close(List<Point> around) {
    if (around.size() > 1) {
      shapes.add(new Shape.Curve(around, Stroke.solid(Shade.INK, 3)));
    }
  }

  private void dot(Point at, boolean positive) {
    boolean mass = chart.nature() == Nature.GRAVITATIONAL;
    double radius = mass ? RADIUS - 2 : RADIUS;
    Point inside =
        new Point(
            Math.max(radius, at.x()), Math.max(radius, at.y())); // a dot at the edge stays whole
    shapes.add(new Shape.Discs(List.of(inside), radius, Shade.INK));
    if (!mass && !positive) {
      shapes.add(new Shape.Discs(List.of(inside), radius - 2, Shade.GROUND));
    }
    if (!mass) {
      Shade shade = positive ? Shade.GROUND : Shade.INK;
      stroke(inside, SIGN, 0, shade);
      if (positive) {
        stroke(inside, 0, SIGN, shade);
      }
    }
    boxes.add(around(inside, radius));
  }

  private void stroke(Point at, double dx, double dy, Shade shade) {
    shapes.add(
        new Shape.Line(
            new Point(at.x() - dx, at.y() - dy),
            new Point(at.x() + dx, at.y() + dy),
            Stroke.solid(shade, 2.2)));
  }

  private static Box around(Point at, double radius) {
    return new Box(at.x() - radius, at.y() - radius, 2 * radius, 2 * radius);
  }
}
