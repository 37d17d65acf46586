package plainscale.data;

import java.math.BigDecimal;
import java.util.Map;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.StatUtils;
import plainscale.quantity.Decimals;
import plainscale.quantity.Quantity;
import plainscale.quantity.Source;
import plainscale.quantity.Uncertainty;

/**
 * The mean of values with weights 1/u², in the unit of the column. Its uncertainty follows from the
 * stated uncertainties (internal), and from the scatter of the values (external); their ratio tells
 * whether the two agree (R. T. Birge, Physical Review 40 (1932) 207).
 *
 * @param sample the values
 * @param mean the weighted mean
 * @param internal 1/√Σw
 * @param external √(Σw(x − mean)²/((n − 1)Σw)); nothing for a single value
 * @param chiSquare Σw(x − mean)²
 */
public record WeightedMean(
    Sample sample, BigDecimal mean, double internal, OptionalDouble external, ChiSquare chiSquare) {

  /** Of a sample whose values all have an uncertainty; else a {@link DataException}. */
  public static WeightedMean of(Sample sample) {
    double[] standards = sample.standards();
    double least = StatUtils.min(standards);
    double[] deviations = sample.deviations();
    double total = 0;
    double sum = 0;
    for (int i = 0; i < standards.length; i++) {
      double weight = Math.pow(least / standards[i], 2);
      total += weight;
      sum += weight * deviations[i];
    }
    double shift = sum / total;
    double internal = least / Math.sqrt(total);
    ChiSquare chi = chiSquare(deviations, standards, shift);
    OptionalDouble external =
        chi.birge().isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(internal * chi.birge().getAsDouble());
    BigDecimal mean = sample.mean().add(new BigDecimal(shift), Decimals.DIGITS);
    return new WeightedMean(sample, mean, internal, external, chi);
  }

  private static ChiSquare chiSquare(double[] deviations, double[] standards, double shift) {
    double sum = 0;
    for (int i = 0; i < deviations.length; i++) {
      sum += Math.pow((deviations[i] - shift) / standards[i], 2);
    }
    return new ChiSquare(sum, deviations.length - 1);
  }

  /** The mean with the internal uncertainty, a source of its own at each call. */
  public Quantity quantity() {
    return with(internal);
  }

  /** The mean with the larger of the two uncertainties, a source of its own at each call. */
  public Quantity widened() {
    return with(Math.max(internal, external.orElse(0)));
  }

  private Quantity with(double standard) {
    Source source = new Source(sample.name(), standard * sample.step());
    return Quantity.estimated(mean, Uncertainty.of(Map.of(source, 1.0)), sample.unit());
  }
}
