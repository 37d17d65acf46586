package plainscale.data;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plainscale.units.Kinds;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitSymbol;

/** The units of the parameters of a fit, from the units of the two columns. */
final class ParameterUnits {
  private ParameterUnits() {}

  /** A unit, and how many of it the number in the units of the columns counts. */
  record Counted(UnitOfMeasure unit, double factor) {}

  /** The units of a model's parameters, in their order. */
  static List<Counted> of(Model model, UnitOfMeasure x, UnitOfMeasure y) {
    Counted ofY = new Counted(y, 1);
    return switch (model) {
      case LINE -> List.of(ofY, over(step(y), step(x)));
      case PROPORTIONAL -> List.of(over(step(y), step(x)));
      case POWER -> List.of(ofY, one());
      case EXPONENTIAL -> List.of(ofY, over(one(), step(x)));
    };
  }

  private static Counted one() {
    return new Counted(UnitOfMeasure.ONE, 1);
  }

  /** On a scale such as °F steps are amounts, in kelvins. */
  private static Counted step(UnitOfMeasure unit) {
    return unit.isScale()
        ? new Counted(Kinds.of(unit.kind()).unit(), unit.factor().doubleValue())
        : new Counted(unit, 1);
  }

  private static Counted over(Counted y, Counted x) {
    Map<UnitSymbol, Integer> exponents = new LinkedHashMap<>();
    y.unit().factors().forEach(f -> exponents.merge(f.symbol(), f.exponent(), Integer::sum));
    x.unit().factors().forEach(f -> exponents.merge(f.symbol(), -f.exponent(), Integer::sum));
    List<UnitOfMeasure.Factor> factors =
        exponents.entrySet().stream()
            .filter(e -> e.getValue() != 0)
            .map(e -> new UnitOfMeasure.Factor(e.getKey(), e.getValue()))
            .toList();
    return new Counted(UnitOfMeasure.of(factors), y.factor() / x.factor());
  }
}
