package plainscale.magnitude;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Quotients with a stated number of significant figures, rounded once. */
final class Figures {
  private static final int MOST = 100;

  private Figures() {}

  /**
   * {@code a / b} to so many figures, ties to the even digit (ISO 80000-1, Annex B, Rule A), also
   * where the quotient is shorter: 8 / 2 to two figures is 4.0.
   */
  static BigDecimal quotient(BigDecimal a, BigDecimal b, int figures) {
    int kept = Math.min(MOST, Math.max(1, figures));
    PowerOfTen above = PowerOfTen.of(a);
    PowerOfTen below = PowerOfTen.of(b);
    BigDecimal rounded =
        above.mantissa().divide(below.mantissa(), new MathContext(kept, RoundingMode.HALF_EVEN));
    BigDecimal padded = rounded.setScale(rounded.scale() + kept - rounded.precision());
    return padded.scaleByPowerOfTen(Math.toIntExact(above.exponent() - below.exponent()));
  }
}
