package plainscale.algebra;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.stat.StatUtils;
import plainscale.quantity.Source;

/**
 * Propagation of distributions by a Monte-Carlo method (JCGM 101:2008, 7): every source is drawn
 * from its distribution, and the function computed, so many times. The values are sorted; trials
 * that have no value are counted in {@code without}.
 */
public final class Trials {
  /** The part of the trials that a coverage interval holds. */
  public static final double COVERAGE = 0.95;

  /** Trials that one step of a cell's budget pays for. */
  private static final int TO_A_STEP = 16;

  private final double[] values;
  private final int without;

  private Trials(double[] values, int without) {
    this.values = values;
    this.without = without;
  }

  /** From where to where. */
  public record Interval(double low, double high) {
    /** How wide it is. */
    public double width() {
      return high - low;
    }
  }

  /** How many, and where the random numbers begin: the same seed gives the same trials. */
  public record Plan(int count, long seed) {}

  /** Runs the trials. */
  public static Trials run(Compiled function, Plan plan, Cost cost) {
    RandomGenerator random = new Well19937c(plan.seed());
    List<Source> sources = function.sources();
    double[] deviations = new double[sources.size()];
    double[] values = new double[plan.count()];
    int good = 0;
    for (int trial = 0; trial < plan.count(); trial++) {
      if (trial % TO_A_STEP == 0) {
        cost.pay();
      }
      for (int i = 0; i < deviations.length; i++) {
        deviations[i] = sources.get(i).distribution().draw(random);
      }
      double value = function.at(deviations);
      if (!Double.isNaN(value)) {
        values[good++] = value;
      }
    }
    double[] sorted = Arrays.copyOf(values, good);
    Arrays.sort(sorted);
    return new Trials(sorted, plan.count() - good);
  }

  /** How many trials have a value. */
  public int count() {
    return values.length;
  }

  /** How many trials have none, such as the root of a negative number. */
  public int without() {
    return without;
  }

  /** The mean of the values (JCGM 101:2008, 7.6). */
  public double mean() {
    return StatUtils.mean(values);
  }

  /** Their standard deviation, which is the standard uncertainty (JCGM 101:2008, 7.6). */
  public double standard() {
    return Math.sqrt(StatUtils.variance(values));
  }

  /** The interval with as many trials below it as above (JCGM 101:2008, 7.7.2). */
  public Interval symmetric() {
    return interval(below());
  }

  private int below() {
    return Math.max((values.length - held()) / 2 - 1, 0);
  }

  /** The shortest interval that holds as many (JCGM 101:2008, 7.7.3 and 5.3.4). */
  public Interval shortest() {
    Interval shortest = interval(0);
    for (int below = 1; below + held() < values.length; below++) {
      Interval next = interval(below);
      shortest = next.width() < shortest.width() ? next : shortest;
    }
    return shortest;
  }

  private Interval interval(int below) {
    return new Interval(values[below], values[Math.min(below + held(), values.length - 1)]);
  }

  private int held() {
    return (int) Math.round(COVERAGE * values.length);
  }

  /**
   * How much the ends of the symmetric interval would move in other trials: the standard deviation
   * of the rank of an end, as a difference of values there. The larger of the two ends counts.
   */
  public double scatter() {
    double part = (1 - COVERAGE) / 2;
    int ranks = (int) Math.ceil(Math.sqrt(values.length * part * (1 - part)));
    return Math.max(spread(below(), ranks), spread(below() + held(), ranks));
  }

  private double spread(int at, int ranks) {
    int from = Math.max(at - ranks, 0);
    int to = Math.min(at + ranks, values.length - 1);
    return (values[to] - values[from]) / 2;
  }
}
