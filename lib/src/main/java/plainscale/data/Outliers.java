package plainscale.data;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.special.Erf;

/**
 * Values that lie far from the others, by a stated rule. Nothing is dropped: it is the reader who
 * decides, with a reason.
 *
 * @param rule the rule
 * @param low values below are told
 * @param high values above are told
 * @param found the values, by row
 */
public record Outliers(Rule rule, double low, double high, List<Outlier> found) {
  private static final double FENCE = 1.5;

  /** A value beyond the limits, and the row in which it stands. */
  public record Outlier(int row, BigDecimal value) {}

  /** Which limits. */
  public enum Rule {
    /**
     * 1.5 times the distance of the quartiles beyond the quartiles: J. W. Tukey, Exploratory Data
     * Analysis (1977), chapter 2; the quartiles are those of {@link Statistics}, not his hinges.
     */
    TUKEY,
    /**
     * So far from the mean that of n values from a normal distribution less than half a one would
     * lie there: W. Chauvenet, A Manual of Spherical and Practical Astronomy (1863), volume II,
     * appendix; J. R. Taylor, An Introduction to Error Analysis, chapter 6.
     */
    CHAUVENET
  }

  /** Keeps its own copy. */
  public Outliers {
    found = List.copyOf(found);
  }

  /** By Tukey's fences. */
  public static Outliers tukey(Statistics of) {
    double reach = FENCE * (of.upperQuartile() - of.lowerQuartile());
    return beyond(Rule.TUKEY, of, of.lowerQuartile() - reach, of.upperQuartile() + reach);
  }

  /** By Chauvenet's criterion; with fewer than three values nothing is told. */
  public static Outliers chauvenet(Statistics of) {
    int n = of.count();
    double deviation = of.deviation().orElse(0);
    double reach =
        n < 3 ? Double.POSITIVE_INFINITY : deviation * Math.sqrt(2) * Erf.erfcInv(1 / (2.0 * n));
    double mean = of.mean().doubleValue();
    return beyond(Rule.CHAUVENET, of, mean - reach, mean + reach);
  }

  private static Outliers beyond(Rule rule, Statistics of, double low, double high) {
    List<Outlier> found = new ArrayList<>();
    for (int i = 0; i < of.count(); i++) {
      BigDecimal value = of.sample().value(i);
      if (value.doubleValue() < low || value.doubleValue() > high) {
        found.add(new Outlier(of.sample().row(i), value));
      }
    }
    return new Outliers(rule, low, high, found);
  }
}
