package plainscale.picture.plot;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Round distances between ticks, contours or bins: 1, 2 or 5 times a power of ten. */
public final class Steps {
  private static final int[] ROUND = {1, 2, 5, 10};

  /** What is nearer to a tick than this share of a step lies on it. */
  private static final double DUST = 1e-9;

  private Steps() {}

  /** The smallest round step that divides a length into so many pieces at most. */
  public static BigDecimal atMost(int pieces, double length) {
    double least = length / pieces;
    int power = (int) Math.floor(Math.log10(least));
    for (int round : ROUND) {
      BigDecimal step = BigDecimal.valueOf(round).scaleByPowerOfTen(power);
      if (step.doubleValue() >= least * (1 - DUST)) {
        return step;
      }
    }
    throw new IllegalArgumentException("There is no step for " + length + ".");
  }

  /** The multiples of a step from low to high, both included. */
  public static List<BigDecimal> multiples(BigDecimal step, double low, double high) {
    double size = step.doubleValue();
    long first = (long) Math.ceil(low / size - DUST);
    long last = (long) Math.floor(high / size + DUST);
    List<BigDecimal> multiples = new ArrayList<>();
    for (long i = first; i <= last; i++) {
      multiples.add(step.multiply(BigDecimal.valueOf(i)));
    }
    return multiples;
  }
}
