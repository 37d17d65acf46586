package plainscale.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plainscale.data.Points;
import plainscale.notation.DataStatement;
import plainscale.notation.Expr;
import plainscale.notation.Printer;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.quantity.Decimals;
import plainscale.quantity.Quantity;
import plainscale.units.UnitOfMeasure;

/** Plots as results: the points of two columns, the curve of a quantity of the sheet, or both. */
final class PlotReport {
  private static final int STEPS = 80;

  private final Showing showing;
  private final DataValues values;

  PlotReport(Showing showing, DataValues values) {
    this.showing = showing;
    this.values = values;
  }

  DataResult plotted(DataStatement.Plot asked) {
    return asked.along().isPresent() ? curve(asked, asked.along().get()) : points(asked);
  }

  private DataResult points(DataStatement.Plot asked) {
    if (!(asked.y().value() instanceof Expr.Name y) || !values.has(asked.x().text())) {
      throw needsRange(asked);
    }
    Statement.Option up = new Statement.Option(y.span(), y.text());
    Cloud cloud = cloud(new DataStatement.Pair(up, asked.x()));
    refuseNotPositive(cloud, asked.logs(), y.span().to(asked.x().span()));
    return new DataResult.Plotted(
        asked.title(),
        cloud.across(),
        cloud.up(),
        cloud,
        List.of(),
        asked.logs(),
        showing.writing());
  }

  private ProblemException needsRange(DataStatement.Plot asked) {
    boolean column = values.has(asked.x().text());
    String sentence =
        column
            ? "Points are of two columns; this is a formula."
            : "“%s” is no column of a table, so it needs to be said from where to where it goes."
                .formatted(asked.x().text());
    String example =
        "plot %s against %s".formatted(Printer.print(asked.y().value()), asked.x().text());
    Span place = column ? asked.y().value().span() : asked.x().span();
    return showing.problem(Problem.Kind.VALUE, sentence, place, List.of(example + " from … to …"));
  }

  private Cloud cloud(DataStatement.Pair pair) {
    DataValues.Found y = values.find(pair.y());
    DataValues.Found x = values.find(pair.x());
    values.refuseApart(y, x, pair);
    return Cloud.of(Points.of(x.numbers(), y.numbers()), x.numbers(), y.numbers());
  }

  private void refuseNotPositive(Cloud cloud, DataStatement.Logs logs, Span span) {
    Cloud.Spot left = cloud.ends().get(0);
    Cloud.Spot low = cloud.ends().get(2);
    if (logs.x() && left.x() <= 0) {
      throw notPositive(left.row(), cloud.across(), span);
    }
    if (logs.y() && low.y() <= 0) {
      throw notPositive(low.row(), cloud.up(), span);
    }
  }

  private ProblemException notPositive(int row, DataResult.Side side, Span span) {
    String sentence =
        "A logarithmic axis has no zero and nothing below it; row %d of “%s” does not fit."
            .formatted(row, side.name());
    return showing.problem(Problem.Kind.VALUE, sentence, span, List.of("leave “with log …” away"));
  }

  private void refuseColumns(DataStatement.Plot asked, DataStatement.Range range) {
    String x = asked.x().text();
    if (asked.y().value() instanceof Expr.Name y && values.has(y.text()) && values.has(x)) {
      throw showing.problem(
          Problem.Kind.VALUE,
          "“%s” and “%s” are columns; their points go from the first to the last."
              .formatted(y.text(), x),
          range.from().span().to(range.to().span()),
          List.of("plot %s against %s".formatted(y.text(), x)));
    }
  }

