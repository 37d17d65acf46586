package plainscale.data;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import plainscale.quantity.Decimals;

/**
 * How many values lie in each of equally wide bins, whose edges are multiples of a width of 1, 2 or
 * 5 times a power of ten. A value on an edge counts in the bin above.
 *
 * @param rule where the width comes from, before it is rounded up to 1, 2 or 5
 * @param width the width, in the unit of the column
 * @param bins without gaps, from the smallest value to the largest
 */
public record Histogram(Rule rule, BigDecimal width, List<Bin> bins) {
  private static final int MOST_BINS = 200;
  private static final int[] STEPS = {1, 2, 5, 10};

  /** From an edge, included, to the next. */
  public record Bin(BigDecimal from, BigDecimal to, int count) {}

  /** Where the width comes from. */
  public enum Rule {
    /**
     * Twice the distance of the quartiles over the cube root of n: D. Freedman and P. Diaconis,
     * Zeitschrift für Wahrscheinlichkeitstheorie 57 (1981) 453.
     */
    FREEDMAN_DIACONIS,
    /**
     * The range over 1 + log₂ n, where the quartiles are one: H. A. Sturges, Journal of the
     * American Statistical Association 21 (1926) 65.
     */
    STURGES,
    /** All values are equal: one bin, as wide as the last written digit. */
    ONE_VALUE
  }

  /** Keeps its own copy. */
  public Histogram {
    bins = List.copyOf(bins);
  }

  /** The histogram of a sample. */
  public static Histogram of(Statistics of) {
    BigDecimal range = of.largest().subtract(of.smallest());
    if (range.signum() == 0) {
      BigDecimal digit = BigDecimal.ONE.scaleByPowerOfTen(-of.smallest().scale());
      return counted(Rule.ONE_VALUE, digit, of);
    }
    double quartiles = 2 * (of.upperQuartile() - of.lowerQuartile());
    Rule rule = quartiles > 0 ? Rule.FREEDMAN_DIACONIS : Rule.STURGES;
    double wanted =
        quartiles > 0
            ? quartiles / Math.cbrt(of.count())
            : range.doubleValue() / (1 + Math.log(of.count()) / Math.log(2));
    return counted(rule, rounded(Math.max(wanted, range.doubleValue() / MOST_BINS)), of);
  }

  /** The next 1, 2 or 5 times a power of ten. */
  static BigDecimal rounded(double width) {
    BigDecimal wanted = Decimals.from(width);
    BigDecimal power = BigDecimal.ONE.scaleByPowerOfTen(Decimals.exponent(wanted));
    for (int step : STEPS) {
      BigDecimal candidate = power.multiply(BigDecimal.valueOf(step));
      if (candidate.compareTo(wanted) >= 0) {
        return candidate;
      }
    }
    throw new IllegalStateException("no step for " + width);
  }

  private static Histogram counted(Rule rule, BigDecimal width, Statistics of) {
    BigDecimal first = edgeBelow(of.smallest(), width);
    int bins = place(of.largest(), first, width) + 1;
    int[] counts = new int[bins];
    for (int i = 0; i < of.count(); i++) {
      counts[place(of.sample().value(i), first, width)]++;
    }
    List<Bin> list = new ArrayList<>();
    for (int i = 0; i < bins; i++) {
      BigDecimal from = first.add(width.multiply(BigDecimal.valueOf(i)));
      list.add(new Bin(from, from.add(width), counts[i]));
    }
    return new Histogram(rule, width, list);
  }

  private static BigDecimal edgeBelow(BigDecimal value, BigDecimal width) {
    return value.divide(width, 0, RoundingMode.FLOOR).multiply(width);
  }

  private static int place(BigDecimal value, BigDecimal first, BigDecimal width) {
    return value.subtract(first).divide(width, 0, RoundingMode.FLOOR).intValueExact();
  }
}
