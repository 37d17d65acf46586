package plainscale.units;

import java.util.Locale;
import java.util.Optional;
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
    if (first.equals("μ") || first.equals("µ")) {
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
    return metric.getName().toLowerCase(Locale.ROOT);
  }
}
