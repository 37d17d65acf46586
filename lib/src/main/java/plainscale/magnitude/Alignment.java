package plainscale.magnitude;

import java.util.List;

/**
 * One to six numbers under one another on the decimal marker, broken into lines where they are too
 * long. If one of them needs separators, all get them ("one format throughout a column", SI
 * Brochure 5.4.4). A line ends between two groups, at the same power of ten for all numbers:
 * {@value #LONG_LINE} digits on either side of the marker at most, {@value #SHORT_LINE} where both
 * sides are long, so that a line fits on a phone and on paper. When a number is too long to be
 * written in full, {@link #aligned} is false and nothing is broken.
 */
public record Alignment(List<Row> rows, boolean aligned) {

  /** The most numbers that are put under one another. */
  public static final int MOST = 6;

  /** The most digits of a line on one side of the marker. */
  public static final int LONG_LINE = 30;

  /** The most digits on each side where both sides have many. */
  public static final int SHORT_LINE = 15;

  /** One number. */
  public record Row(Digits digits, List<Line> lines) {
    /** Keeps its own copy of the lines. */
    public Row {
      lines = List.copyOf(lines);
    }
  }

  /** One line of a number: what stands before the marker, and the marker with what follows it. */
  public record Line(List<Run> whole, List<Run> part) {
    /** Keeps its own copies of the runs. */
    public Line {
      whole = List.copyOf(whole);
      part = List.copyOf(part);
    }
  }

  /** Keeps its own copy of the rows. */
  public Alignment {
    rows = List.copyOf(rows);
  }

  /** Aligns numbers that were written in one style. */
  public static Alignment of(List<Digits> numbers) {
    if (numbers.isEmpty() || numbers.size() > MOST) {
      throw new IllegalArgumentException(
          "A column of numbers has from one to six of them, not " + numbers.size() + ".");
    }
    if (numbers.stream().map(Digits::style).distinct().count() > 1) {
      throw new IllegalArgumentException("The numbers of a column are written in one style.");
    }
    List<Digits> column = oneFormat(numbers);
    if (!column.stream().allMatch(Digits::full)) {
      return new Alignment(column.stream().map(Alignment::unbroken).toList(), false);
    }
    LineBreaker breaker = breaker(column);
    return new Alignment(column.stream().map(d -> new Row(d, breaker.lines(d))).toList(), true);
  }

  private static List<Digits> oneFormat(List<Digits> numbers) {
    boolean separated =
        numbers.stream().flatMap(d -> d.runs().stream()).anyMatch(r -> r.role() == Role.SEPARATOR);
    if (!separated) {
      return numbers;
    }
    return numbers.stream().map(d -> Digits.of(d.value(), d.style().uniform())).toList();
  }

  private static Row unbroken(Digits digits) {
    return new Row(digits, List.of(new Line(digits.runs(), List.of())));
  }

  private static LineBreaker breaker(List<Digits> column) {
    int whole = column.stream().mapToInt(Digits::integerPlaces).max().orElseThrow();
    int part = column.stream().mapToInt(Digits::decimalPlaces).max().orElseThrow();
    boolean bothLong = Math.min(whole, part) > 3 && whole + part > LONG_LINE;
    return new LineBreaker(bothLong ? SHORT_LINE : LONG_LINE, column.get(0).style());
  }

  /** The widest line before the marker, in characters. */
  public int wholeWidth() {
    return rows.stream()
        .flatMap(row -> row.lines().stream())
        .mapToInt(line -> Run.text(line.whole()).length())
        .max()
        .orElse(0);
  }

  /** The widest line from the marker on, in characters. */
  public int partWidth() {
    return rows.stream()
        .flatMap(row -> row.lines().stream())
        .mapToInt(line -> Run.text(line.part()).length())
        .max()
        .orElse(0);
  }
}
