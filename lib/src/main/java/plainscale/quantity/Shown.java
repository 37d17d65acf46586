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

  /** A value and its uncertainty as written, brought to the finer of their last places. */
  static Shown toTheSamePlace(BigDecimal value, BigDecimal uncertainty, UnitOfMeasure unit) {
    int scale = Math.max(value.scale(), uncertainty.scale());
    return new Shown(value.setScale(scale), uncertainty.setScale(scale), unit);
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
}
