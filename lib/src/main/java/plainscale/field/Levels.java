package plainscale.field;

import java.util.ArrayList;
import java.util.List;

/** Levels of potential at a stated step: whole multiples of it, so that zero is one of them. */
public record Levels(double step, List<Double> values) {
  /** The most levels. */
  public static final int MOST_LEVELS = 200;

  /**
   * Close to a charge the potential has no bound, so the extreme shares of the map are left out.
   */
  private static final double SHARE_LEFT_OUT = 0.03;

  /** From a round step to the next smaller one is at most this factor. */
  private static final double FINER = 2.5;

  public Levels {
    Checks.positive(step, "The step between levels");
    values = List.copyOf(values);
  }

  /** All whole multiples of a step from {@code lowest} to {@code highest}. */
  public static Levels every(double step, double lowest, double highest) {
    Checks.positive(step, "The step between levels");
    double first = Math.ceil(lowest / step);
    double last = Math.floor(highest / step);
    if (!(last - first < MOST_LEVELS)) {
      throw new IllegalArgumentException(
          "A step of " + step + " makes more than " + MOST_LEVELS + " levels.");
    }
    List<Double> values = new ArrayList<>();
    for (double n = first; n <= last; n++) {
      values.add(n * step);
    }
    return new Levels(step, values);
  }

  /** About {@code count} levels at a round step over what the grid shows away from the charges. */
  public static Levels suited(PotentialGrid grid, int count) {
    double lowest = grid.quantile(SHARE_LEFT_OUT);
    double highest = grid.quantile(1 - SHARE_LEFT_OUT);
    if (lowest == highest || count < 1) {
      return new Levels(1, List.of());
    }
    double range = highest - lowest;
    double coarse = RoundStep.atLeast(range / count);
    double fine = RoundStep.atLeast(coarse / FINER);
    boolean isFineCloser = range / fine - count < count - range / coarse;
    return every(isFineCloser ? fine : coarse, lowest, highest);
  }
}
