package plainscale.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import plainscale.units.UnitOfMeasure;

/**
 * Rounds once, at the end, half to even (ISO 80000-1:2009, B.3, rule A). Where an uncertainty is
 * known its figures decide: two if its first three digits are 100 to 354 (and for 950 to 999, which
 * become 1000), else one (Particle Data Group, Review of Particle Physics, introduction 5.3).
 */
final class Rounding {
  /** Figures of an exact value that does not end, such as 1/3. */
  private static final int ENDLESS = 6;

  /** Digits up to which an exact value is shown whole; what a function gives has more. */
  private static final int WHOLE = 12;

  /** Drops the last digits of the working precision, where quotients leave dust. */
  private static final MathContext WITHOUT_DUST = new MathContext(32, RoundingMode.HALF_EVEN);

  /**
   * Functions are computed with fifteen digits; where fewer than {@link #SHORT} differ from zero,
   * the rest is dust.
   */
  private static final MathContext OF_FUNCTION = new MathContext(13, RoundingMode.HALF_EVEN);

  private static final int SHORT = 9;

  /** Exact numbers below this power of ten are written without one. */
  private static final int EVERYDAY = 6;

  private Rounding() {}

  /** The value in that unit, with the figures that uncertainty and written figures justify. */
  static Shown shown(Quantity quantity, UnitOfMeasure unit) {
    BigDecimal value = unit.fromCoherent(quantity.value());
    double factor = unit.factor().doubleValue();
    double u = quantity.uncertainty().standard() / Math.abs(factor);
    Figures figures = quantity.figures();
    if (u == 0 && figures.exact()) {
      return new Shown(exact(value), null, unit);
    }
    int place = Integer.MIN_VALUE;
    if (u > 0) {
      place = uncertaintyPlace(u);
    }
    if (!figures.exact()) {
      place = Math.max(place, figurePlace(value, figures, unit));
    }
    return at(value, u == 0 ? null : Decimals.from(u), unit, place);
  }

  /** The value with that many figures. */
  static Shown toFigures(
      BigDecimal value, @Nullable BigDecimal u, UnitOfMeasure unit, int figures) {
    return at(value, u, unit, roundedExponent(value, figures) - figures + 1);
  }

  private static BigDecimal exact(BigDecimal value) {
    if (value.signum() == 0) {
      return BigDecimal.ZERO;
    }
    BigDecimal stripped = value.round(WITHOUT_DUST).stripTrailingZeros();
    if (stripped.precision() <= WHOLE || isWhole(stripped)) {
      return readable(stripped);
    }
    BigDecimal asFunction = value.round(OF_FUNCTION).stripTrailingZeros();
    return asFunction.precision() <= SHORT
        ? readable(asFunction)
        : round(value, Decimals.exponent(value) - ENDLESS + 1);
  }

  private static boolean isWhole(BigDecimal stripped) {
    return stripped.scale() <= 0 && stripped.precision() < WITHOUT_DUST.getPrecision();
  }

  /** 30, not 3 × 10¹: an exact number of everyday size is written out. */
  private static BigDecimal readable(BigDecimal stripped) {
    boolean everyday = stripped.scale() < 0 && Decimals.exponent(stripped) < EVERYDAY;
    return everyday ? stripped.setScale(0) : stripped;
  }

  private static int figurePlace(BigDecimal value, Figures figures, UnitOfMeasure unit) {
    boolean byStep = unit.isScale() || value.signum() == 0 || figures.count() < 1;
    return byStep
        ? Figures.place(figures.step() / unit.factor().abs().doubleValue())
        : roundedExponent(value, figures.count()) - figures.count() + 1;
  }

  /** The exponent after rounding: 9.96 to two figures is 10, so its last place is the ones. */
  private static int roundedExponent(BigDecimal value, int figures) {
    if (value.signum() == 0) {
      return 0;
    }
    int exponent = Decimals.exponent(value);
    return Decimals.exponent(round(value, exponent - figures + 1));
  }

  static Shown at(BigDecimal value, @Nullable BigDecimal u, UnitOfMeasure unit, int place) {
    BigDecimal uncertain = u == null ? null : round(u, place);
    return new Shown(
        round(value, place), uncertain == null || uncertain.signum() == 0 ? null : uncertain, unit);
  }

  /** The power of ten of the last digit that is kept of an uncertainty. */
  static int uncertaintyPlace(double u) {
    int exponent = (int) Math.floor(Math.log10(u));
    long leading = Math.round(u / Math.pow(10, exponent) * 100);
    if (leading >= 1000) { // the logarithm sat on a power of ten
      exponent++;
      leading /= 10;
    }
    if (leading >= 950) {
      return exponent;
    }
    return leading <= 354 ? exponent - 1 : exponent;
  }

  private static BigDecimal round(BigDecimal value, int place) {
    return value.setScale(-place, RoundingMode.HALF_EVEN);
  }
}
