package plainscale.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainscale.magnitude.PowerOfTen;
import plainscale.magnitude.Words;

/** The body of a ruler: its ground, the ticks, the powers of ten and their names. */
record RulerStrip(PowerAxis axis, double width, double edge) {
  private static final double BODY = 44;
  private static final double TICK = 8;
  private static final double LONG_TICK = 14;
  private static final double NAMES = 18;
  private static final long[] STRIDES = {3, 6, 9};

  /** The strip with the stretch between two powers set off. */
  List<Shape> shapes(double from, double to) {
    List<Shape> shapes = new ArrayList<>(ground(axis.x(from), axis.x(to)));
    axis.ticks().forEach(n -> shapes.add(tick(n, TICK, 1)));
    axis.labelled().forEach(n -> shapes.add(tick(n, LONG_TICK, 1.5)));
    axis.labelled().forEach(n -> shapes.add(power(n)));
    shapes.addAll(names());
    return shapes;
  }

  double bottom() {
    return edge + BODY + (names().isEmpty() ? 0 : NAMES);
  }

  private List<Shape> ground(double from, double to) {
    double end = Theme.MARGIN;
    return List.of(
        new Shape.Rectangle(new Box(end, edge, width - 2 * end, BODY), Shade.TINT, 3),
        new Shape.Rectangle(new Box(from, edge, to - from, BODY), Shade.BAND, 0),
        new Shape.Line(
            new Point(end, edge), new Point(width - end, edge), Stroke.solid(Shade.INK, 2)));
  }

  private Shape tick(long power, double length, double thickness) {
    double x = axis.xOf(power);
    Stroke stroke = Stroke.solid(Shade.INK, thickness);
    return new Shape.Line(new Point(x, edge), new Point(x, edge + length), stroke);
  }

  private Shape power(long power) {
    Point place = new Point(axis.xOf(power), edge + BODY - 9);
    return new Shape.Text(place, PowerOfTen.power(power), Theme.SCALE);
  }

  /** Number words below the powers, as close as all of them fit. */
  private List<Shape.Text> names() {
    for (long stride : STRIDES) {
      Optional<List<Shape.Text>> texts = names(stride);
      if (stride % axis.step() == 0 && texts.isPresent()) {
        return texts.get();
      }
    }
    return List.of();
  }

  private Optional<List<Shape.Text>> names(long stride) {
    List<Shape.Text> texts = new ArrayList<>();
    Box room = new Box(0, edge + BODY, width, NAMES);
    for (long n : axis.labelled().filter(n -> n % stride == 0).toArray()) {
      Optional<String> name = Words.ENGLISH.nameOf(n);
      if (name.isEmpty() || TextWidth.of(name.get(), Theme.NAME) > stride * axis.perPower() - 6) {
        return Optional.empty();
      }
      Point place = new Point(axis.xOf(n), room.bottom() - 4);
      Shape.Text text = new Shape.Text(place, name.get(), Theme.NAME);
      if (room.contains(text.box())) {
        texts.add(text);
      }
    }
    return Optional.of(texts);
  }
}
