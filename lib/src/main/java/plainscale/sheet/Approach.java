package plainscale.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.units.UnitOfMeasure;

/**
 * The way of a name to its limit, in one unit: from the value that it has now, a tenth of the
 * distance in each row; or, without a goal, ten times as much.
 */
record Approach(BigDecimal start, @Nullable BigDecimal goal, UnitOfMeasure unit) {
  private static final int FIGURES = 3;
  private static final int EVERYDAY = 6;
  private static final MathContext WITHOUT_DUST = new MathContext(30, RoundingMode.HALF_EVEN);
  private static final MathContext START = new MathContext(FIGURES, RoundingMode.HALF_EVEN);

  /**
   * From a value; the first distance is rounded, so that the rows can be computed again by hand.
   */
  static Approach of(Quantity now, @Nullable Quantity goal) {
    Optional<UnitOfMeasure> other = Optional.ofNullable(goal).flatMap(Quantity::unit);
    UnitOfMeasure unit = now.unit().or(() -> other).orElseGet(now::displayUnit);
    BigDecimal start = unit.fromCoherent(now.value());
    if (goal == null) {
      return new Approach(start.round(START), null, unit);
    }
    BigDecimal end = unit.fromCoherent(goal.value()).round(WITHOUT_DUST);
    return new Approach(start.subtract(end).round(START), end, unit);
  }

  /** Whether there is no way to go. */
  boolean isEmpty() {
    return start.signum() == 0 || (goal == null && start.signum() < 0);
  }

  boolean above() {
    return start.signum() > 0;
  }

  /** The name in that row, with its distance changed by a factor. */
  Quantity at(int row, double factor) {
    return Quantity.exact(place(row, BigDecimal.valueOf(factor)), unit);
  }

  private BigDecimal place(int row, BigDecimal factor) {
    BigDecimal changed = start.multiply(factor);
    return goal == null
        ? changed.scaleByPowerOfTen(row)
        : goal.add(changed.scaleByPowerOfTen(-row));
  }

  /** To the figures of the distance. */
  Shown shown(int row) {
    BigDecimal value = place(row, BigDecimal.ONE);
    int place = start.scale() + (goal == null ? -row : row);
    return plain(value.setScale(place, RoundingMode.HALF_EVEN));
  }

  /** What it comes near to, as written. */
  Optional<Shown> end() {
    return Optional.ofNullable(goal).map(this::plain);
  }

  /** Without zeros at the end of a decimal, and of everyday size without a power of ten. */
  private Shown plain(BigDecimal value) {
    BigDecimal stripped = value.stripTrailingZeros();
    boolean whole = stripped.scale() < 0 && stripped.precision() - stripped.scale() <= EVERYDAY;
    return new Shown(whole ? stripped.setScale(0) : stripped, null, unit);
  }
}
