package plainscale.notation;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plainscale.quantity.Distribution;
import plainscale.units.UnitOfMeasure;

/**
 * A measured value as written; without an uncertainty its digits are its figures. What the
 * uncertainty means is up to {@code distribution}; of several readings the value is the first.
 */
public record Measurement(
    BigDecimal value,
    @Nullable BigDecimal uncertain,
    UnitOfMeasure unit,
    boolean count,
    Distribution distribution,
    List<BigDecimal> readings) {
  /** Keeps its own copy of the readings. */
  public Measurement {
    readings = List.copyOf(readings);
  }

  /** One value, with a standard uncertainty if any. */
  public Measurement(
      BigDecimal value, @Nullable BigDecimal uncertain, UnitOfMeasure unit, boolean count) {
    this(value, uncertain, unit, count, Distribution.NORMAL, List.of());
  }

  /** What is written after ±, in {@link #unit}. */
  public Optional<BigDecimal> uncertainty() {
    return Optional.ofNullable(uncertain);
  }
}
