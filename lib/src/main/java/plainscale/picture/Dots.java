package plainscale.picture;

import static java.util.stream.Collectors.joining;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.IntStream;
import plainscale.magnitude.Agreement;
import plainscale.magnitude.Digits;
import plainscale.magnitude.Phrases;
import plainscale.magnitude.PowerOfTen;
import plainscale.magnitude.Ratio;
import plainscale.magnitude.Writing;

/**
 * One to three numbers as dots that can be counted, in blocks of ten by ten. Each dot stands for
 * one power of ten, the same for all the numbers, chosen so that the largest has a hundred dots or
 * more and the picture a thousand at most; small whole numbers have one dot for each one.
 */
public final class Dots {
  /** The most numbers in one picture. */
  public static final int MOST_NUMBERS = 3;

  /** The most dots in one picture. */
  public static final int MOST_DOTS = 1000;

  /** The largest number has three digits in dots. */
  private static final int DIGITS = 3;

  private static final double RADIUS = 3.2;
  private static final double PITCH = 8.6;
  private static final int SIDE = 10;
  private static final int BLOCK = SIDE * SIDE;
  private static final double BLOCK_PITCH = SIDE * PITCH + 17;
  private static final int BLOCKS_IN_ROW = 5;
  private static final double GAP = 26;
  private static final int MOST_FIGURES = 2;

  private final List<Mark> marks;
  private final boolean anyNegative;
  private final Writing writing;
  private final Phrases phrases;
  private final Canvas canvas;
  private final int power;

  private Dots(String title, List<Mark> marks, Writing writing) {
    this.marks = marks;
    this.anyNegative = marks.stream().anyMatch(m -> m.value().signum() < 0);
    this.writing = writing;
    this.phrases = writing.phrases();
    this.canvas = new Canvas(title);
    this.power = power(Marks.of(marks));
  }

  /** The dots as a scene; the title is drawn unless it is empty. */
  public static Scene of(String title, List<Mark> marks, Writing writing) {
    if (marks.isEmpty() || marks.size() > MOST_NUMBERS) {
      throw new IllegalArgumentException(
          "A picture in dots shows from one to three numbers, not " + marks.size() + ".");
    }
    if (Marks.of(marks).largest().value().signum() == 0) {
      throw new IllegalArgumentException("Zero has no dots, so there is nothing to draw.");
    }
    return new Dots(title, List.copyOf(marks), writing).scene();
  }

  /** The power of ten that one dot stands for. */
  private static int power(Marks marks) {
    boolean whole = marks.main().stream().allMatch(m -> isWhole(m.value()));
    int power =
        whole ? 0 : Math.toIntExact(PowerOfTen.of(marks.largest().value()).exponent()) - DIGITS + 1;
    if (total(marks, power) > MOST_DOTS) {
      power = Math.toIntExact(PowerOfTen.of(marks.largest().value()).exponent()) - DIGITS + 1;
    }
    return total(marks, power) > MOST_DOTS ? power + 1 : power;
  }

  private static boolean isWhole(BigDecimal value) {
    return value.signum() == 0 || value.stripTrailingZeros().scale() <= 0;
  }

  private static int total(Marks marks, int power) {
    return marks.main().stream().mapToInt(m -> dots(m.value(), power)).sum();
  }

  /** How many dots a number has, to the nearest; more than are drawn where it is far too large. */
  private static int dots(BigDecimal value, int power) {
    long digits = PowerOfTen.of(value).exponent() - power;
    if (value.signum() == 0 || digits < 0) {
      return 0;
    }
    return digits > DIGITS
        ? MOST_DOTS + 1
        : value.abs().scaleByPowerOfTen(-power).setScale(0, RoundingMode.HALF_EVEN).intValue();
  }

  private Scene scene() {
    canvas.addAll(List.of(dot(new Point(Theme.MARGIN + RADIUS, canvas.y() + 13))));
    canvas.write(Theme.MARGIN + GAP, List.of(new TextBlock.Line(legend(), Theme.LABEL)));
    for (Mark mark : marks) {
      canvas.skip(GAP);
      number(mark);
    }
    canvas.skip(GAP / 2);
    if (anyNegative) {
      canvas.note(phrases.say("picture.by-size"));
    }
    return canvas.scene(phrases.say("picture.dots"), alternative());
  }

  private static Shape dot(Point centre) {
    return new Shape.Discs(List.of(centre), RADIUS, Shade.INK);
  }

  private String legend() {
    Mark dot = new Mark("", BigDecimal.ONE.scaleByPowerOfTen(power), marks.get(0).unit());
    if (dot.isEveryday() || !dot.hasWords(writing)) {
      return phrases.say("picture.dots.each", dot.inFigures(writing));
    }
    return phrases.say("picture.dots.each.power", dot.inWords(writing), PowerOfTen.power(power));
  }

  private void number(Mark mark) {
    canvas.write(Theme.MARGIN, Captions.of(mark, writing));
    int dots = dots(mark.value(), power);
    if (dots > 0) {
      canvas.skip(GAP / 2);
      blocks(dots);
      canvas.skip(GAP / 4);
    }
    canvas.note(count(mark));
  }

  private void blocks(int dots) {
    List<Point> centres = IntStream.range(0, dots).mapToObj(this::place).toList();
    canvas.add(new Shape.Discs(centres, RADIUS, Shade.INK));
    double lowest = centres.stream().mapToDouble(Point::y).max().orElseThrow();
    canvas.moveTo(lowest + RADIUS);
  }

  /** Blocks of a hundred, five in a row, each filled as a page is. */
  private Point place(int dot) {
    int block = dot / BLOCK;
    int line = dot % BLOCK / SIDE;
    double x = block % BLOCKS_IN_ROW * BLOCK_PITCH + dot % SIDE * PITCH;
    double y = Math.floorDiv(block, BLOCKS_IN_ROW) * BLOCK_PITCH + line * PITCH;
    return new Point(Theme.MARGIN + RADIUS + x, canvas.y() + RADIUS + y);
  }

  /** "813 dots", "8 dots, rounded to whole dots", or what a number without a dot would take. */
  private String count(Mark mark) {
    int dots = dots(mark.value(), power);
    if (mark.value().signum() == 0) {
      return phrases.say("picture.dots.none");
    }
    if (dots == 0) {
      return missing(mark);
    }
    String counted = Digits.of(BigDecimal.valueOf(dots), writing.digits()).text();
    boolean exact =
        mark.value().abs().compareTo(BigDecimal.valueOf(dots).scaleByPowerOfTen(power)) == 0;
    return phrases.say(exact ? "picture.dots.count" : "picture.dots.rounded", dots, counted);
  }

  private String missing(Mark mark) {
    int figures = Math.min(MOST_FIGURES, mark.value().precision());
    Ratio ratio = Ratio.of(BigDecimal.ONE.scaleByPowerOfTen(power), mark.value(), figures);
    String times = Captions.named(ratio.value(), writing);
    Agreement agreement = Agreement.of(times, ratio.value(), writing.words());
    String kind = mark.unit().isEmpty() ? "number" : "amount";
    return phrases.say("picture.dots.less", times, kind, agreement);
  }

  private String alternative() {
    String each =
        marks.stream()
            .map(m -> phrases.say("picture.dots.number", m.said(writing), count(m)))
            .collect(joining(" "));
    String said = phrases.say("picture.dots.alternative");
    String text = said + " " + legend().replace('\u00a0', ' ') + " " + each;
    return anyNegative ? text + " " + phrases.say("picture.by-size") : text;
  }
}
