package plainscale.api;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plainscale.notation.Measurement;
import plainscale.notation.Names;
import plainscale.notation.Notation;
import plainscale.notation.ProblemException;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.quantity.QuantityException;
import plainscale.units.UnitException;
import plainscale.units.UnitParser;

/** Quantities from the text of a given. */
final class Quantities {
  private Quantities() {}

  static Quantity of(String text) {
    String line = "given quantity = " + Written.oneStatement(text);
    Quantity value = Situation.NOTHING.given("quantity", text).value("quantity");
    return literal(line).map(m -> Quantity.literal(m.value())).orElse(value).called(text.strip());
  }

  /** A number alone is shown as it was written. */
  private static Optional<Measurement> literal(String line) {
    try {
      List<Statement> read = Notation.parse(line, Names.NONE);
      return read.stream()
          .filter(Statement.Given.class::isInstance)
          .map(statement -> ((Statement.Given) statement).measurement())
          .filter(m -> m.count() && m.uncertainty().isEmpty() && m.readings().isEmpty())
          .findFirst();
    } catch (ProblemException e) {
      throw PhysicsException.of(e);
    }
  }

  static Quantity ofReadings(String unit, double... values) {
    String list =
        Arrays.stream(values).mapToObj(Double::toString).collect(Collectors.joining(", "));
    if (values.length < 2) {
      throw PhysicsException.of("A mean needs two readings at least.");
    }
    return of(list + " " + unit);
  }

  static Quantity exact(double value, String unit) {
    try {
      Quantity one = Quantity.number(BigDecimal.ONE);
      Quantity amount = Quantity.exact(BigDecimal.ONE, UnitParser.parse(unit));
      return amount.times(one.times(value));
    } catch (QuantityException e) {
      throw PhysicsException.of(e);
    } catch (UnitException e) {
      throw PhysicsException.of(e);
    }
  }
}
