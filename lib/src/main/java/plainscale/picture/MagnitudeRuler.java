package plainscale.picture;

import static java.util.stream.Collectors.joining;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plainscale.magnitude.PowerOfTen;
import plainscale.magnitude.Ratio;
import plainscale.magnitude.Words;

/**
 * A ruler in powers of ten with two to six numbers marked on it, and the distance between the
 * outermost two said in orders of magnitude. A negative number is marked by its size.
 */
public final class MagnitudeRuler {
  /** The fewest and the most numbers on one ruler. */
  public static final int FEWEST = 2;

  public static final int MOST = 6;

  private static final double GAP = 18;
  private static final double LEADER = 34;
  private static final double END = 26;
  private static final double STEM = 12;
  private static final double POINTER = 6;
  private static final double ARROW = 9;
  private static final int MOST_FIGURES = 3;

  private final String title;
  private final List<Mark> marks;
  private final Ratio ratio;
  private final List<TextBlock> blocks;
  private final double width;
  private final PowerAxis axis;
  private final List<Shape> shapes = new ArrayList<>();

  private MagnitudeRuler(String title, List<Mark> marks, Optional<Ratio> ratio) {
    this.title = title;
    this.marks = marks.stream().sorted(Comparator.comparingDouble(MagnitudeRuler::power)).toList();
    this.ratio = ratio.orElseGet(this::ofMarks);
    double share = (Theme.WIDTH - 2 * Theme.MARGIN) / marks.size() - GAP;
    this.blocks = this.marks.stream().map(m -> block(m, share)).toList();
    double needed = blocks.stream().mapToDouble(b -> b.width() + GAP).sum() + 2 * Theme.MARGIN;
    this.width = Math.max(Theme.WIDTH, needed);
    this.axis =
        PowerAxis.around(
            power(this.marks.get(0)),
            power(this.marks.get(marks.size() - 1)),
            Theme.MARGIN + END,
            width - Theme.MARGIN - END);
  }

  /**
   * The ruler as a scene, its ratio taken from the marks; the title is drawn unless it is empty.
   */
  public static Scene of(String title, List<Mark> marks) {
    return of(title, marks, Optional.empty());
  }

  /** The ruler with a ratio that is better known than from the rounded marks. */
  public static Scene of(String title, List<Mark> marks, Ratio ratio) {
    return of(title, marks, Optional.of(ratio));
  }

  private static Scene of(String title, List<Mark> marks, Optional<Ratio> ratio) {
    if (marks.size() < FEWEST || marks.size() > MOST) {
      throw new IllegalArgumentException(
          "A ruler shows from two to six numbers, not " + marks.size() + ".");
    }
    if (marks.stream().anyMatch(m -> m.value().signum() == 0)) {
      throw new IllegalArgumentException("Zero has no place on a ruler in powers of ten.");
    }
    return new MagnitudeRuler(title, marks, ratio).scene();
  }

  private static double power(Mark mark) {
    return PowerOfTen.of(mark.value()).log10();
  }

  private static TextBlock block(Mark mark, double width) {
    List<TextBlock.Line> lines = new ArrayList<>();
    lines.add(new TextBlock.Line(mark.label(), Theme.LABEL));
    lines.add(new TextBlock.Line(mark.inPowers(), Theme.VALUE));
    if (mark.hasWords()) {
      lines.add(new TextBlock.Line(mark.inWords(), Theme.WORDS));
    }
    return TextBlock.wrapped(lines, width);
  }

  private Scene scene() {
    TextBlock heading = TextBlock.title(title, width);
    double y = Theme.MARGIN + heading.height();
    shapes.addAll(heading.standingOn(Theme.MARGIN, y));
    y += heading.height() > 0 ? GAP : 0;
    double labels = y + blocks.stream().mapToDouble(TextBlock::height).max().orElse(0);
    double edge = labels + LEADER + STEM;
    RulerStrip strip = new RulerStrip(axis, width, edge);
    shapes.addAll(strip.shapes(power(marks.get(0)), power(marks.get(marks.size() - 1))));
    marks(labels, edge);
    double bottom = distance(strip.bottom()) + GAP;
    shapes.add(new Shape.Text(new Point(Theme.MARGIN, bottom), legend(), Theme.NOTE));
    String name = title.isBlank() ? "Ruler in powers of ten" : title;
    return new Scene(width, bottom + Theme.MARGIN / 2, name, alternative(), shapes);
  }

