package plainscale.data;

import java.math.BigDecimal;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;
import plainscale.quantity.Quantity;
import plainscale.quantity.Source;
import plainscale.quantity.Uncertainty;

/**
 * What describes a sample, in the unit of its column.
 *
 * @param sample the values
 * @param mean the arithmetic mean
 * @param deviation the standard deviation of the values, with n − 1 (JCGM 100:2008, 4.2.2); nothing
 *     for a single value
 * @param standard the standard uncertainty of the mean, the deviation over √n (4.2.3)
 * @param median the value in the middle, or the mean of the two there
 * @param lowerQuartile the first quartile by linear interpolation between the ordered values,
 *     position 1 + (n − 1)/4 (definition 7 in R. J. Hyndman and Y. Fan, The American Statistician
 *     50 (1996) 361)
 * @param upperQuartile the third quartile, likewise
 * @param smallest the smallest value as written
 * @param largest the largest value as written
 * @param quantity the mean with its standard uncertainty, a source of its own
 */
public record Statistics(
    Sample sample,
    BigDecimal mean,
    OptionalDouble deviation,
    OptionalDouble standard,
    double median,
    double lowerQuartile,
    double upperQuartile,
    BigDecimal smallest,
    BigDecimal largest,
    Quantity quantity) {

  /** The statistics of a sample. */
  public static Statistics of(Sample sample) {
    double[] deviations = sample.deviations();
    double mean = sample.mean().doubleValue();
    Percentile percentile = new Percentile().withEstimationType(EstimationType.R_7);
    percentile.setData(deviations);
    OptionalDouble deviation = deviation(deviations);
    OptionalDouble standard = over(deviation, Math.sqrt(sample.count()));
    return new Statistics(
        sample,
        sample.mean(),
        deviation,
        standard,
        mean + percentile.evaluate(50),
        mean + percentile.evaluate(25),
        mean + percentile.evaluate(75),
        extreme(sample, -1),
        extreme(sample, 1),
        quantity(sample, standard.orElse(0)));
  }

  /** The number of values. */
  public int count() {
    return sample.count();
  }

  /** Scaled to the largest, since squares of 10⁻²⁰⁰ are nothing in doubles. */
  static OptionalDouble deviation(double[] deviations) {
    if (deviations.length < 2) {
      return OptionalDouble.empty();
    }
    double scale = largest(deviations);
    double[] scaled =
        IntStream.range(0, deviations.length)
            .mapToDouble(i -> scale == 0 ? 0 : deviations[i] / scale)
            .toArray();
    return OptionalDouble.of(scale * Math.sqrt(StatUtils.variance(scaled)));
  }

  static double largest(double[] values) {
    double largest = 0;
    for (double value : values) {
      largest = Math.max(largest, Math.abs(value));
    }
    return largest;
  }

  private static OptionalDouble over(OptionalDouble x, double divisor) {
    return x.isEmpty() ? x : OptionalDouble.of(x.getAsDouble() / divisor);
  }

  private static BigDecimal extreme(Sample sample, int sign) {
    BigDecimal extreme = sample.value(0);
    for (int i = 1; i < sample.count(); i++) {
      extreme = sample.value(i).compareTo(extreme) * sign > 0 ? sample.value(i) : extreme;
    }
    return extreme;
  }

  private static Quantity quantity(Sample sample, double standard) {
    if (standard == 0) {
      return Quantity.written(sample.value(0), sample.unit());
    }
    Source source = new Source(sample.name(), standard * sample.step());
    return Quantity.estimated(sample.mean(), Uncertainty.of(source), sample.unit());
  }
}
