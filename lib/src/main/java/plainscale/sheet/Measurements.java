package plainscale.sheet;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plainscale.notation.Measurement;
import plainscale.notation.Statement;
import plainscale.quantity.Distribution;
import plainscale.quantity.Quantity;
import plainscale.quantity.Readings;
import plainscale.quantity.Together;

/** Givens as quantities; readings that belong together are taken together, once in a wave. */
final class Measurements {
  private final Groups groups;
  private final Map<String, Quantity> joined = new HashMap<>();
  private final Map<String, Quantity> measured = new HashMap<>();

  /** The givens of a sheet; those that a program has handed over have these values. */
  Measurements(Map<String, Entry> entries, Map<String, Quantity> handed) {
    this.groups = new Groups(entries);
    this.measured.putAll(handed);
  }

  /**
   * Always the same quantity for a given, so that its source of uncertainty is one and the same.
   */
  Quantity of(Statement.Given given) {
    Quantity known = measured.get(given.name());
    if (known == null) {
      known = measured(given);
      measured.put(given.name(), known);
    }
    return known;
  }

  private Quantity measured(Statement.Given given) {
    Measurement m = given.measurement();
    if (!m.readings().isEmpty()) {
      return ofReadings(given);
    }
    if (m.uncertainty().isEmpty()) {
      return m.count() ? Quantity.number(m.value()) : Quantity.written(m.value(), m.unit());
    }
    BigDecimal written = m.uncertainty().get();
    return m.distribution() == Distribution.NORMAL
        ? Quantity.measured(given.name(), m.value(), written, m.unit())
        : Quantity.limited(
            new Quantity.Estimate(given.name(), m.value(), written, m.unit()), m.distribution());
  }

  private Quantity ofReadings(Statement.Given given) {
    if (given.together().isEmpty()) {
      return Together.alone(series(given));
    }
    Quantity known = joined.get(given.name());
    if (known != null) {
      return known;
    }
    List<Statement.Given> group = groups.with(given);
    List<Quantity> means = Together.of(group.stream().map(Measurements::series).toList());
    for (int i = 0; i < group.size(); i++) {
      joined.put(group.get(i).name(), means.get(i));
    }
    return means.get(group.indexOf(given));
  }

  private static Together.Series series(Statement.Given given) {
    Measurement m = given.measurement();
    return new Together.Series(given.name(), new Readings(m.readings()), m.unit());
  }

  /** What it is, and where its value and its uncertainty come from, if they were not written. */
  static String words(Statement.Given given) {
    Measurement m = given.measurement();
    String origin = "";
    if (!m.readings().isEmpty()) {
      origin = "mean of %d readings".formatted(m.readings().size());
    } else if (m.distribution() != Distribution.NORMAL) {
      String shape = m.distribution().name().toLowerCase(Locale.ROOT);
      String limits = m.uncertainty().map(BigDecimal::toPlainString).orElse("");
      origin = "%s within ± %s %s".formatted(shape, limits, m.unit().text()).strip();
    }
    return Stream.of(given.description(), origin)
        .filter(words -> !words.isEmpty())
        .collect(Collectors.joining("; "));
  }
}
