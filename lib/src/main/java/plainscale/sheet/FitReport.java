package plainscale.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import plainscale.algebra.Equation;
import plainscale.data.Fit;
import plainscale.data.Parameter;
import plainscale.notation.DataStatement;
import plainscale.notation.Expr;
import plainscale.notation.Span;
import plainscale.quantity.ElementaryFunction;
import plainscale.quantity.Shown;
import plainscale.units.UnitOfMeasure;

/** A fit as a result: formula, parameters, points, curve, how well they go together. */
final class FitReport {
  private static final Span NOWHERE = new Span(0, 0);
  private static final int STEPS = 60;
  private static final int FIGURES = 4;
  private static final int MOST_ROWS = 20;

  private final Showing showing;
  private final DataValues values;

  FitReport(Showing showing, DataValues values) {
    this.showing = showing;
    this.values = values;
  }

  DataResult fitted(DataStatement.Fit asked) {
    Fit fit = values.of(asked);
    DataValues.Found x = values.find(asked.x());
    DataValues.Found y = values.find(asked.y());
    Cloud cloud = Cloud.of(fit.points(), x.numbers(), y.numbers());
    List<DataResult.Parameter> parameters = parameters(asked, fit);
    return new DataResult.Fitted(
        asked.title(),
        asked.curve(),
        formula(asked, parameters, fit),
        parameters,
        cloud,
        residuals(fit, cloud),
        curve(fit, cloud, asked.curve() == DataStatement.Curve.PROPORTIONAL),
        goodness(fit),
        showing.writing());
  }

  private static List<DataResult.Parameter> parameters(DataStatement.Fit asked, Fit fit) {
    List<Parameter> found = DataValues.parameters(asked, fit);
    List<DataResult.Parameter> parameters = new ArrayList<>();
    for (int i = 0; i < found.size(); i++) {
      String name = asked.names().isEmpty() ? found.get(i).symbol() : asked.names().get(i).text();
      parameters.add(
          new DataResult.Parameter(name, asked.curve().roles().get(i), shown(found.get(i))));
    }
    return parameters;
  }

  /** Where nothing tells how uncertain a parameter is, a few figures. */
  private static Shown shown(Parameter parameter) {
    return parameter.standard().orElse(0) > 0
        ? parameter.quantity().shown()
        : parameter.quantity().shown(FIGURES);
  }

  /** The curve as it would be written in a cell. */
  private static Equation formula(
      DataStatement.Fit asked, List<DataResult.Parameter> parameters, Fit fit) {
    Expr x = name(asked.x().text());
    Expr first = name(parameters.get(0).name());
    Expr last = name(parameters.get(parameters.size() - 1).name());
    Expr number = of(Expr.Operator.OVER, x, one(fit.points().xUnit()));
    Expr base = fit.points().xUnit().equals(UnitOfMeasure.ONE) ? x : number;
    Expr curve =
        switch (asked.curve()) {
          case LINE -> of(Expr.Operator.PLUS, of(Expr.Operator.TIMES, first, x), last);
          case PROPORTIONAL -> of(Expr.Operator.TIMES, first, x);
          case POWER -> of(Expr.Operator.TIMES, first, of(Expr.Operator.POWER, base, last));
          case EXPONENTIAL ->
              of(
                  Expr.Operator.TIMES,
                  first,
                  new Expr.Call(NOWHERE, ElementaryFunction.EXP, of(Expr.Operator.TIMES, last, x)));
        };
    return new Equation(name(asked.y().text()), curve);
  }

  private static Expr one(UnitOfMeasure unit) {
    return new Expr.Literal(NOWHERE, BigDecimal.ONE, unit, true);
  }

  private static Expr name(String text) {
    return new Expr.Name(NOWHERE, text);
  }

  private static Expr of(Expr.Operator operator, Expr left, Expr right) {
    return new Expr.Binary(NOWHERE, operator, left, right, NOWHERE);
  }

  /** Those of the points that are drawn. */
  private static List<Double> residuals(Fit fit, Cloud cloud) {
    return IntStream.range(0, cloud.spots().size())
        .mapToObj(i -> fit.residual(i * cloud.every()))
        .toList();
  }

  /** From the leftmost point to the rightmost; a line through the origin begins there. */
  private static List<DataResult.Step> curve(Fit fit, Cloud cloud, boolean fromZero) {
    double left = cloud.ends().get(0).x();
    double right = cloud.ends().get(1).x();
    double low = fromZero ? Math.min(0, left) : left;
    double high = fromZero ? Math.max(0, right) : right;
    return IntStream.rangeClosed(0, STEPS)
        .mapToDouble(i -> i == STEPS ? high : low + (high - low) * i / STEPS)
        .mapToObj(x -> new DataResult.Step(x, fit.at(x), fit.standardAt(x)))
        .toList();
  }

  private static DataResult.Goodness goodness(Fit fit) {
    OptionalDouble deviation = fit.quality().deviation();
    Optional<Shown> shown =
        deviation.isPresent()
            ? Optional.of(Description.doubt(deviation.getAsDouble(), fit.points().yUnit()))
            : Optional.empty();
    OptionalDouble correlation =
        fit.parameters().size() == 2 && deviation.isPresent()
            ? OptionalDouble.of(fit.spread().correlation(0, 1))
            : OptionalDouble.empty();
    return new DataResult.Goodness(
        fit.quality(), fit.weighting(), shown, correlation, far(fit, deviation));
  }

  private static DataResult.Left far(Fit fit, OptionalDouble deviation) {
    double limit = 2 * deviation.orElse(Double.POSITIVE_INFINITY);
    int[] rows =
        IntStream.range(0, fit.points().count())
            .filter(i -> limit > 0 && Math.abs(fit.residual(i)) > limit)
            .map(fit.points()::row)
            .toArray();
    return new DataResult.Left(rows.length, Arrays.stream(rows).limit(MOST_ROWS).boxed().toList());
  }
}
