package plainscale.field;

/** Steps of 1, 2 or 5 times a power of ten. */
public final class RoundStep {
  private static final double[] STEPS = {1, 2, 5, 10};
  private static final double ROUNDING = 1e-9;

  private RoundStep() {}

  /** The least round step that is not smaller than {@code rough}, which is positive. */
  public static double atLeast(double rough) {
    Checks.positive(rough, "A step");
    double exponent = Math.floor(Math.log10(rough));
    for (double step : STEPS) {
      double candidate = times(step, exponent);
      if (candidate >= rough * (1 - ROUNDING)) {
        return candidate;
      }
    }
    return times(1, exponent + 1);
  }

  /** Dividing by a whole power keeps 0.2 the decimal 0.2. */
  private static double times(double step, double exponent) {
    return exponent < 0 ? step / Math.pow(10, -exponent) : step * Math.pow(10, exponent);
  }
}
