package plainscale.algebra;

import java.util.OptionalDouble;

/**
 * The standard uncertainty to second order, for sources that are independent and normal: to the sum
 * of the squares come ½(∂²f/∂x∂y)² + (∂f/∂x)(∂³f/∂x∂y²), times the two variances, over all pairs
 * (JCGM 100:2008, note to 5.1.2). The derivatives are central differences with a step of {@value
 * #STEP} of the standard uncertainty of each source.
 */
public final class SecondOrder {
  private static final double STEP = 0.25;

  /** So many standard uncertainties around the estimate the function has to exist. */
  private static final double AROUND = 2;

  /** The work grows with the square of the number of sources. */
  private static final int MOST = 100;

  private final Compiled function;
  private final Cost cost;
  private final double[] at;
  private final double centre;

  private SecondOrder(Compiled function, Cost cost) {
    this.function = function;
    this.cost = cost;
    this.at = new double[function.sources().size()];
    this.centre = function.at(at);
  }

  /**
   * The standard uncertainty; empty where the function does not exist all around its estimate, or
   * bends so much that a second order does not describe it, or has more than {@value #MOST}
   * sources.
   */
  public static OptionalDouble standard(Compiled function, Cost cost) {
    if (function.sources().size() > MOST) {
      return OptionalDouble.empty();
    }
    double variance = new SecondOrder(function, cost).variance();
    return variance >= 0 ? OptionalDouble.of(Math.sqrt(variance)) : OptionalDouble.empty();
  }

  /** Sources are measured in their standard uncertainties here, so all variances are 1. */
  private double variance() {
    double variance = 0;
    for (int i = 0; i < at.length; i++) {
      if (Double.isNaN(value(i, AROUND) + value(i, -AROUND))) {
        return Double.NaN;
      }
      double slope = slope(i);
      variance += slope * slope;
      for (int j = 0; j < at.length; j++) {
        double bend = i == j ? curvature(i) : mixed(i, j);
        double third =
            i == j ? third(i) : (curvatureAt(i, STEP, j) - curvatureAt(i, -STEP, j)) / (2 * STEP);
        variance += bend * bend / 2 + slope * third;
      }
    }
    return variance;
  }

  private double value(int i, double step) {
    at[i] += step;
    cost.pay();
    double value = function.at(at);
    at[i] -= step;
    return value;
  }

  private double slope(int i) {
    return (8 * (value(i, STEP) - value(i, -STEP)) - (value(i, 2 * STEP) - value(i, -2 * STEP)))
        / (12 * STEP);
  }

  private double curvature(int i) {
    return (value(i, STEP) - 2 * centre + value(i, -STEP)) / (STEP * STEP);
  }

  private double third(int i) {
    return (value(i, 2 * STEP) - value(i, -2 * STEP) - 2 * (value(i, STEP) - value(i, -STEP)))
        / (2 * STEP * STEP * STEP);
  }

  private double mixed(int i, int j) {
    double high = valueAt(i, STEP, j, STEP) - valueAt(i, STEP, j, -STEP);
    double low = valueAt(i, -STEP, j, STEP) - valueAt(i, -STEP, j, -STEP);
    return (high - low) / (4 * STEP * STEP);
  }

  /** ∂²f/∂j² where the source i is off. */
  private double curvatureAt(int i, double off, int j) {
    double middle = value(i, off);
    return (valueAt(i, off, j, STEP) - 2 * middle + valueAt(i, off, j, -STEP)) / (STEP * STEP);
  }

  private double valueAt(int i, double off, int j, double step) {
    at[i] += off;
    double value = value(j, step);
    at[i] -= off;
    return value;
  }
}
