package plainscale.picture.field;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import plainscale.field.Frame;
import plainscale.magnitude.Writing;
import plainscale.picture.Box;
import plainscale.picture.Canvas;
import plainscale.picture.Point;
import plainscale.picture.Shade;
import plainscale.picture.Shape;
import plainscale.picture.Stroke;
import plainscale.picture.Symbol;
import plainscale.picture.TextRole;
import plainscale.picture.TextStyle;
import plainscale.picture.TextStyle.Anchor;
import plainscale.picture.TextStyle.Weight;
import plainscale.picture.TextWidth;
import plainscale.picture.Theme;
import plainscale.picture.plot.Axis;

/** The room of a map with its axes; a metre is as long across as upwards. */
final class MapPaper {
  static final TextStyle NUMBER = TextStyle.centred(TextRole.SCALE, 16, Weight.NORMAL, Shade.SOFT);
  static final TextStyle TITLE = TextStyle.centred(TextRole.LABEL, 17, Weight.NORMAL, Shade.INK);
  static final double TICK = 6;
  static final double AIR = 5;
  private static final double HALF_DIGIT = 0.36;
  private static final double HIGHEST = 540;
  private static final double RIGHT = 14;
  private static final int MOST = 8;
  private static final Stroke LINE = Stroke.solid(Shade.INK, 1.5);

  private final Frame frame;
  private final Measure length;
  private final Axis across;
  private final Axis up;
  private final Writing writing;
  private final Box box;
  private final double scale;

  /** From {@code top} downwards, as wide as the picture allows. */
  MapPaper(Frame frame, double top, Writing writing) {
    this.frame = frame;
    this.writing = writing;
    this.length = Measure.length(frame, writing);
    this.across = axis("x", frame.left(), frame.right());
    this.up = axis("y", frame.bottom(), frame.top());
    double numbers = TICK + AIR + widest();
    double room = Canvas.RIGHT - Canvas.LEFT - RIGHT - numbers;
    this.scale = Math.min(room / frame.width(), HIGHEST / frame.height());
    double height = frame.height() * scale;
    this.box = new Box(Canvas.LEFT + numbers, top, frame.width() * scale, height);
  }

  private Axis axis(String symbol, double low, double high) {
    return new Axis(length.over(Symbol.of(symbol)), length.in(low), length.in(high), false);
  }

  private double widest() {
    return up.ticks(MOST, writing).stream()
        .mapToDouble(tick -> TextWidth.of(tick.label(), NUMBER))
        .max()
        .orElse(0);
  }

  Box box() {
    return box;
  }

  Measure length() {
    return length;
  }

  /** The place in the picture; what lies outside by rounding is brought to the edge. */
  Point at(double x, double y) {
    double px = box.x() + (x - frame.left()) * scale;
    double py = box.bottom() - (y - frame.bottom()) * scale;
    return new Point(
        Math.max(box.x(), Math.min(box.right(), px)),
        Math.max(box.y(), Math.min(box.bottom(), py)));
  }

  Point at(Vector2D place) {
    return at(place.getX(), place.getY());
  }

  double pixels(double metres) {
    return metres * scale;
  }

  List<Point> curve(List<Vector2D> places) {
    return Thinning.of(places.stream().map(this::at).toList());
  }

  /** Where the axes end, title and all. */
  double bottom() {
    return box.bottom() + TICK + AIR + 1.35 * (NUMBER.size() + TITLE.size());
  }

  /** The title of the upright axis stands above its end. */
  static double above() {
    return 1.35 * TITLE.size();
  }

  List<Shape> axes() {
    List<Shape> shapes = new ArrayList<>();
    shapes.add(line(box.x(), box.y(), box.x(), box.bottom()));
    shapes.add(line(box.x(), box.bottom(), box.right(), box.bottom()));
    lower(shapes);
    upright(shapes);
    return shapes;
  }

  private static Shape line(double x1, double y1, double x2, double y2) {
    return new Shape.Line(new Point(x1, y1), new Point(x2, y2), LINE);
  }

  private void lower(List<Shape> shapes) {
    double end = Double.NEGATIVE_INFINITY;
    double baseline = box.bottom() + TICK + AIR + 0.78 * NUMBER.size();
    for (Axis.Tick tick : across.ticks(MOST, writing)) {
      double x = box.x() + box.width() * across.at(tick.value());
      shapes.add(line(x, box.bottom(), x, box.bottom() + TICK));
      Shape.Text text = new Shape.Text(new Point(x, baseline), tick.label(), NUMBER);
      if (text.box().x() > end + AIR && text.box().right() < Theme.WIDTH && text.box().x() > 0) {
        shapes.add(text);
        end = text.box().right();
      }
    }
    double middle = Math.max(box.x() + box.width() / 2, Canvas.LEFT + TITLE.size() * 2);
    Point place = new Point(middle, baseline + 1.35 * TITLE.size());
    shapes.add(new Shape.Text(place, across.title(), TITLE));
  }

  private void upright(List<Shape> shapes) {
    double end = Double.POSITIVE_INFINITY;
    for (Axis.Tick tick : up.ticks(MOST, writing)) {
      double y = box.bottom() - box.height() * up.at(tick.value());
      shapes.add(line(box.x() - TICK, y, box.x(), y));
      Point place = new Point(box.x() - TICK - AIR, y + HALF_DIGIT * NUMBER.size());
      Shape.Text text = new Shape.Text(place, tick.label(), NUMBER.at(Anchor.END));
      boolean below = text.box().bottom() < box.bottom() + TICK;
      if (text.box().bottom() < end && below) {
        shapes.add(text);
        end = text.box().y();
      }
    }
    Point head = new Point(Canvas.LEFT, box.y() - HALF_DIGIT * TITLE.size() - AIR);
    shapes.add(new Shape.Text(head, up.title(), TITLE.at(Anchor.START)));
  }
}
