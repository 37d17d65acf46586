package plainscale.quantity;

import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plainscale.units.UnitOfMeasure;

/**
 * A quantity as it is to be printed: the value rounded to the figures that it keeps (the scale of
 * the decimal says which), the uncertainty to the same place, both in {@code unit}.
 */
public record Shown(BigDecimal value, @Nullable BigDecimal uncertain, UnitOfMeasure unit) {

  /**
   * The most figures of an uncertainty (JCGM 100:2008, 7.2.6); to so many a shorter value is
   * padded.
   */
  private static final int MOST_UNCERTAIN = 2;

  /**
   * A value and its uncertainty as written, if they go to the same place or the value is padded by
   * it: 3 ± 0.1 is 3.0 ± 0.1.
   */
  static Optional<Shown> asWritten(BigDecimal value, BigDecimal uncertainty, UnitOfMeasure unit) {
    boolean padded =
        value.scale() < uncertainty.scale() && uncertainty.precision() <= MOST_UNCERTAIN;
    return padded || value.scale() == uncertainty.scale()
        ? Optional.of(new Shown(value.setScale(uncertainty.scale()), uncertainty, unit))
        : Optional.empty();
  }

  /** The uncertainty, if one is shown. */
  public Optional<BigDecimal> uncertainty() {
    return Optional.ofNullable(uncertain);
  }

  /**
   * The same with another number of figures in the value; the uncertainty goes to the same place or
   * away.
   */
  public Shown toFigures(int figures) {
    return Rounding.toFigures(value, uncertain, unit, figures);
  }

  /**
   * An estimate with a standard uncertainty of two figures, the most that it may have (JCGM
   * 100:2008, 7.2.6), both in the coherent SI unit; without an uncertainty to {@code figures}.
   */
  public static Shown estimate(double value, double standard, UnitOfMeasure unit, int figures) {
    BigDecimal inUnit = unit.fromCoherent(Decimals.from(value));
    BigDecimal u = inUnit(standard, unit);
    return u.signum() > 0
        ? Rounding.at(inUnit, u, unit, -toTwo(u).scale())
        : Rounding.toFigures(inUnit, null, unit, figures);
  }

  /** A standard uncertainty alone, to two figures. */
  public static Shown doubt(double standard, UnitOfMeasure unit) {
    BigDecimal u = inUnit(standard, unit);
    return new Shown(u.signum() > 0 ? toTwo(u) : BigDecimal.ZERO, null, unit);
  }

  private static BigDecimal inUnit(double standard, UnitOfMeasure unit) {
    return Decimals.from(standard / Math.abs(unit.factor().doubleValue()));
  }

  private static BigDecimal toTwo(BigDecimal u) {
    return Rounding.toFigures(u, null, UnitOfMeasure.ONE, MOST_UNCERTAIN).value();
  }

  /**
   * Half of the last digit that a quantity shows of that standard uncertainty, both in the coherent
   * SI unit.
   */
  public static double halfStep(double standard, UnitOfMeasure unit) {
    double factor = Math.abs(unit.factor().doubleValue());
    return standard == 0
        ? 0
        : 0.5 * factor * Math.pow(10, Rounding.uncertaintyPlace(standard / factor));
  }

  /** A value in the coherent SI unit, to the place to which this one is rounded. */
  public Shown toSamePlace(double other) {
    return Rounding.at(unit.fromCoherent(Decimals.from(other)), null, unit, -value.scale());
  }
}
