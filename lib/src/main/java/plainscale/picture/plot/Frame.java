package plainscale.picture.plot;

import java.util.ArrayList;
import java.util.List;
import plainscale.magnitude.Writing;
import plainscale.picture.Box;
import plainscale.picture.Point;
import plainscale.picture.Shade;
import plainscale.picture.Shape;
import plainscale.picture.Stroke;
import plainscale.picture.TextRole;
import plainscale.picture.TextStyle;
import plainscale.picture.TextStyle.Anchor;
import plainscale.picture.TextStyle.Weight;
import plainscale.picture.TextWidth;
import plainscale.picture.Theme;

/** The axes around an area: lines, ticks with fine lines across, numbers, titles. */
record Frame(Area area, Writing writing) {
  static final TextStyle NUMBER = TextStyle.centred(TextRole.SCALE, 16, Weight.NORMAL, Shade.SOFT);
  static final TextStyle TITLE = TextStyle.centred(TextRole.LABEL, 17, Weight.NORMAL, Shade.INK);

  /** The most numbers on an axis. */
  static final int MOST_ACROSS = 6;

  static final int MOST_UP = 6;
  private static final double TICK = 6;
  private static final double AIR = 5;
  private static final double HALF_DIGIT = 0.36;
  private static final Stroke LINE = Stroke.solid(Shade.INK, 1.5);
  private static final Stroke FINE = Stroke.solid(Shade.BAND, 1);

  /** The room that the numbers of an upright axis take left of it. */
  static double left(Axis up, Writing writing) {
    return up.ticks(MOST_UP, writing).stream()
            .mapToDouble(tick -> TextWidth.of(tick.label(), NUMBER))
            .max()
            .orElse(0)
        + TICK
        + AIR;
  }

  /** The room that numbers and title of the lower axis take, or its ticks alone. */
  static double below(boolean titled) {
    return titled ? TICK + AIR + 1.35 * (NUMBER.size() + TITLE.size()) : TICK;
  }

  /** What lies behind the series. */
  List<Shape> behind() {
    Box box = area.box();
    List<Shape> lines = new ArrayList<>();
    for (Axis.Tick tick : area.across().ticks(MOST_ACROSS, writing)) {
      double x = area.x(tick.value());
      lines.add(line(x, box.y(), x, box.bottom(), FINE));
    }
    for (Axis.Tick tick : area.up().ticks(MOST_UP, writing)) {
      double y = area.y(tick.value());
      lines.add(line(box.x(), y, box.right(), y, FINE));
    }
    return lines;
  }

  private static Shape line(double x1, double y1, double x2, double y2, Stroke stroke) {
    return new Shape.Line(new Point(x1, y1), new Point(x2, y2), stroke);
  }

  /** The axes; numbers and title of the lower one only if {@code titled}. */
  List<Shape> front(boolean titled) {
    Box box = area.box();
    List<Shape> shapes = new ArrayList<>();
    shapes.add(line(box.x(), box.y(), box.x(), box.bottom(), LINE));
    shapes.add(line(box.x(), box.bottom(), box.right(), box.bottom(), LINE));
    lower(shapes, titled);
    upright(shapes);
    return shapes;
  }

  private void lower(List<Shape> shapes, boolean titled) {
    Box box = area.box();
    double end = Double.NEGATIVE_INFINITY;
    double baseline = box.bottom() + TICK + AIR + 0.78 * NUMBER.size();
    for (Axis.Tick tick : area.across().ticks(MOST_ACROSS, writing)) {
      double x = area.x(tick.value());
      shapes.add(line(x, box.bottom(), x, box.bottom() + TICK, LINE));
      Shape.Text text = new Shape.Text(new Point(x, baseline), tick.label(), NUMBER);
      boolean fits = text.box().x() > end + AIR && text.box().right() < Theme.WIDTH;
      if (titled && !tick.label().isEmpty() && fits) {
        shapes.add(text);
        end = text.box().right();
      }
    }
    if (titled) {
      Point place = new Point(box.x() + box.width() / 2, baseline + 1.35 * TITLE.size());
      shapes.add(new Shape.Text(place, area.across().title(), TITLE));
    }
  }

  private void upright(List<Shape> shapes) {
    Box box = area.box();
    double end = Double.POSITIVE_INFINITY;
    for (Axis.Tick tick : area.up().ticks(MOST_UP, writing)) {
      double y = area.y(tick.value());
      shapes.add(line(box.x() - TICK, y, box.x(), y, LINE));
      Point place = new Point(box.x() - TICK - AIR, y + HALF_DIGIT * NUMBER.size());
      Shape.Text text = new Shape.Text(place, tick.label(), NUMBER.at(Anchor.END));
      if (!tick.label().isEmpty() && text.box().bottom() < end) {
        shapes.add(text);
        end = text.box().y();
      }
    }
  }
}
