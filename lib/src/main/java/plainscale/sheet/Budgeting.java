package plainscale.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import plainscale.algebra.Compiled;
import plainscale.algebra.Cost;
import plainscale.algebra.Formulas;
import plainscale.algebra.SecondOrder;
import plainscale.magnitude.Digits;
import plainscale.notation.Expr;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.quantity.Contribution;
import plainscale.quantity.Decimals;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.quantity.Source;
import plainscale.units.Kinds;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitSymbol;

/** Where the uncertainty of a quantity comes from, and what becomes of it beyond first order. */
final class Budgeting {
  private static final int SENSITIVITY_FIGURES = 3;
  private static final int CORRELATION_PLACES = 2;

  /** Below this part of a value an uncertainty is dust of binary arithmetic. */
  static final double DUST = 1e-12;

  private final Showing showing;

  Budgeting(Showing showing) {
    this.showing = showing;
  }

  Result budgeted(Statement.Budget budget) {
    Quantity value = showing.value(budget.value());
    if (value.uncertainty().derivatives().isEmpty()) {
      throw certain(budget.value());
    }
    Shown plain = showing.shown(value, budget.format(), budget.span());
    boolean chosen = budget.format().unit().isPresent() || value.unit().isPresent();
    Shown shown = chosen ? plain : PrefixedForm.of(plain).orElse(plain);
    return new Result.Budgeted(
        showing.label(budget.value(), budget.description()),
        shown,
        account(budget, value, shown.unit()),
        showing.writing());
  }

  private ProblemException certain(Expr place) {
    String sentence = "This has no uncertainty: nothing that it is computed from has a ±.";
    List<String> repairs = List.of("given m = 2.70 ± 0.05 g");
    return showing.problem(Problem.Kind.VALUE, sentence, place.span(), repairs);
  }

  private Account account(Statement.Budget budget, Quantity value, UnitOfMeasure unit) {
    Compiled compiled = Compiled.of(budget.value(), new SheetFormulas(showing));
    Cost cost = showing.wave().cost(showing.source(), budget.span());
    UnitOfMeasure step = step(unit);
    return new Account(
        shares(value, step),
        improvement(value, step),
        bent(value, SecondOrder.standard(compiled, cost), step).orElse(null),
        budget
            .trials()
            .map(plan -> new Drawing(showing, value, unit).drawn(compiled, plan, cost))
            .orElse(null));
  }

  /** What the names of a sheet stand for. */
  private record SheetFormulas(Showing showing) implements Formulas {
    @Override
    public Optional<Expr> formula(String name) {
      return showing.wave().formula(name);
    }

    @Override
    public Quantity value(String name) {
      return showing.value(new Expr.Name(new Span(0, 0), name));
    }
  }

  /** All sources of one name together; the largest first. */
  private List<Account.Share> shares(Quantity value, UnitOfMeasure unit) {
    Map<String, Map<Source, Double>> named = new LinkedHashMap<>();
    value
        .uncertainty()
        .derivatives()
        .forEach(
            (source, d) ->
                named.computeIfAbsent(source.name(), n -> new LinkedHashMap<>()).put(source, d));
    double combined = value.uncertainty().standard();
    return named.entrySet().stream()
        .sorted(Comparator.comparingDouble(entry -> -standard(entry.getValue())))
        .map(entry -> share(entry.getKey(), entry.getValue(), combined, unit))
        .toList();
  }

  private static double standard(Map<Source, Double> derivatives) {
    return Math.sqrt(
        derivatives.entrySet().stream()
            .mapToDouble(d -> Math.pow(d.getValue() * d.getKey().standard(), 2))
            .sum());
  }

  private Account.Share share(
      String name, Map<Source, Double> derivatives, double combined, UnitOfMeasure unit) {
    double part = standard(derivatives);
    double ratio = combined == 0 ? 0 : part / combined;
    Account.Input input = derivatives.size() == 1 ? input(name, derivatives, unit) : null;
    return new Account.Share(name, Shown.doubt(part, unit), ratio * ratio, input);
  }

  /** The source as a quantity of its own, if the name stands for the very source. */
  private Account.@Nullable Input input(
      String name, Map<Source, Double> derivatives, UnitOfMeasure unit) {
    Map.Entry<Source, Double> only = derivatives.entrySet().iterator().next();
    if (!showing.wave().has(name)) {
      return null;
    }
    Quantity own = showing.value(new Expr.Name(new Span(0, 0), name));
    boolean same = own.uncertainty().derivatives().keySet().equals(derivatives.keySet());
    return same
        ? new Account.Input(
            own.shown(), only.getKey().distribution(), sensitivity(own, only.getValue(), unit))
        : null;
  }

