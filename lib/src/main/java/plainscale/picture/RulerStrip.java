package plainscale.picture;

import java.util.ArrayList;
import java.util.List;
import plainscale.magnitude.PowerOfTen;
import plainscale.magnitude.Words;
import plainscale.picture.TextStyle.Anchor;

/**
 * The body of an upright ruler: its ground, the powers of ten with their ticks at the right edge,
 * and a lane at the left for the arrow of the distance.
 */
record RulerStrip(PowerAxis axis, double left, double top) {
  /** The room for the names of the powers. */
  static final double NAMES = 120;

  private static final double END = 18;
  private static final double LANE = 26;
  private static final double TICK = 9;
  private static final double LONG_TICK = 16;
  private static final double AIR = 7;
  private static final double LEAST_LABEL = 40;
  private static final double ARROW = 10;

  /** Half the height of a digit, from the middle of a label down to its baseline, in em. */
  private static final double HALF_DIGIT = 0.36;

  static double width(PowerAxis axis) {
    double label = Math.max(labelWidth(axis.first()), labelWidth(axis.last()));
    return LANE + Math.max(LEAST_LABEL, label) + AIR + LONG_TICK;
  }

  private static double labelWidth(long power) {
    return TextWidth.of(PowerOfTen.power(power), Theme.SCALE);
  }

  double right() {
    return left + width(axis);
  }

  double bottom() {
    return top + axis.length() + 2 * END;
  }

  /** Where a power of ten stands: upwards is more. */
  double y(double power) {
    return bottom() - END - axis.at(power);
  }

  /** Where a whole power stands; powers of any use here are exact as doubles. */
  private double yOf(long power) {
    return y((double) power);
  }

  /** The ticks and the powers at the edge. */
  List<Shape> shapes() {
    List<Shape> shapes = new ArrayList<>();
    axis.ticks().forEach(n -> shapes.add(tick(n, TICK, 1)));
    axis.labelled().forEach(n -> shapes.add(tick(n, LONG_TICK, 1.5)));
    axis.labelled().forEach(n -> shapes.add(power(n)));
    shapes.add(
        new Shape.Line(
            new Point(right(), top), new Point(right(), bottom()), Stroke.solid(Shade.INK, 2)));
    return shapes;
  }

  Shape ground() {
    return new Shape.Rectangle(new Box(left, top, right() - left, bottom() - top), Shade.TINT, 3);
  }

  /** The stretch between two powers set off, with a double arrow. */
  List<Shape> stretch(double from, double to) {
    Box box = new Box(left, y(to), right() - left, y(from) - y(to));
    List<Shape> shapes = new ArrayList<>();
    shapes.add(new Shape.Rectangle(box, Shade.BAND, 0));
    shapes.addAll(arrow(left + LANE / 2, y(to), y(from)));
    return shapes;
  }

  /** A double arrow upright; without heads where it is too short for them. */
  static List<Shape> arrow(double x, double top, double bottom) {
    List<Shape> shapes = new ArrayList<>();
    boolean headed = bottom - top > 2.5 * ARROW;
    double inset = headed ? ARROW / 2 : 0;
    shapes.add(
        new Shape.Line(
            new Point(x, top + inset),
            new Point(x, bottom - inset),
            Stroke.solid(Shade.ACCENT, 2)));
    if (headed) {
      shapes.add(head(x, top, ARROW));
      shapes.add(head(x, bottom, -ARROW));
    }
    return shapes;
  }

  private static Shape.Polygon head(double x, double y, double length) {
    return new Shape.Polygon(
        List.of(
            new Point(x, y),
            new Point(x - ARROW / 2, y + length),
            new Point(x + ARROW / 2, y + length)),
        Shade.ACCENT);
  }

  private Shape tick(long power, double length, double thickness) {
    Stroke stroke = Stroke.solid(Shade.INK, thickness);
    double y = yOf(power);
    return new Shape.Line(new Point(right() - length, y), new Point(right(), y), stroke);
  }

  private Shape power(long power) {
    double x = right() - LONG_TICK - AIR;
    Point place = new Point(x, yOf(power) + HALF_DIGIT * Theme.SCALE.size());
    return new Shape.Text(place, PowerOfTen.power(power), Theme.SCALE.at(Anchor.END));
  }

  /** The number words of the powers, left of the ruler, where they fit: "trillion" for 10¹². */
  List<Shape.Text> names(Words words) {
    return axis.labelled()
        .boxed()
        .flatMap(n -> words.nameOf(n).map(name -> name(n, name)).stream())
        .filter(text -> text.box().width() <= NAMES)
        .toList();
  }

  private Shape.Text name(long power, String name) {
    Point place = new Point(left - AIR, yOf(power) + HALF_DIGIT * Theme.NAME.size());
    return new Shape.Text(place, name, Theme.NAME.at(Anchor.END));
  }
}
