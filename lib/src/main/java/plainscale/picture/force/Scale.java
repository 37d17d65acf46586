package plainscale.picture.force;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How many newtons one box is: of round numbers that let everything fit and use most of the paper,
 * the one at which most components are whole or half boxes, rather 1, 2 or 5 than others, rather
 * larger drawings than smaller ones.
 */
record Scale(BigDecimal newtons) {
  /** Of 2.5 and 4 the boxes are still easily counted; 3, 6 and 8 may make components whole. */
  private static final List<String> ROUND =
      List.of("1", "2", "5", "2.5", "4", "3", "6", "8", "1.5");

  private static final int PLAIN = 3;
  private static final double ENOUGH = 0.55;
  private static final double HALF = 0.5;

  /** A component on a line of the grid, for the eye. */
  private static final double NEAR = 0.04;

  /**
   * The scale for components in newtons, whose largest extent must go into so many boxes.
   *
   * @param extent the largest extent in newtons, above zero
   */
  static Scale of(List<Double> components, double extent, double boxes) {
    List<Scale> fitting = new ArrayList<>();
    int power = (int) Math.floor(Math.log10(extent / boxes)) - 1;
    for (int e = power; e <= power + 3; e++) {
      for (String round : ROUND) {
        Scale scale = new Scale(new BigDecimal(round).scaleByPowerOfTen(e));
        double size = scale.boxes(extent);
        if (size <= boxes && size >= ENOUGH * boxes) {
          fitting.add(scale);
        }
      }
    }
    return fitting.stream()
        .max(
            Comparator.comparingLong((Scale s) -> s.onLines(components))
                .thenComparing(Scale::isPlain)
                .thenComparing(s -> s.boxes(extent)))
        .orElseThrow();
  }

  /** So many boxes are that many newtons. */
  double boxes(double force) {
    return force / newtons.doubleValue();
  }

  private long onLines(List<Double> components) {
    return components.stream().filter(c -> isOnLine(boxes(c))).count();
  }

  private static boolean isOnLine(double boxes) {
    double halves = boxes / HALF;
    return Math.abs(halves - Math.rint(halves)) * HALF <= NEAR && Math.abs(boxes) > HALF / 2;
  }

  private boolean isPlain() {
    String digits = newtons.stripTrailingZeros().unscaledValue().toString();
    return ROUND.subList(0, PLAIN).contains(digits);
  }
}
