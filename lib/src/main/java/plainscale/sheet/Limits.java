package plainscale.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plainscale.algebra.Evaluator;
import plainscale.notation.Expr;
import plainscale.notation.Part;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.quantity.Decimals;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.quantity.Uncertainty;
import plainscale.units.Kinds;
import plainscale.units.UnitOfMeasure;

/** What becomes of quantities as a name comes ever nearer to a value, by numbers. */
final class Limits {
  private static final int ROWS = 7;
  private static final int FIGURES = 3;

  private static final double SAME_FACTOR = 0.05;

  private final Showing showing;

  Limits(Showing showing) {
    this.showing = showing;
  }

  Result limit(Statement.Limit limit) {
    return Evaluator.at(showing.source(), limit.span(), () -> limited(limit));
  }

  private Result limited(Statement.Limit limit) {
    Approach approach = approach(limit);
    List<List<NearPoint>> columns = new ArrayList<>();
    limit.shown().forEach(shown -> columns.add(new ArrayList<>()));
    for (int row = 0; row < ROWS; row++) {
      NearRow places = new NearRow(showing, limit.name().text(), approach, row);
      for (int i = 0; i < columns.size(); i++) {
        Expr expr = limit.shown().get(i).value();
        NearPoint point = Evaluator.at(showing.source(), expr.span(), () -> places.point(expr));
        columns.get(i).add(point);
      }
    }
    refuseWithoutAnyValue(limit, columns);
    List<Ending> endings = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      endings.add(ending(limit, approach, limit.shown().get(i), columns.get(i)));
    }
    return new Result.Limited(
        table(limit, approach, columns),
        limit.name().text(),
        approach.end().orElse(null),
        approach.above(),
        endings);
  }

  /** What has no value anywhere has a mistake, which is told as elsewhere. */
  private void refuseWithoutAnyValue(Statement.Limit limit, List<List<NearPoint>> columns) {
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).stream().allMatch(point -> point.quantity().isEmpty())) {
        showing.value(limit.shown().get(i).value());
      }
    }
  }

  private Approach approach(Statement.Limit limit) {
    Quantity now = showing.value(new Expr.Name(limit.name().span(), limit.name().text()));
    Quantity goal = limit.goal().map(showing::value).orElse(null);
    if (goal != null && !now.kind().equals(goal.kind())) {
      throw otherKind(limit, now, goal);
    }
    Approach approach = Approach.of(now, goal);
    if (approach.isEmpty()) {
      throw noWay(limit);
    }
    return approach;
  }

  private ProblemException otherKind(Statement.Limit limit, Quantity now, Quantity goal) {
    String sentence =
        "“%s” is %s; it cannot come near to %s."
            .formatted(
                limit.name().text(),
                Kinds.of(now.kind()).withArticle(),
                Kinds.of(goal.kind()).withArticle());
    Span place = limit.goal().map(Expr::span).orElse(limit.span());
    boolean number = goal.kind().isNumber();
    String unit = now.displayUnit().text();
    String written = showing.source().substring(place.start(), place.end());
    List<String> repairs =
        number && !unit.isEmpty()
            ? List.of("to " + written + (unit.equals("°") ? "" : " ") + unit)
            : List.of();
    return showing.problem(Problem.Kind.UNIT, sentence, place, repairs);
  }

  private ProblemException noWay(Statement.Limit limit) {
    String name = limit.name().text();
    String sentence =
        limit.goal().isPresent()
            ? "“%s” has that value already, and a limit is approached from another one."
            : "“%s” is not above zero, so that ten times as much of it leads to no infinity.";
    List<String> repairs = List.of("give %s another value first".formatted(name));
    return showing.problem(
        Problem.Kind.VALUE, sentence.formatted(name), limit.name().span(), repairs);
  }

  private Result.Varied table(
      Statement.Limit limit, Approach approach, List<List<NearPoint>> columns) {
    Expr.Name name = new Expr.Name(limit.name().span(), limit.name().text());
    List<Result.Label> head = new ArrayList<>(List.of(showing.label(name, "")));
    limit.shown().forEach(shown -> head.add(showing.label(shown.value(), "")));
    List<List<Optional<Shown>>> rows = new ArrayList<>();
    for (int row = 0; row < ROWS; row++) {
      List<Optional<Shown>> cells = new ArrayList<>(List.of(Optional.of(approach.shown(row))));
      for (int i = 0; i < columns.size(); i++) {
        Part.Value shown = limit.shown().get(i);
        NearPoint point = columns.get(i).get(row);
        cells.add(point.counts() ? point.quantity().map(q -> shown(q, shown)) : Optional.empty());
      }
      rows.add(cells);
    }
    return new Result.Varied(head, rows, showing.writing());
  }

  /** A row is a step on the way, whose uncertainty would hide where the way goes. */
  private Shown shown(Quantity value, Part.Value asked) {
    Quantity plain = value.because(Uncertainty.NONE);
    return showing.shown(plain, asked.format().to(figures(asked)), asked.value().span());
  }

  private static int figures(Part.Value asked) {
    return asked.format().figures() > 0 ? asked.format().figures() : FIGURES;
  }

  private Ending ending(
      Statement.Limit limit, Approach approach, Part.Value asked, List<NearPoint> points) {
    List<NearPoint> good = good(points);
    int end = start(points) + good.size();
    Ending.Stop stop =
        end == points.size()
            ? Ending.Stop.NONE
            : points.get(end).quantity().isEmpty() ? Ending.Stop.NO_VALUE : Ending.Stop.SCATTER;
    Trend trend = trend(good, stop);
    Trend.Kind kind = kind(trend, asked, limit, approach);
    return new Ending(
        showing.label(asked.value(), ""),
        kind,
        trend.exponent(),
        times(good, trend),
        !good.isEmpty() && good.get(good.size() - 1).value() < 0,
        number(kind, trend, good, asked),
        stop,
        end == 0 ? null : approach.shown(end - 1));
  }

  /** The rows that count, from the first that does to before the next that does not. */
  private static List<NearPoint> good(List<NearPoint> points) {
    int start = start(points);
    int end = start;
    while (end < points.size() && points.get(end).counts() && !isLost(points, start, end)) {
      end++;
    }
    return points.subList(start, end);
  }

  private static int start(List<NearPoint> points) {
    int start = 0;
    while (start < points.size() && !points.get(start).counts()) {
      start++;
    }
    return start;
  }

  /** Zero after other numbers: what was there is too small for the digits. */
  private static boolean isLost(List<NearPoint> points, int start, int at) {
    return points.get(at).value() == 0 && points.get(start).value() != 0;
  }

  private static Trend trend(List<NearPoint> good, Ending.Stop stop) {
    Trend trend =
        Trend.of(
            good.stream()
                .map(p -> new Trend.Sample(p.value(), p.noise() * Math.abs(p.value())))
                .toList());
    boolean quickly =
        trend.kind() == Trend.Kind.QUICKLY_ZERO || trend.kind() == Trend.Kind.QUICKLY_GROWS;
    return stop == Ending.Stop.NO_VALUE && !quickly ? Trend.of(List.of()) : trend;
  }

  private Trend.Kind kind(Trend trend, Part.Value asked, Statement.Limit limit, Approach approach) {
    if (trend.kind() == Trend.Kind.LIMIT && trend.figures() < 1) {
      return Trend.Kind.UNCLEAR;
    }
    Map<String, Quantity> first = Map.of(limit.name().text(), approach.at(0, 1));
    boolean reached = new OtherValues(showing, first).reach(asked.value());
    return trend.kind() == Trend.Kind.SAME && !reached ? Trend.Kind.NOT_CONTAINED : trend.kind();
  }

  /** By which factor it changes in a row, if that is what its power says already. */
  private static double times(List<NearPoint> good, Trend trend) {
    if (trend.kind() != Trend.Kind.GROWS) {
      return Double.NaN;
    }
    int n = good.size();
    double power =
        Ending.fraction(trend.exponent()).map(Number::doubleValue).orElse(trend.exponent());
    double expected = Math.pow(10, -power);
    double seen = good.get(n - 1).value() / good.get(n - 2).value();
    return Math.abs(seen / expected - 1) < SAME_FACTOR ? expected : Double.NaN;
  }

  private @Nullable Shown number(
      Trend.Kind kind, Trend trend, List<NearPoint> good, Part.Value asked) {
    boolean adds = kind == Trend.Kind.SLOWLY;
    if (!adds && kind != Trend.Kind.LIMIT) {
      return null;
    }
    Quantity nearest = good.get(good.size() - 1).quantity().orElseThrow();
    UnitOfMeasure unit = nearest.displayUnit();
    Quantity number = Quantity.exact(Decimals.from(trend.number()), unit);
    Quantity known = adds ? number : number.because(nearest.uncertainty());
    int figures = adds ? FIGURES : Math.min(figures(asked), trend.figures());
    return showing.shown(known, asked.format().to(figures), asked.value().span());
  }
}
