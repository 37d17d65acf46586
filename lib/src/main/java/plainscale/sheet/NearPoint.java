package plainscale.sheet;

import java.util.Optional;
import plainscale.quantity.Quantity;

/**
 * A value in one row on the way to a limit, and by which part of it rounding may have moved it; no
 * quantity where there is no value.
 */
record NearPoint(Optional<Quantity> quantity, double noise) {
  /** A value that rounding may have moved by more than this part does not count. */
  private static final double MOST_NOISE = 1e-4;

  boolean counts() {
    return quantity.isPresent() && noise <= MOST_NOISE;
  }

  double value() {
    return value(quantity.orElseThrow());
  }

  /** In the unit in which it is shown: a temperature in °C goes to zero where its scale does. */
  static double value(Quantity quantity) {
    return quantity.displayUnit().fromCoherent(quantity.value()).doubleValue();
  }
}
