package plainscale.picture.plot;

import java.util.ArrayList;
import java.util.List;
import plainscale.picture.Box;
import plainscale.picture.Point;
import plainscale.picture.Shade;
import plainscale.picture.Shape;
import plainscale.picture.Stroke;

/** The shapes of series in their area. */
record SeriesShapes(Area area) implements Series.Visitor<List<Shape>> {
  private static final double RADIUS = 4;
  private static final double HALF = 4;
  private static final double CAP = 3.5;
  private static final Stroke BAR = Stroke.solid(Shade.SOFT, 1.3);
  private static final Stroke MARK = Stroke.solid(Shade.ACCENT, 2);
  private static final Stroke EDGE = Stroke.solid(Shade.SOFT, 1.3);

  @Override
  public List<Shape> points(Series.Points points) {
    List<Shape> shapes = new ArrayList<>();
    List<Point> places = new ArrayList<>();
    for (Series.Spot spot : points.spots()) {
      if (area.shows(spot.x(), spot.y())) {
        shapes.addAll(errorBars(spot));
        places.add(area.at(spot.x(), spot.y()));
      }
    }
    shapes.addAll(marks(places, points.mark()));
    return shapes;
  }

  private List<Shape> errorBars(Series.Spot s) {
    List<Shape> bars = new ArrayList<>();
    double x = area.x(s.x());
    double y = area.y(s.y());
    if (s.uy() > 0) {
      double top = area.clampY(s.y() + s.uy());
      double bottom = area.clampY(s.y() - s.uy());
      bars.add(line(x, bottom, x, top));
      bars.add(line(x - CAP, top, x + CAP, top));
      bars.add(line(x - CAP, bottom, x + CAP, bottom));
    }
    if (s.ux() > 0) {
      double left = area.clampX(s.x() - s.ux());
      double right = area.clampX(s.x() + s.ux());
      bars.add(line(left, y, right, y));
      bars.add(line(left, y - CAP, left, y + CAP));
      bars.add(line(right, y - CAP, right, y + CAP));
    }
    return bars;
  }

  private static Shape line(double x1, double y1, double x2, double y2) {
    return new Shape.Line(new Point(x1, y1), new Point(x2, y2), BAR);
  }

  /** Marks that differ by form, so that series can be told apart without colours. */
  static List<Shape> marks(List<Point> places, Series.Mark mark) {
    if (places.isEmpty()) {
      return List.of();
    }
    return switch (mark) {
      case DISC -> List.of(new Shape.Discs(places, RADIUS, Shade.ACCENT));
      case RING ->
          List.of(
              new Shape.Discs(places, RADIUS, Shade.INK),
              new Shape.Discs(places, RADIUS - 1.8, Shade.GROUND));
      case SQUARE ->
          places.stream()
              .map(p -> new Box(p.x() - HALF, p.y() - HALF, 2 * HALF, 2 * HALF))
              .map(box -> (Shape) new Shape.Rectangle(box, Shade.SOFT, 0))
              .toList();
      case CROSS -> places.stream().flatMap(p -> cross(p).stream()).toList();
    };
  }

  private static List<Shape> cross(Point p) {
    return List.of(
        new Shape.Line(
            new Point(p.x() - HALF, p.y() - HALF), new Point(p.x() + HALF, p.y() + HALF), MARK),
        new Shape.Line(
            new Point(p.x() - HALF, p.y() + HALF), new Point(p.x() + HALF, p.y() - HALF), MARK));
  }

  @Override
  public List<Shape> curve(Series.Curve curve) {
    return area.inside(curve.spots()).stream()
        .map(points -> (Shape) new Shape.Curve(points, curve.stroke()))
        .toList();
  }

  @Override
  public List<Shape> band(Series.Band band) {
    List<Point> edge = new ArrayList<>();
    band.lower().forEach(s -> edge.add(new Point(area.clampX(s.x()), area.clampY(s.y()))));
    for (int i = band.upper().size() - 1; i >= 0; i--) {
      Series.Spot s = band.upper().get(i);
      edge.add(new Point(area.clampX(s.x()), area.clampY(s.y())));
    }
    return List.of(new Shape.Polygon(edge, Shade.BAND));
  }

  @Override
  public List<Shape> bars(Series.Bars bars) {
    List<Shape> shapes = new ArrayList<>();
    for (int i = 0; i < bars.heights().size(); i++) {
      double left = area.clampX(bars.edges().get(i));
      double right = area.clampX(bars.edges().get(i + 1));
      double top = area.clampY(bars.heights().get(i));
      double bottom = area.clampY(0);
      Box box = new Box(left, Math.min(top, bottom), right - left, Math.abs(bottom - top));
      shapes.add(new Shape.Rectangle(box, Shade.BAND, 0));
      shapes.add(outline(box));
    }
    return shapes;
  }

  private static Shape outline(Box box) {
    return new Shape.Curve(
        List.of(
            new Point(box.x(), box.bottom()),
            new Point(box.x(), box.y()),
            new Point(box.right(), box.y()),
            new Point(box.right(), box.bottom())),
        EDGE);
  }

  @Override
  public List<Shape> level(Series.Level level) {
    Box box = area.box();
    Point from =
        level.upright()
            ? new Point(area.clampX(level.value()), box.bottom())
            : new Point(box.x(), area.clampY(level.value()));
    Point to =
        level.upright()
            ? new Point(area.clampX(level.value()), box.y())
            : new Point(box.right(), area.clampY(level.value()));
    return List.of(new Shape.Line(from, to, level.stroke()));
  }
}