  /** How many units of the result go with one unit of the source. */
  private static Shown sensitivity(Quantity own, double derivative, UnitOfMeasure unit) {
    UnitOfMeasure of = step(own.displayUnit());
    double slope = derivative * of.factor().doubleValue() / unit.factor().doubleValue();
    UnitOfMeasure per = over(unit, of);
    return slope == 0
        ? new Shown(BigDecimal.ZERO, null, per)
        : new Shown(Decimals.from(slope), null, per).toFigures(SENSITIVITY_FIGURES);
  }

  /** What differs on a temperature scale is told in kelvins. */
  private static UnitOfMeasure step(UnitOfMeasure unit) {
    return unit.isScale() ? Kinds.of(unit.kind()).unit() : unit;
  }

  private static UnitOfMeasure over(UnitOfMeasure above, UnitOfMeasure below) {
    Map<String, UnitSymbol> symbols = new LinkedHashMap<>();
    Map<String, Integer> exponents = new TreeMap<>();
    above.factors().forEach(f -> add(f, 1, symbols, exponents));
    below.factors().forEach(f -> add(f, -1, symbols, exponents));
    List<UnitOfMeasure.Factor> factors = new ArrayList<>();
    symbols.forEach(
        (text, symbol) -> {
          int exponent = exponents.getOrDefault(text, 0);
          if (exponent != 0) {
            factors.add(new UnitOfMeasure.Factor(symbol, exponent));
          }
        });
    return UnitOfMeasure.of(factors);
  }

  private static void add(
      UnitOfMeasure.Factor factor,
      int sign,
      Map<String, UnitSymbol> symbols,
      Map<String, Integer> exponents) {
    symbols.put(factor.symbol().text(), factor.symbol());
    exponents.merge(factor.symbol().text(), sign * factor.exponent(), Integer::sum);
  }

  /** The largest contribution counts; half of it leaves a quarter of its variance. */
  private Account.@Nullable Improvement improvement(Quantity value, UnitOfMeasure unit) {
    List<Contribution> parts = Contribution.of(value);
    if (parts.isEmpty()) {
      return null;
    }
    double u = value.uncertainty().standard();
    double halved = u * Math.sqrt(1 - 0.75 * parts.get(0).share());
    String source = parts.get(0).source();
    boolean constant = showing.isConstant(source);
    return new Account.Improvement(
        source, constant, Shown.doubt(u, unit), Shown.doubt(halved, unit));
  }

  /** The second order is worth telling where it changes what is shown of the first. */
  private static Optional<Shown> bent(
      Quantity value, OptionalDouble secondOrder, UnitOfMeasure unit) {
    if (secondOrder.isEmpty()) {
      return Optional.empty();
    }
    double first = value.uncertainty().standard();
    double second = secondOrder.getAsDouble();
    boolean differs = Math.abs(second - first) > Shown.halfStep(first, unit);
    boolean dust = second < DUST * Math.abs(value.value().doubleValue());
    return differs && !dust ? Optional.of(Shown.doubt(second, unit)) : Optional.empty();
  }

  Result together(Statement.Together together, String cellId) {
    Map<String, Entry> own = new LinkedHashMap<>(showing.names().entries());
    own.values().removeIf(entry -> !entry.cellId().equals(cellId));
    new Groups(own).check(together, showing.source());
    List<String> names = together.names().stream().map(Statement.Option::text).toList();
    List<String> pairs = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      for (int j = i + 1; j < names.size(); j++) {
        pairs.add(correlation(names.get(i), names.get(j)));
      }
    }
    return new Result.Noted(
        "The readings of %s belong together, and so do the errors of their means: %s."
            .formatted(String.join(", ", names), String.join(", ", pairs)));
  }

  private String correlation(String x, String y) {
    double r = value(x).uncertainty().correlation(value(y).uncertainty());
    BigDecimal rounded = Decimals.from(r).setScale(CORRELATION_PLACES, RoundingMode.HALF_EVEN);
    String text = Digits.of(rounded, showing.writing().digits()).text();
    return "r(%s, %s) = %s".formatted(x, y, text);
  }

  private Quantity value(String name) {
    return showing.value(new Expr.Name(new Span(0, 0), name));
  }
}
