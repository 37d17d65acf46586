package plainscale.picture;

import static plainscale.magnitude.Writing.USUAL;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import plainscale.magnitude.Alignment;
import plainscale.magnitude.DigitStyle;
import plainscale.magnitude.Digits;
import plainscale.magnitude.PowerOfTen;
import plainscale.picture.TextStyle.Anchor;
import plainscale.picture.TextStyle.Weight;

/**
 * Two to six numbers in full digits under one another on the decimal marker. Significant figures
 * are dark and bold, zeros that only keep the place are paler and thinner and are counted below. A
 * number too long for full digits is written as its power of ten.
 */
public final class DigitColumns {
  private static final double WIDTH = 800;
  private static final double MARGIN = 24;
  private static final double SMALLEST = 14;
  private static final double LARGEST = 34;
  private static final double LEAST_WIDTH = 600;
  private static final double BETWEEN = 32;
  private static final double CAPTIONS = 8;
  private static final double TICK = 6;
  private static final double ROOM_FOR_POWER = 42;

  private static final TextStyle LABEL =
      new TextStyle(TextRole.LABEL, Anchor.START, 16, Weight.BOLD, Shade.INK);
  private static final TextStyle WORDS =
      new TextStyle(TextRole.WORDS, Anchor.START, 14, Weight.NORMAL, Shade.INK);
  private static final TextStyle COUNT =
      new TextStyle(TextRole.NOTE, Anchor.START, 13, Weight.NORMAL, Shade.SOFT);
  private static final TextStyle TITLE =
      new TextStyle(TextRole.TITLE, Anchor.START, 19, Weight.BOLD, Shade.INK);
  private static final TextStyle SCALE =
      TextStyle.centred(TextRole.SCALE, 13, Weight.NORMAL, Shade.SOFT);
  private static final TextStyle NOTE =
      new TextStyle(TextRole.NOTE, Anchor.START, 12, Weight.NORMAL, Shade.PALE);

  private final String title;
  private final List<Mark> marks;
  private final Alignment alignment;
  private final List<Shape> shapes = new ArrayList<>();
  private final Map<Integer, Double> places = new TreeMap<>();
  private final double size;
  private final double width;
  private final double right;

  private DigitColumns(String title, List<Mark> marks, DigitStyle style) {
    this.title = title;
    this.marks = marks;
    this.alignment = Alignment.of(marks.stream().map(m -> Digits.of(m.value(), style)).toList());
    double em = alignment.rows().stream().mapToDouble(DigitColumns::em).max().orElse(0);
    double room = WIDTH - 2 * MARGIN;
    this.size = Math.max(SMALLEST, Math.min(LARGEST, room / em));
    this.right = MARGIN + em * size;
    for (Alignment.Row row : alignment.rows()) {
      places.putAll(DigitLine.of(row, new Point(MARGIN, 0), size).places());
    }
    this.width = Math.max(LEAST_WIDTH, right - MARGIN) + 2 * MARGIN;
  }

  /** The numbers in SI style. */
  public static Scene of(String title, List<Mark> marks) {
    return of(title, marks, DigitStyle.SI);
  }

  /** The numbers in a style; the title is drawn unless it is empty. */
  public static Scene of(String title, List<Mark> marks, DigitStyle style) {
    return new DigitColumns(title, List.copyOf(marks), style).scene();
  }

  private static double em(Alignment.Row row) {
    return DigitLine.of(row, new Point(0, 0), 1).right();
  }

  private Scene scene() {
    TextBlock heading =
        TextBlock.wrapped(List.of(new TextBlock.Line(title, TITLE)), width - 2 * MARGIN);
    double y = MARGIN + heading.height();
    shapes.addAll(heading.standingOn(MARGIN, y));
    y += heading.height() > 0 ? BETWEEN / 2 : 0;
    for (int i = 0; i < marks.size(); i++) {
      y = row(i, y) + BETWEEN;
    }
    String legend = "Dark figures are significant; pale zeros only keep the place.";
    shapes.add(new Shape.Text(new Point(MARGIN, y), legend, NOTE));
    String name = title.isBlank() ? "Numbers in full digits" : title;
    return new Scene(width, y + MARGIN / 2, name, alternative(), shapes);
  }

