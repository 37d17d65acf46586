package plainscale.quantity;

import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Repeated readings of one quantity: their mean, and as its standard uncertainty the standard
 * deviation of the readings over the root of their number (JCGM 100:2008, 4.2).
 */
public record Readings(List<BigDecimal> values) {

  /** Keeps its own copy; a mean needs two readings to have an uncertainty. */
  public Readings {
    values = List.copyOf(values);
    if (values.size() < 2) {
      throw new IllegalArgumentException("readings: " + values.size());
    }
  }

  /** How many there are. */
  public int count() {
    return values.size();
  }

  /** The arithmetic mean. */
  public BigDecimal mean() {
    BigDecimal sum = values.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    return sum.divide(BigDecimal.valueOf(count()), Decimals.DIGITS);
  }

  /** The standard uncertainty of the mean. */
  public double standard() {
    return Math.sqrt(StatUtils.variance(deviations()) / count());
  }

  /** What the readings differ from their mean, taken in decimals so that no digit is lost. */
  double[] deviations() {
    BigDecimal mean = mean();
    return values.stream().mapToDouble(v -> v.subtract(mean).doubleValue()).toArray();
  }
}
