package plainscale.quantity;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * First-order uncertainty kept as derivatives by source: the quantity changes by {@code derivative
 * × dx} when the source changes by {@code dx} (both in coherent SI units). Correlation between
 * results that share a source needs no further bookkeeping (JCGM 100:2008, 5.1 and 5.2, for
 * independent sources).
 */
public final class Uncertainty {
  /** No uncertainty. */
  public static final Uncertainty NONE = new Uncertainty(Map.of());

  /** Relative size below which a sum of two contributions is nothing. */
  private static final double CANCELLED = 1e-13;

  private final Map<Source, Double> derivatives;

  private Uncertainty(Map<Source, Double> derivatives) {
    this.derivatives = derivatives;
  }

  /** The uncertainty of the measured quantity itself. */
  public static Uncertainty of(Source source) {
    return new Uncertainty(Collections.singletonMap(source, 1.0));
  }

  /** The uncertainty of a quantity with these sensitivities. */
  public static Uncertainty of(Map<Source, Double> derivatives) {
    return new Uncertainty(new LinkedHashMap<>(derivatives));
  }

  /** The sensitivity to each source. */
  public Map<Source, Double> derivatives() {
    return Collections.unmodifiableMap(derivatives);
  }

  /** The same, its source under another name, if it is that of one measurement alone. */
  Uncertainty called(String name) {
    if (derivatives.size() != 1) {
      return this;
    }
    Map.Entry<Source, Double> only = derivatives.entrySet().iterator().next();
    return only.getValue() == 1
        ? new Uncertainty(Collections.singletonMap(only.getKey().called(name), 1.0))
        : this;
  }

  /** The uncertainty of {@code f(x)} where {@code slope} is f′(x). */
  public Uncertainty times(double slope) {
    return combine(slope, this, 0, NONE);
  }

  /** The uncertainty of {@code f(x, y)} by the chain rule, from the two partial derivatives. */
  public static Uncertainty combine(double byX, Uncertainty x, double byY, Uncertainty y) {
    if (x.derivatives.isEmpty() && y.derivatives.isEmpty()) {
      return NONE;
    }
    Map<Source, Double> sum = new LinkedHashMap<>();
    x.derivatives.forEach((source, d) -> sum.merge(source, byX * d, Double::sum));
    y.derivatives.forEach((source, d) -> sum.merge(source, byY * d, Uncertainty::sum));
    return new Uncertainty(sum);
  }

  /** What is left of two equal contributions is dust of the binary form. */
  private static double sum(double x, double y) {
    double sum = x + y;
    return Math.abs(sum) < CANCELLED * Math.abs(x) ? 0 : sum;
  }

  /**
   * The combined standard uncertainty: the root of the sum of the squared contributions (JCGM
   * 100:2008, 5.1.2).
   */
  public double standard() {
    double scale = 0;
    for (Map.Entry<Source, Double> part : derivatives.entrySet()) {
      scale = Math.hypot(scale, part.getValue() * part.getKey().standard());
    }
    return scale;
  }

  /**
   * The coefficient of correlation with another uncertainty, by the sources that both have (JCGM
   * 100:2008, 5.2.2); zero if either is certain.
   */
  public double correlation(Uncertainty other) {
    double together = 0;
    double both = standard() * other.standard();
    for (Map.Entry<Source, Double> part : derivatives.entrySet()) {
      double variance = Math.pow(part.getKey().standard(), 2);
      together += part.getValue() * other.derivatives.getOrDefault(part.getKey(), 0.0) * variance;
    }
    return both == 0 ? 0 : together / both;
  }
}
