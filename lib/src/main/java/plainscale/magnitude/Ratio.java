package plainscale.magnitude;

import java.math.BigDecimal;

/**
 * How many times the larger of two numbers contains the smaller, by size without sign: {@code
 * Ratio.of(8.7E+12, 2.0E-3).value()} is 4.4E+15 (ties to even, ISO 80000-1 Rule A).
 */
public record Ratio(BigDecimal larger, BigDecimal smaller, BigDecimal value) {

  /** The ratio to as many figures as the less precise number has. */
  public static Ratio of(BigDecimal one, BigDecimal other) {
    return of(one, other, Math.min(one.precision(), other.precision()));
  }

  /** The ratio to a stated number of figures, at least one. */
  public static Ratio of(BigDecimal one, BigDecimal other, int figures) {
    if (one.signum() == 0 || other.signum() == 0) {
      throw new IllegalArgumentException("Nothing can be compared with zero by a ratio.");
    }
    boolean inOrder = one.abs().compareTo(other.abs()) >= 0;
    BigDecimal larger = inOrder ? one : other;
    BigDecimal smaller = inOrder ? other : one;
    try {
      return new Ratio(larger, smaller, Figures.quotient(larger.abs(), smaller.abs(), figures));
    } catch (ArithmeticException e) {
      throw new IllegalArgumentException("The two numbers are too far apart for a ratio.", e);
    }
  }

  /** The ratio in full digits. */
  public Digits digits(DigitStyle style) {
    return Digits.of(value, style);
  }

  /** The ratio with a named power: "4.4 quadrillion". */
  public Spelling words(Words words) {
    return words.mixed(value);
  }

  /** The ratio as a power of ten. */
  public PowerOfTen powerOfTen() {
    return PowerOfTen.of(value);
  }

  /** How many orders of magnitude lie between the two, by a definition. */
  public long orders(Orders orders) {
    return orders == Orders.RATIO
        ? Math.round(powerOfTen().log10())
        : orders.between(larger, smaller);
  }

  /** {@link #orders(Orders)} by the ratio: 3 for 999, 11 for 8.35E+10. */
  public long orders() {
    return orders(Orders.RATIO);
  }

  /**
   * "about 28 orders of magnitude", "about 1 order of magnitude", "less than one order of
   * magnitude".
   */
  public String ordersText(Writing writing) {
    return Phrases.of(writing.words().language()).say("orders", orders(writing.orders()));
  }

  /** {@link #ordersText(Writing)} in usual writing. */
  public String ordersText() {
    return ordersText(Writing.USUAL);
  }
}
