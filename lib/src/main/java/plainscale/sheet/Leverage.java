package plainscale.sheet;

import java.util.function.DoubleUnaryOperator;

/**
 * How a value follows a given, and by which factor the given must change for the value to reach a
 * limit: a secant search over the logarithm of the factor, for the logarithm of the value where
 * value and limit have the same sign.
 */
final class Leverage {
  private static final double STEP = 1e-4;
  private static final int MOST_STEPS = 40;
  private static final double NEAR = 1e-6;
  private static final double FURTHEST = 60;

  /** What comes to zero only by being nothing itself does not reach it. */
  private static final double ZERO = Math.log(1000);

  private final double value;
  private final double limit;
  private final DoubleUnaryOperator valueAt;

  /** {@code valueAt} gives the value for a factor of the given; not a number where it has none. */
  Leverage(double value, double limit, DoubleUnaryOperator valueAt) {
    this.value = value;
    this.limit = limit;
    this.valueAt = valueAt;
  }

  /** By how much the value follows, for each unit of the logarithm of the factor. */
  double slope() {
    double slope = (missing(STEP) - missing(-STEP)) / (2 * STEP);
    return Double.isFinite(slope) ? slope : 0;
  }

  /** What is missing to the limit at a factor e^t, in the logarithm where there is one. */
  private double missing(double t) {
    double then = valueAt.applyAsDouble(Math.exp(t));
    return value * limit > 0 ? Math.log(then / limit) : then - limit;
  }

  /** The factor, not a number if none was found. */
  double factor() {
    double before = 0;
    double missedBefore = missing(0);
    double scale = Math.max(Math.abs(missedBefore), Double.MIN_NORMAL);
    double at = bounded(-missedBefore / slope());
    for (int i = 0; i < MOST_STEPS; i++) {
      double missed = missing(at);
      if (Math.abs(missed) <= NEAR * scale) {
        return limit == 0 && Math.abs(at) > ZERO ? Double.NaN : Math.exp(at);
      }
      double next = bounded(at - missed * (at - before) / (missed - missedBefore));
      before = at;
      missedBefore = missed;
      at = next;
      if (!Double.isFinite(at)) {
        return Double.NaN;
      }
    }
    return Double.NaN;
  }

  private static double bounded(double t) {
    return Double.isNaN(t) ? t : Math.max(-FURTHEST, Math.min(FURTHEST, t));
  }
}
