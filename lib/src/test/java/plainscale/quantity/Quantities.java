package plainscale.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.Set;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/** Quantities from short texts, and comparing them. */
final class Quantities {
  private static final BigDecimal CLOSE = new BigDecimal("1e-27");
  private static final double CLOSE_DOUBLE = 1e-12;

  private Quantities() {}

  /** {@code 2.70 g}, {@code 2.70±0.05 g}, or an exact number, {@code 3}. */
  static Quantity q(String text) {
    String[] parts = text.split(" ", 2);
    String[] number = parts[0].split("±", 2);
    BigDecimal value = new BigDecimal(number[0]);
    UnitOfMeasure unit = parts.length == 1 ? UnitOfMeasure.ONE : UnitParser.parse(parts[1]);
    if (number.length > 1) {
      return Quantity.measured(text, value, new BigDecimal(number[1]), unit);
    }
    return parts.length == 1 ? Quantity.number(value) : Quantity.written(value, unit);
  }

  /** An amount of a unit that limits no figures. */
  static Quantity exact(String number, String unit) {
    return Quantity.exact(new BigDecimal(number), UnitParser.parse(unit));
  }

  /** {@code 2.70±0.05 g}: what is shown, in one line. */
  static String text(Shown shown) {
    String u = shown.uncertainty().map(uncertain -> "±" + uncertain.toPlainString()).orElse("");
    return (shown.value().toPlainString() + u + " " + shown.unit().text()).strip();
  }

  static String text(Quantity quantity) {
    return text(quantity.shown());
  }

  /** The same kind, value and sensitivity to every source, but for the last digits. */
  static void assertSameQuantity(Quantity expected, Quantity actual, String law) {
    assertEquals(expected.kind(), actual.kind(), law);
    BigDecimal off = expected.value().subtract(actual.value()).abs();
    assertTrue(
        off.compareTo(expected.value().abs().multiply(CLOSE)) <= 0,
        () -> law + ": " + expected.value() + " and " + actual.value());
    double size = Math.abs(expected.value().doubleValue()) + expected.uncertainty().standard();
    Set<Source> sources = new LinkedHashSet<>(expected.uncertainty().derivatives().keySet());
    sources.addAll(actual.uncertainty().derivatives().keySet());
    for (Source source : sources) {
      assertEquals(part(expected, source), part(actual, source), size * CLOSE_DOUBLE, law);
    }
  }

  private static double part(Quantity quantity, Source source) {
    return quantity.uncertainty().derivatives().getOrDefault(source, 0.0) * source.standard();
  }
}
