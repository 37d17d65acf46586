package plainscale.magnitude;

import java.util.ArrayList;
import java.util.List;

/**
 * Two to six numbers under one another on the decimal marker. If one of them needs separators, all
 * get them ("one format throughout a column", SI Brochure 5.4.4). When a number is too long to be
 * written in full, {@link #aligned} is false and nothing is padded.
 */
public record Alignment(List<Row> rows, int integerPlaces, int decimalPlaces, boolean aligned) {

  /** The fewest and the most numbers that are put under one another. */
  public static final int FEWEST = 2;

  public static final int MOST = 6;

  private static final String FIGURE_SPACE = "\u2007";
  private static final String PUNCTUATION_SPACE = "\u2008";

  /** One number with the blanks before and after it, as wide as the digits that are not there. */
  public record Row(Digits digits, String before, String after) {

    /** The padded number. */
    public String text() {
      return before + digits.text() + after;
    }
  }

  /** Keeps its own copy of the rows. */
  public Alignment {
    rows = List.copyOf(rows);
  }

  /** Aligns numbers that were written in one style. */
  public static Alignment of(List<Digits> numbers) {
    if (numbers.size() < FEWEST || numbers.size() > MOST) {
      throw new IllegalArgumentException(
          "A column of numbers has from two to six of them, not " + numbers.size() + ".");
    }
    if (numbers.stream().map(Digits::style).distinct().count() > 1) {
      throw new IllegalArgumentException("The numbers of a column are written in one style.");
    }
    List<Digits> column = oneFormat(numbers);
    int integers = column.stream().mapToInt(Digits::integerPlaces).max().orElseThrow();
    int decimals = column.stream().mapToInt(Digits::decimalPlaces).max().orElseThrow();
    boolean aligned = column.stream().allMatch(Digits::full);
    return new Alignment(
        aligned ? padded(column, integers, decimals) : unpadded(column),
        integers,
        decimals,
        aligned);
  }

  private static List<Digits> oneFormat(List<Digits> numbers) {
    boolean separated =
        numbers.stream().flatMap(d -> d.runs().stream()).anyMatch(r -> r.role() == Role.SEPARATOR);
    if (!separated) {
      return numbers;
    }
    return numbers.stream().map(d -> Digits.of(d.value(), d.style().uniform())).toList();
  }

  private static List<Row> unpadded(List<Digits> column) {
    return column.stream().map(d -> new Row(d, "", "")).toList();
  }

  private static List<Row> padded(List<Digits> column, int integers, int decimals) {
    DigitStyle style = column.get(0).style();
    boolean signed = column.stream().anyMatch(d -> d.value().signum() < 0);
    String widest = (signed ? "0" : "") + mask(style, integers, 0);
    String longest = mask(style, 1, decimals).substring(1);
    List<Row> rows = new ArrayList<>();
    for (Digits number : column) {
      int left = mask(style, number.integerPlaces(), 0).length();
      int sign = number.value().signum() < 0 ? 1 : 0;
      int right = number.text().length() - left - sign;
      // A sign takes the room of one blank digit, not that of a separator.
      String before = widest.substring(sign, widest.length() - left);
      rows.add(new Row(number, blank(before, style), blank(longest.substring(right), style)));
    }
    return rows;
  }

  /** A number of so many places, all zeros: it has the shape of the widest number. */
  private static String mask(DigitStyle style, int integers, int decimals) {
    StringBuilder mask = new StringBuilder();
    for (int i = 0; i < integers; i++) {
      mask.append(style.separates(integers - i, integers) ? style.separator() : "").append('0');
    }
    mask.append(decimals > 0 ? style.marker() : "");
    for (int i = 0; i < decimals; i++) {
      mask.append(style.separatesAfterMarker(i, decimals) ? style.separator() : "").append('0');
    }
    return mask.toString();
  }

  private static String blank(String mask, DigitStyle style) {
    return mask.replace("0", FIGURE_SPACE)
        .replace(style.marker(), PUNCTUATION_SPACE)
        .replace(style.separator(), style.isSpaced() ? style.separator() : PUNCTUATION_SPACE);
  }
}
