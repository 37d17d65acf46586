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
   * The most figures of an uncertainty to which a shorter value is padded (JCGM 100:2008, 7.2.6).
   */
  private static final int MOST_PADDED = 2;

  /**
   * A value and its uncertainty as written, if they go to the same place or the value is padded by
   * it: 3 ± 0.1 is 3.0 ± 0.1.
   */
  static Optional<Shown> asWritten(BigDecimal value, BigDecimal uncertainty, UnitOfMeasure unit) {
    boolean padded = value.scale() < uncertainty.scale() && uncertainty.precision() <= MOST_PADDED;
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
   * An estimate with a standard uncertainty, both in the coherent SI unit, rounded as a quantity
   * with that uncertainty is; without an uncertainty to {@code figures}.
   */
  public static Shown estimate(double value, double standard, UnitOfMeasure unit, int figures) {
    BigDecimal inUnit = unit.fromCoherent(Decimals.from(value));
    double u = standard / Math.abs(unit.factor().doubleValue());
    return u > 0
        ? Rounding.at(inUnit, Decimals.from(u), unit, Rounding.uncertaintyPlace(u))
        : Rounding.toFigures(inUnit, null, unit, figures);
  }

  /** A standard uncertainty alone, rounded as beside its value. */
  public static Shown doubt(double standard, UnitOfMeasure unit) {
    double u = standard / Math.abs(unit.factor().doubleValue());
    return u > 0
        ? Rounding.at(Decimals.from(u), null, unit, Rounding.uncertaintyPlace(u))
        : new Shown(BigDecimal.ZERO, null, unit);
  }

  /** A value in the coherent SI unit, to the place to which this one is rounded. */
  public Shown toSamePlace(double other) {
    return Rounding.at(unit.fromCoherent(Decimals.from(other)), null, unit, -value.scale());
  }
}