  /** One number under its scale; returns where its captions end. */
  private double row(int i, double y) {
    double line = y + (i == 0 && alignment.aligned() ? SCALE.size() + TICK : 0);
    double baseline = line + 2 * TICK + size * 0.9;
    Point start = new Point(MARGIN, baseline);
    DigitLine digits = DigitLine.of(alignment.rows().get(i), start, size);
    if (alignment.aligned()) {
      scale(line, i == 0);
    }
    shapes.addAll(digits.texts());
    double length = digits.right() - digits.left();
    return captions(i, new Box(digits.left(), line, length, baseline - line));
  }

  /** The captions start below the number, or end below its end where there is no room. */
  private double captions(int i, Box number) {
    TextBlock captions = captions(i, Anchor.START);
    double bottom = number.bottom() + CAPTIONS + captions.height();
    boolean fits = number.x() + captions.width() <= width - MARGIN;
    shapes.addAll(
        fits
            ? captions.standingOn(number.x(), bottom)
            : captions(i, Anchor.END)
                .standingOn(Math.max(number.right(), captions.width() + MARGIN), bottom));
    return bottom;
  }

  private TextBlock captions(int i, Anchor anchor) {
    Mark mark = marks.get(i);
    List<TextBlock.Line> lines = new ArrayList<>();
    lines.add(new TextBlock.Line(mark.label(), LABEL.at(anchor)));
    String words = mark.hasWords(USUAL) ? mark.inWords(USUAL) + " = " : "";
    lines.add(new TextBlock.Line(words + mark.inPowers(USUAL), WORDS.at(anchor)));
    lines.add(new TextBlock.Line(count(alignment.rows().get(i).digits()), COUNT.at(anchor)));
    return TextBlock.wrapped(lines, LEAST_WIDTH);
  }

  /** "2 significant figures, then 11 place-holder zeros". */
  private static String count(Digits digits) {
    if (!digits.full()) {
      return "too long for full digits";
    }
    String figures = counted(digits.significantFigures(), "significant figure");
    if (digits.placeholderZeros() > 0) {
      return figures + ", then " + counted(digits.placeholderZeros(), "place-holder zero");
    }
    return digits.leadingZeros() > 0
        ? counted(digits.leadingZeros(), "zero") + " after the point, then " + figures
        : figures;
  }

  private static String counted(int number, String thing) {
    return number + " " + thing + (number == 1 ? "" : "s");
  }

  /** The line above a row, with a tick at every thousandfold and the powers above the first. */
  private void scale(double y, boolean labelled) {
    double pitch = size * DigitLine.PITCH;
    int step = 3 * (int) Math.ceil(ROOM_FOR_POWER / (3 * pitch));
    Stroke stroke = Stroke.solid(Shade.LINE, 1);
    shapes.add(new Shape.Line(new Point(MARGIN, y), new Point(right, y), stroke));
    for (Map.Entry<Integer, Double> place : places.entrySet()) {
      int power = place.getKey();
      double x = place.getValue();
      if (power % 3 == 0) {
        shapes.add(new Shape.Line(new Point(x, y), new Point(x, y + TICK), stroke));
      }
      if (labelled && power % step == 0) {
        shapes.add(new Shape.Text(new Point(x, y - TICK), PowerOfTen.power(power), SCALE));
      }
    }
  }

  private String alternative() {
    StringBuilder text = new StringBuilder("Numbers in full digits, one under another. ");
    for (int i = 0; i < marks.size(); i++) {
      text.append(marks.get(i).said(USUAL)).append(", ");
      text.append(count(alignment.rows().get(i).digits())).append(". ");
    }
    return text.toString().strip();
  }
}