  private DataResult curve(DataStatement.Plot asked, DataStatement.Range range) {
    refuseColumns(asked, range);
    Quantity from = showing.value(range.from());
    Quantity to = showing.value(range.to());
    @Nullable Cloud cloud = asked.points().map(this::cloud).orElse(null);
    UnitOfMeasure across = cloud == null ? from.displayUnit() : cloud.across().unit();
    asked.points().ifPresent(pair -> refuseOther(across, from, pair.x()));
    refuseOtherKind(to, from.displayUnit(), range.to().span());
    if (asked.logs().x() && from.value().signum() <= 0) {
      throw notPositive(range.from().span());
    }
    List<Quantity[]> found = values(asked, from, to);
    UnitOfMeasure up =
        asked.y().format().unit().orElseGet(() -> unit(cloud, found.get(found.size() / 2)[1]));
    refuseOtherKind(found.get(0)[1], up, asked.y().value().span());
    if (cloud != null) {
      Span columns = asked.points().map(p -> p.y().span().to(p.x().span())).orElseThrow();
      refuseOtherUnit(cloud, up, columns);
      refuseNotPositive(cloud, asked.logs(), columns);
    }
    List<DataResult.Step> steps =
        found.stream()
            .map(pair -> new DataResult.Step(number(pair[0], across), number(pair[1], up), 0))
            .filter(step -> !asked.logs().y() || step.y() > 0)
            .toList();
    refuseNothing(steps, asked);
    return new DataResult.Plotted(
        asked.title(),
        new DataResult.Side(asked.x().text(), across),
        new DataResult.Side(Printer.print(asked.y().value()), up),
        cloud,
        steps,
        asked.logs(),
        showing.writing());
  }

  private static UnitOfMeasure unit(@Nullable Cloud cloud, Quantity value) {
    return cloud == null ? value.displayUnit() : cloud.up().unit();
  }

  private static double number(Quantity value, UnitOfMeasure unit) {
    return unit.fromCoherent(value.value()).doubleValue();
  }

  private ProblemException notPositive(Span span) {
    return showing.problem(
        Problem.Kind.VALUE,
        "A logarithmic axis begins above zero.",
        span,
        List.of("leave “with log …” away"));
  }

  private void refuseOtherKind(Quantity value, UnitOfMeasure unit, Span span) {
    if (!value.kind().equals(unit.kind())) {
      String sentence =
          "Here is a value in %s where one in %s belongs."
              .formatted(word(value.displayUnit()), word(unit));
      throw showing.problem(Problem.Kind.UNIT, sentence, span, List.of());
    }
  }

  private void refuseOther(UnitOfMeasure across, Quantity from, Statement.Option column) {
    if (!across.kind().equals(from.kind())) {
      String sentence =
          "The column “%s” is in %s and the curve goes along %s."
              .formatted(column.text(), word(across), word(from.displayUnit()));
      throw showing.problem(Problem.Kind.UNIT, sentence, column.span(), List.of());
    }
  }

  /** The points stand in the unit of the axis, so it is theirs. */
  private void refuseOtherUnit(Cloud cloud, UnitOfMeasure up, Span span) {
    if (!cloud.up().unit().equals(up)) {
      String sentence =
          "The points are in %s and the axis in %s.".formatted(word(cloud.up().unit()), word(up));
      throw showing.problem(
          Problem.Kind.UNIT, sentence, span, List.of("in " + word(cloud.up().unit())));
    }
  }

  private static String word(UnitOfMeasure unit) {
    return unit.text().isEmpty() ? "plain numbers" : unit.text();
  }

  private void refuseNothing(List<DataResult.Step> steps, DataStatement.Plot asked) {
    if (steps.size() < 2) {
      String sentence =
          "“%s” has no value to draw from there to there."
              .formatted(Printer.print(asked.y().value()));
      throw showing.problem(Problem.Kind.VALUE, sentence, asked.y().value().span(), List.of());
    }
  }

  /** Pairs of values along the way; places without a value are left out. */
  private List<Quantity[]> values(DataStatement.Plot asked, Quantity from, Quantity to) {
    List<Quantity[]> found = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      Quantity x = between(from, to, i, asked.logs().x());
      Optional<Quantity> y =
          new OtherValues(showing, Map.of(asked.x().text(), x)).find(asked.y().value());
      y.ifPresent(value -> found.add(new Quantity[] {x, value}));
    }
    if (found.isEmpty()) {
      showing.value(asked.y().value()); // says what is wrong, if it has no value at all
      refuseNothing(List.of(), asked);
    }
    return found;
  }

  /** Places go by equal steps, or by equal factors on a logarithmic axis. */
  private static Quantity between(Quantity from, Quantity to, int step, boolean factors) {
    if (factors) {
      double ratio = to.value().doubleValue() / from.value().doubleValue();
      return from.times(Quantity.number(Decimals.from(Math.pow(ratio, step / (double) STEPS))));
    }
    BigDecimal share = BigDecimal.valueOf(step).divide(BigDecimal.valueOf(STEPS), Decimals.DIGITS);
    return from.plus(to.minus(from).times(Quantity.number(share)));
  }
}
