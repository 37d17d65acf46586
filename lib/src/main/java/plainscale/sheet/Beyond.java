package plainscale.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import plainscale.quantity.Shown;
import plainscale.sheet.GuardResult.Excess;
import plainscale.sheet.GuardResult.Excess.Way;
import plainscale.units.Kinds;
import plainscale.units.UnitOfMeasure;

/** By how much a value is beyond a limit, in the form that reads best. */
final class Beyond {
  private static final MathContext FIGURES = new MathContext(2, RoundingMode.HALF_EVEN);
  private static final MathContext DIGITS = MathContext.DECIMAL128;
  private static final BigDecimal TWICE = BigDecimal.valueOf(2);
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
  private static final BigDecimal LONG = BigDecimal.valueOf(10_000);

  private Beyond() {}

  /** Both in the coherent SI unit; the amount of a difference is shown in {@code unit}. */
  static Excess of(BigDecimal value, BigDecimal limit, UnitOfMeasure unit) {
    boolean above = value.compareTo(limit) > 0;
    if (limit.signum() == 0 && value.signum() < 0) {
      return new Excess(Way.NEGATIVE, number(BigDecimal.ZERO));
    }
    boolean comparable = limit.signum() * value.signum() > 0 && !unit.isScale();
    if (!comparable) {
      return new Excess(above ? Way.ABOVE : Way.BELOW, difference(value, limit, unit));
    }
    boolean larger = value.abs().compareTo(limit.abs()) > 0;
    BigDecimal ratio = larger ? value.divide(limit, DIGITS) : limit.divide(value, DIGITS);
    if (ratio.compareTo(TWICE) >= 0 && larger == above) {
      return new Excess(above ? Way.TIMES : Way.PART, number(ratio));
    }
    BigDecimal share =
        value.subtract(limit).abs().divide(limit.abs(), DIGITS).multiply(HUNDRED, DIGITS);
    return new Excess(above ? Way.PER_CENT_ABOVE : Way.PER_CENT_BELOW, number(share));
  }

  private static Shown difference(BigDecimal value, BigDecimal limit, UnitOfMeasure unit) {
    UnitOfMeasure amount = unit.isScale() ? Kinds.of(unit.kind()).unit() : unit;
    BigDecimal difference = value.subtract(limit).abs().divide(amount.factor(), DIGITS);
    return new Shown(plain(difference.round(FIGURES)), null, amount);
  }

  /** A plain number to two figures, with a power of ten only where it is long. */
  static Shown number(BigDecimal number) {
    return new Shown(plain(number.round(FIGURES)), null, UnitOfMeasure.ONE);
  }

  static BigDecimal plain(BigDecimal rounded) {
    return rounded.scale() < 0 && rounded.abs().compareTo(LONG) < 0 ? rounded.setScale(0) : rounded;
  }
}
