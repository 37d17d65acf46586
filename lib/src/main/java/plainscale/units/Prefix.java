package plainscale.units;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.MetricPrefix;

/**
 * An SI prefix as written; the list and the powers are Indriya's (all 24 of 2022, quecto to
 * quetta).
 */
record Prefix(String text, MetricPrefix metric) {

  /**
   * The prefix at the start of {@code symbol}; where several fit ("d" and "da") the longer one if
   * asked so.
   */
  static Optional<Prefix> startOf(String symbol, boolean longer) {
    if (longer && symbol.startsWith("da")) {
      return Optional.of(new Prefix("da", MetricPrefix.DECA));
    }
    return symbol.isEmpty() ? Optional.empty() : of(symbol.substring(0, 1));
  }

  private static Optional<Prefix> of(String first) {
    if (first.equals("μ")
        || first.equals("µ")
        || first.equals("u")) { // the letter u is the ASCII form
      return Optional.of(
          new Prefix("µ", MetricPrefix.MICRO)); // Greek letter and micro sign are both in use
    }
    for (MetricPrefix metric : MetricPrefix.values()) {
      if (metric.getSymbol().equals(first) && metric != MetricPrefix.DECA) {
        return Optional.of(new Prefix(first, metric));
      }
    }
    return Optional.empty();
  }

  String name() {
    return name(metric);
  }

  /** The names of all prefixes, as in "kilo". */
  static Stream<String> names() {
    return Arrays.stream(MetricPrefix.values()).map(Prefix::name);
  }

  /** The symbol of the prefix with that name; nothing for no name. */
  static String symbol(String name) {
    return Arrays.stream(MetricPrefix.values())
        .filter(metric -> name(metric).equals(name))
        .map(MetricPrefix::getSymbol)
        .findFirst()
        .orElse("");
  }

  private static String name(MetricPrefix metric) {
    return metric.getName().toLowerCase(Locale.ROOT);
  }
}
