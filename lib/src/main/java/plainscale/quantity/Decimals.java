package plainscale.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Decimal arithmetic for values: 34 digits (IEEE 754 decimal128), magnitudes from 10⁻³⁰⁰ to 10³⁰⁰.
 */
public final class Decimals {
  /** Working precision. */
  public static final MathContext DIGITS = MathContext.DECIMAL128;

  /** Beyond this power of ten a value cannot be exchanged with double arithmetic. */
  public static final int LARGEST_EXPONENT = 300;

  /** Digits of a double that decimal rounding keeps; the last ones are dust of the binary form. */
  private static final MathContext DOUBLE_DIGITS = new MathContext(15, RoundingMode.HALF_EVEN);

  /** A difference this many powers of ten below its terms is what rounding left. */
  private static final int CANCELLED = 30;

  private Decimals() {}

  /** The power of ten of the first digit; zero for zero. */
  public static int exponent(BigDecimal value) {
    return value.signum() == 0 ? 0 : value.precision() - value.scale() - 1;
  }

  /**
   * The sum; where two equal numbers cancel but for the last of the working digits, exactly zero.
   */
  static BigDecimal sum(BigDecimal x, BigDecimal y) {
    BigDecimal sum = x.add(y, DIGITS);
    boolean dust = sum.signum() != 0 && x.signum() != 0 && exponent(x) - exponent(sum) > CANCELLED;
    return dust ? BigDecimal.ZERO : sum;
  }

  /**
   * A double as a decimal of fifteen figures, so that the dust of the binary form does not show.
   */
  public static BigDecimal from(double value) {
    if (!Double.isFinite(value)) {
      throw tooLarge();
    }
    return new BigDecimal(value).round(DOUBLE_DIGITS);
  }

  /** The value itself, or a sentence if it has left the range. */
  public static BigDecimal inRange(BigDecimal value) {
    if (value.signum() == 0) {
      return BigDecimal.ZERO;
    }
    if (exponent(value) > LARGEST_EXPONENT) {
      throw tooLarge();
    }
    if (exponent(value) < -LARGEST_EXPONENT) {
      throw new QuantityException(
          QuantityException.Fault.LIMIT,
          "This number is too small: below 10⁻³⁰⁰ a sheet does not compute.");
    }
    return value;
  }

  /** The complaint about a number above the range. */
  static QuantityException tooLarge() {
    return new QuantityException(
        QuantityException.Fault.LIMIT,
        "This number is too large: beyond 10³⁰⁰ a sheet does not compute.");
  }
}
