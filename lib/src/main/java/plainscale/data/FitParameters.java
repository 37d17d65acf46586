package plainscale.data;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.RealVector;
import org.jspecify.annotations.Nullable;
import plainscale.quantity.Decimals;
import plainscale.quantity.Quantity;
import plainscale.quantity.Source;
import plainscale.quantity.Uncertainty;
import plainscale.units.UnitOfMeasure;

/** Makes quantities of the numbers of a fit, with one set of sources for all its parameters. */
final class FitParameters {
  private static final MathContext WITHOUT_DUST = new MathContext(12);
  private final List<ParameterUnits.Counted> units;
  private final @Nullable Spread spread;
  private final List<Source> sources;

  private FitParameters(Model model, Points points, @Nullable Spread spread) {
    this.units = ParameterUnits.of(model, points.xUnit(), points.yUnit());
    this.spread = spread;
    // One name: the shares of the independent parts cannot be told apart.
    String name = "fit of " + points.yName() + " against " + points.xName();
    this.sources =
        IntStream.range(0, spread == null ? 0 : spread.sources())
            .mapToObj(i -> new Source(name, 1))
            .toList();
  }

  /** The parameters; without a spread they have no uncertainty. */
  static List<Parameter> of(
      Model model, Points points, RealVector values, @Nullable Spread spread) {
    FitParameters maker = new FitParameters(model, points, spread);
    return IntStream.range(0, values.getDimension())
        .mapToObj(i -> maker.parameter(model.symbols().get(i), i, values.getEntry(i)))
        .toList();
  }

  private Parameter parameter(String symbol, int place, double counted) {
    if (!Double.isFinite(counted)) {
      throw new DataException("The parameter %s is beyond all numbers.".formatted(symbol));
    }
    UnitOfMeasure unit = units.get(place).unit();
    double factor = units.get(place).factor();
    double value = counted * factor + 0.0; // no −0
    Quantity quantity =
        Quantity.estimated(new BigDecimal(value, digits(place)), uncertainty(place), unit);
    OptionalDouble standard =
        spread == null
            ? OptionalDouble.empty()
            : OptionalDouble.of(spread.standard(place) * Math.abs(factor));
    return new Parameter(symbol, value, standard, unit, quantity);
  }

  /** Where nothing says how uncertain it is, the dust of doubles is left out. */
  private MathContext digits(int place) {
    boolean certain = spread == null || spread.standard(place) == 0;
    return certain ? WITHOUT_DUST : Decimals.DIGITS;
  }

  private Uncertainty uncertainty(int place) {
    if (spread == null || spread.standard(place) == 0) {
      return Uncertainty.NONE;
    }
    double toCoherent = units.get(place).factor() * units.get(place).unit().factor().doubleValue();
    Map<Source, Double> derivatives = new LinkedHashMap<>();
    for (int i = 0; i < sources.size(); i++) {
      derivatives.put(sources.get(i), spread.part(place, i) * toCoherent);
    }
    return Uncertainty.of(derivatives);
  }
}
