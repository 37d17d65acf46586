package plainscale.units;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Units spelled out, after the SI Brochure's names: "metres per second squared", "kilograms per
 * cubic metre".
 */
final class UnitWords {
  private UnitWords() {}

  static String of(List<UnitOfMeasure.Factor> factors, boolean one) {
    String over = join(factors, 1, one);
    String under = join(factors, -1, true);
    if (under.isEmpty()) {
      return over;
    }
    return over.isEmpty() ? "per " + under : over + " per " + under;
  }

  private static String join(List<UnitOfMeasure.Factor> factors, int sign, boolean one) {
    List<UnitOfMeasure.Factor> side =
        factors.stream().filter(f -> f.exponent() * sign > 0).toList();
    if (side.isEmpty()) {
      return "";
    }
    String head =
        side.stream()
            .limit(side.size() - 1L)
            .map(f -> power(f, true) + " ")
            .collect(Collectors.joining());
    return head + power(side.get(side.size() - 1), one);
  }

  private static String power(UnitOfMeasure.Factor factor, boolean one) {
    String noun = one ? factor.symbol().name() : factor.symbol().plural();
    boolean length = factor.symbol().name().endsWith("metre");
    return switch (Math.abs(factor.exponent())) {
      case 1 -> noun;
      case 2 -> length ? "square " + noun : noun + " squared";
      case 3 -> length ? "cubic " + noun : noun + " cubed";
      default -> noun + " to the power " + Math.abs(factor.exponent());
    };
  }
}
