package plainscale.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainscale.notation.Expr;
import plainscale.notation.Format;
import plainscale.notation.Problem;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.units.Kinds;

/** What changes in a sheet when some of its names are something else, and what stays. */
final class WhatIfs {
  private static final double SAME = 1e-12;
  private static final MathContext FACTOR = new MathContext(3, RoundingMode.HALF_EVEN);

  private final Showing showing;

  WhatIfs(Showing showing) {
    this.showing = showing;
  }

  Result whatIf(Statement.WhatIf whatIf) {
    Map<String, Quantity> changed = new LinkedHashMap<>();
    List<Result.Row> rows = new ArrayList<>();
    for (Statement.Change change : whatIf.changes()) {
      Quantity before = value(change.name());
      Quantity after = showing.value(change.value());
      refuseOtherKind(before, after, change);
      changed.put(change.name().text(), after);
      Expr.Name name = new Expr.Name(change.name().span(), change.name().text());
      rows.add(row(name, before, after, Result.Row.Why.CHANGED));
    }
    OtherValues other = new OtherValues(showing, changed);
    for (Expr expr : shown(whatIf, changed)) {
      Quantity before = showing.value(expr);
      rows.add(followed(expr, before, other));
    }
    return new Result.Compared(rows, showing.writing());
  }

  private Quantity value(Statement.Option name) {
    return showing.value(new Expr.Name(name.span(), name.text()));
  }

  private void refuseOtherKind(Quantity before, Quantity after, Statement.Change change) {
    if (!before.kind().equals(after.kind())) {
      String sentence =
          "“%s” is %s; it cannot become %s."
              .formatted(
                  change.name().text(),
                  Kinds.of(before.kind()).withArticle(),
                  Kinds.of(after.kind()).withArticle());
      throw showing.problem(Problem.Kind.UNIT, sentence, change.value().span(), List.of());
    }
  }

  /** What was asked for, else all that the sheet computes. */
  private List<Expr> shown(Statement.WhatIf whatIf, Map<String, Quantity> changed) {
    if (!whatIf.shown().isEmpty()) {
      return whatIf.shown();
    }
    return showing.names().entries().values().stream()
        .filter(entry -> isComputed(entry.statement()) && !changed.containsKey(entry.name()))
        .<Expr>map(entry -> new Expr.Name(whatIf.span(), entry.name()))
        .toList();
  }

  private static boolean isComputed(Statement statement) {
    return statement instanceof Statement.Definition || statement instanceof Statement.Solve;
  }

  private Result.Row row(Expr expr, Quantity before, Quantity after, Result.Row.Why why) {
    Shown first = showing.shown(before, Format.USUAL, expr.span());
    Format unit = before.unit().isPresent() ? Format.USUAL.with(first.unit()) : Format.USUAL;
    Shown second = showing.shown(after, unit, expr.span());
    return new Result.Row(showing.label(expr, ""), first, second, factor(before, after), why);
  }

  private Result.Row followed(Expr expr, Quantity before, OtherValues other) {
    Quantity after = other.of(expr);
    Result.Row.Why why =
        !isSame(before, after)
            ? Result.Row.Why.FOLLOWS
            : other.reach(expr) ? Result.Row.Why.CANCELS : Result.Row.Why.NOT_CONTAINED;
    return row(expr, before, after, why);
  }

  private static boolean isSame(Quantity before, Quantity after) {
    double one = before.value().doubleValue();
    double other = after.value().doubleValue();
    return Math.abs(one - other) <= SAME * Math.max(Math.abs(one), Math.abs(other));
  }

  /** By which factor it changes; none from zero, and none for a reading of a scale. */
  private static Optional<BigDecimal> factor(Quantity before, Quantity after) {
    return before.value().signum() == 0 || before.isReading()
        ? Optional.empty()
        : Optional.of(after.value().divide(before.value(), FACTOR));
  }
}
