package plainscale.magnitude;

import java.math.BigDecimal;
import java.util.List;

/**
 * A number in full digits, as an ordered list of runs: 8.7E+12 becomes a significant 8, a thin
 * space, a significant 7, two place-holder zeros, and so on. A number of more than {@value
 * #MOST_PLACES} digits is not written in full: {@link #full} is false and the runs hold its power
 * of ten.
 */
public record Digits(BigDecimal value, DigitStyle style, List<Run> runs, boolean full) {

  /** The longest number that is written out. */
  public static final int MOST_PLACES = 400;

  /** Keeps its own copy of the runs. */
  public Digits {
    runs = List.copyOf(runs);
  }

  /** Writes a rounded number in a style. */
  public static Digits of(BigDecimal value, DigitStyle style) {
    BigDecimal kept = tame(value);
    long decimals = Math.max(0L, kept.scale());
    long integers = Math.max(1L, (long) kept.precision() - kept.scale());
    boolean full = decimals + integers <= MOST_PLACES;
    DigitWriter writer = new DigitWriter(style);
    return new Digits(kept, style, full ? writer.full(kept) : writer.power(kept), full);
  }

  /** Writes a rounded number in the style of the SI Brochure. */
  public static Digits of(BigDecimal value) {
    return of(value, DigitStyle.SI);
  }

  /** Zero keeps its decimal places, but neither a power of ten nor a hostile number of places. */
  static BigDecimal tame(BigDecimal value) {
    boolean plainZero = value.scale() >= 0 && value.scale() < MOST_PLACES;
    return value.signum() != 0 || plainZero ? value : BigDecimal.ZERO;
  }

  /** The number as it reads, with separators. */
  public String text() {
    return Run.text(runs);
  }

  /** The number to copy into another program: ASCII, decimal point, no separators. */
  public String plain() {
    return full ? value.toPlainString() : value.toString();
  }

  /** The number of significant figures; for zero, of the places that were written. */
  public int significantFigures() {
    return count(Role.SIGNIFICANT);
  }

  /** The number of zeros after the last significant figure that only keep the place. */
  public int placeholderZeros() {
    return count(Role.PLACEHOLDER);
  }

  /** The number of zeros between the decimal marker and the first significant figure. */
  public int leadingZeros() {
    return Math.max(0, count(Role.LEADING_ZERO) - 1);
  }

  /** The number of all zeros that only keep the place. */
  public int zeros() {
    return placeholderZeros() + leadingZeros();
  }

  /** The number of digits before the decimal marker. */
  public int integerPlaces() {
    return places() - decimalPlaces();
  }

  /** The number of digits after the decimal marker. */
  public int decimalPlaces() {
    return full ? Math.max(0, value.scale()) : 0;
  }

  private int places() {
    return full
        ? runs.stream().filter(r -> r.role().isDigit()).mapToInt(r -> r.text().length()).sum()
        : 0;
  }

  private int count(Role role) {
    return runs.stream().filter(r -> r.role() == role).mapToInt(r -> r.text().length()).sum();
  }
}
