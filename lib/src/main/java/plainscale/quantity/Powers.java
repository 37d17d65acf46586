package plainscale.quantity;

import static plainscale.quantity.QuantityException.Fault.UNIT;
import static plainscale.quantity.QuantityException.Fault.VALUE;

import java.math.BigDecimal;
import java.util.Optional;
import org.apache.commons.math3.fraction.Fraction;
import org.apache.commons.math3.fraction.FractionConversionException;
import plainscale.units.Kind;
import plainscale.units.Kinds;

/**
 * Powers: d(xʸ) = y xʸ⁻¹ dx + xʸ ln x dy. A base with a unit takes an exact exponent that is a
 * fraction with a small denominator, since the unit is raised with it.
 */
final class Powers {
  private static final int LARGEST_DENOMINATOR = 12;
  private static final int LARGEST_UNIT_EXPONENT = 60;
  private static final double EXACTNESS = 1e-12;
  private static final int MOST_ITERATIONS = 100;

  private Powers() {}

  static Quantity of(Quantity base, Quantity exponent) {
    if (!exponent.kind().isNumber()) {
      String kind = Kinds.of(exponent.kind()).withArticle();
      throw new QuantityException(UNIT, "An exponent is a plain number; this one is " + kind + ".");
    }
    if (base.value().signum() == 0 && exponent.value().signum() <= 0) {
      throw new QuantityException(VALUE, "Zero has no power with an exponent of zero or below.");
    }
    BigDecimal value = value(base.value(), exponent.value());
    return Quantity.computed(
        value,
        kind(base, exponent),
        uncertainty(base, exponent, value),
        figures(base, exponent, value));
  }

  private static BigDecimal value(BigDecimal x, BigDecimal y) {
    refuseOutOfRange(x, y);
    if (isWhole(y) && y.abs().compareTo(BigDecimal.valueOf(999)) <= 0) {
      return x.pow(y.intValueExact(), Decimals.DIGITS);
    }
    if (y.compareTo(new BigDecimal("0.5")) == 0 && x.signum() >= 0) {
      return x.sqrt(Decimals.DIGITS);
    }
    double power = Math.pow(x.doubleValue(), y.doubleValue());
    if (Double.isNaN(power)) {
      throw new QuantityException(VALUE, "A negative base takes a whole exponent only.");
    }
    return Decimals.from(power);
  }

  private static void refuseOutOfRange(BigDecimal x, BigDecimal y) {
    double exponent = x.signum() == 0 ? 0 : y.doubleValue() * log10(x);
    if (exponent > Decimals.LARGEST_EXPONENT + 1.0) {
      throw Decimals.tooLarge();
    }
    Decimals.inRange(BigDecimal.ONE.scaleByPowerOfTen((int) Math.max(exponent, -9999)));
  }

  private static double log10(BigDecimal x) {
    int exponent = Decimals.exponent(x);
    return exponent + Math.log10(x.abs().scaleByPowerOfTen(-exponent).doubleValue());
  }

  private static boolean isWhole(BigDecimal y) {
    return y.signum() == 0 || y.stripTrailingZeros().scale() <= 0;
  }

  private static Kind kind(Quantity base, Quantity exponent) {
    if (base.kind().isNumber()) {
      return Kind.NUMBER;
    }
    if (!exponent.figures().exact() || exponent.uncertainty().standard() > 0) {
      throw new QuantityException(
          UNIT, "A quantity with a unit takes an exact exponent, such as 2 or 1/2.");
    }
    return fraction(exponent.value().doubleValue())
        .map(f -> base.kind().power(f.getNumerator(), f.getDenominator()))
        .orElseThrow(
            () ->
                new QuantityException(
                    UNIT,
                    "A quantity with a unit takes an exponent such as 2, 3/2 or −1; this one is not."));
  }

  /** The exponent as a fraction that a unit can be raised to, if it is one. */
  private static Optional<Fraction> fraction(double exponent) {
    try {
      Fraction fraction = new Fraction(exponent, EXACTNESS, MOST_ITERATIONS);
      boolean small =
          fraction.getDenominator() <= LARGEST_DENOMINATOR
              && Math.abs(fraction.getNumerator()) <= LARGEST_UNIT_EXPONENT;
      return small ? Optional.of(fraction) : Optional.empty();
    } catch (FractionConversionException noSmallFraction) {
      return Optional.empty();
    }
  }

  private static Uncertainty uncertainty(Quantity base, Quantity exponent, BigDecimal value) {
    double x = base.value().doubleValue();
    double y = exponent.value().doubleValue();
    double byX = x == 0 ? (y == 1 ? 1 : 0) : y * value.doubleValue() / x;
    double byY =
        exponent.uncertainty().derivatives().isEmpty() ? 0 : value.doubleValue() * Math.log(x);
    return Uncertainty.combine(byX, base.uncertainty(), byY, exponent.uncertainty());
  }

  private static Figures figures(Quantity base, Quantity exponent, BigDecimal value) {
    return Figures.ofProduct(value, base.figures(), exponent.figures());
  }
}
