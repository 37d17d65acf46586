package plainscale.sheet;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import plainscale.quantity.Quantity;

/**
 * What the uncertainty of a value leaves open: twice its standard uncertainty to either side, or,
 * where it has none, half of its last written digit (as with forces that balance). All values are
 * in coherent SI units.
 */
record Leeway(BigDecimal value, BigDecimal halfWidth, boolean measured) {
  private static final double COVERAGE = 2;
  private static final double HALF = 0.5;

  static Leeway of(Quantity quantity, BigDecimal value) {
    double standard = quantity.uncertainty().standard();
    double step = quantity.figures().step();
    double halfWidth = standard > 0 ? COVERAGE * standard : HALF * step;
    return new Leeway(value, BigDecimal.valueOf(halfWidth), standard > 0);
  }

  /** Whether the value itself lies between these; one of them may be missing. */
  boolean isWithin(@Nullable BigDecimal low, @Nullable BigDecimal high) {
    return (low == null || value.compareTo(low) >= 0)
        && (high == null || value.compareTo(high) <= 0);
  }

  /** Whether something that it leaves open lies between these. */
  boolean reaches(@Nullable BigDecimal low, @Nullable BigDecimal high) {
    return (low == null || value.add(halfWidth).compareTo(low) >= 0)
        && (high == null || value.subtract(halfWidth).compareTo(high) <= 0);
  }

  /** The verdict on where it lies. */
  GuardResult.Verdict verdict(@Nullable BigDecimal low, @Nullable BigDecimal high) {
    if (isWithin(low, high)) {
      return GuardResult.Verdict.INSIDE;
    }
    if (!reaches(low, high)) {
      return GuardResult.Verdict.OUTSIDE;
    }
    return measured
        ? GuardResult.Verdict.WITHIN_UNCERTAINTY
        : GuardResult.Verdict.WITHIN_LAST_DIGIT;
  }
}
