package plainscale.magnitude;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import javax.measure.MetricPrefix;

/**
 * The 24 SI prefixes (27th CGPM 2022, as the unit library has them) and the choice among them.
 * {@code Prefixes.choose(new BigDecimal("0.0124"))} is milli. The kilogram, which has its prefix
 * built in, is the caller's concern.
 */
public final class Prefixes {
  private static final List<Prefix> ALL =
      Arrays.stream(MetricPrefix.values())
          .map(
              p -> new Prefix(p.getSymbol(), p.getName().toLowerCase(Locale.ROOT), p.getExponent()))
          .sorted(Comparator.comparingInt(Prefix::power).reversed())
          .toList();

  private Prefixes() {}

  /** All prefixes, the largest first. */
  public static List<Prefix> all() {
    return ALL;
  }

  /**
   * The prefix that brings the number into [1, 1000), among those for powers of 1000. {@link
   * Prefix#NONE} for zero, for a number already in that range, and where no prefix reaches.
   */
  public static Prefix choose(BigDecimal value) {
    long power = 3 * Math.floorDiv(PowerOfTen.of(value).exponent(), 3L);
    return ALL.stream().filter(p -> p.power() == power).findFirst().orElse(Prefix.NONE);
  }
}