  private String legend() {
    String step = axis.tickStep() == 1 ? "ten" : PowerOfTen.power(axis.tickStep());
    return "From one tick to the next: " + step + " times as much.";
  }

  private static Shape.Line line(Point from, Point to, Shade shade, double width) {
    return new Shape.Line(from, to, Stroke.solid(shade, width));
  }

  private void marks(double labels, double edge) {
    double[] wishes = marks.stream().mapToDouble(m -> axis.x(power(m))).toArray();
    double[] widths = blocks.stream().mapToDouble(TextBlock::width).toArray();
    Box room = new Box(Theme.MARGIN, 0, width - 2 * Theme.MARGIN, 0);
    double[] centres = Spread.centres(wishes, widths, GAP, room);
    for (int i = 0; i < wishes.length; i++) {
      shapes.addAll(blocks.get(i).standingOn(centres[i], labels));
      Point elbow = new Point(wishes[i], edge - STEM);
      double reach = 0.4 * widths[i];
      double foot = Math.max(centres[i] - reach, Math.min(centres[i] + reach, wishes[i]));
      shapes.add(line(new Point(foot, labels + 6), elbow, Shade.ACCENT, 1.5));
      shapes.add(pointer(wishes[i], edge));
    }
  }

  private static Shape.Polygon pointer(double x, double edge) {
    return new Shape.Polygon(
        List.of(
            new Point(x - POINTER, edge - STEM),
            new Point(x + POINTER, edge - STEM),
            new Point(x, edge)),
        Shade.ACCENT);
  }

  /** The double arrow between the outermost marks and what it says. */
  private double distance(double y) {
    double from = axis.x(power(marks.get(0)));
    double to = axis.x(power(marks.get(marks.size() - 1)));
    double middle = y + ARROW + 6;
    shapes.add(line(new Point(from, middle), new Point(to, middle), Shade.ACCENT, 1.5));
    for (double x : new double[] {from, to}) {
      shapes.add(line(new Point(x, y + 4), new Point(x, middle + ARROW), Shade.ACCENT, 1.5));
    }
    if (to - from > 4 * ARROW) {
      shapes.add(head(from, middle, ARROW));
      shapes.add(head(to, middle, -ARROW));
    }
    TextBlock said =
        TextBlock.wrapped(
            List.of(
                new TextBlock.Line(ratio.ordersText(), Theme.VALUE),
                new TextBlock.Line(timesText(), Theme.WORDS)),
            width - 2 * Theme.MARGIN);
    double half = said.width() / 2 + Theme.MARGIN;
    double x = Math.max(half, Math.min(width - half, (from + to) / 2));
    double bottom = middle + ARROW + 4 + said.height();
    shapes.addAll(said.standingOn(x, bottom));
    return bottom;
  }

  private static Shape.Polygon head(double x, double y, double length) {
    return new Shape.Polygon(
        List.of(
            new Point(x, y),
            new Point(x + length, y - ARROW / 2),
            new Point(x + length, y + ARROW / 2)),
        Shade.ACCENT);
  }

  private Ratio ofMarks() {
    BigDecimal smallest = marks.get(0).value();
    BigDecimal largest = marks.get(marks.size() - 1).value();
    int figures = Math.min(smallest.precision(), largest.precision());
    return Ratio.of(largest, smallest, Math.min(MOST_FIGURES, figures));
  }

  private String timesText() {
    if (ratio.value().compareTo(BigDecimal.ONE) == 0) {
      return "both are about the same";
    }
    String words = ratio.words(Words.ENGLISH).text();
    String power = ratio.powerOfTen().text();
    String both = ratio.orders() < 4 || words.equals(power) ? words : words + " (" + power + ")";
    boolean two = marks.size() == 2;
    return "the %s is about %s times the %s"
        .formatted(two ? "larger" : "largest", both, two ? "smaller" : "smallest");
  }

  private String alternative() {
    return marks.stream()
        .map(Mark::said)
        .collect(
            joining(
                "; ",
                "A ruler in powers of ten. ",
                ". From the smallest to the largest: %s; %s."
                    .formatted(ratio.ordersText(), timesText())));
  }
}
