package plainscale.data;

import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;

/**
 * A sum of squared residuals, each over its standard uncertainty, and its degrees of freedom, the
 * number of values less the number of parameters.
 */
public record ChiSquare(double value, int freedom) {

  /** χ² over the degrees of freedom, near 1 if scatter and uncertainties agree. */
  public OptionalDouble reduced() {
    return freedom > 0 ? OptionalDouble.of(value / freedom) : OptionalDouble.empty();
  }

  /** The Birge ratio, the root of the reduced χ². */
  public OptionalDouble birge() {
    return freedom > 0 ? OptionalDouble.of(Math.sqrt(value / freedom)) : OptionalDouble.empty();
  }

  /** The probability of a χ² as large as this or larger, if the uncertainties are right. */
  public OptionalDouble probability() {
    return freedom > 0
        ? OptionalDouble.of(1 - new ChiSquaredDistribution(freedom).cumulativeProbability(value))
        : OptionalDouble.empty();
  }
}
