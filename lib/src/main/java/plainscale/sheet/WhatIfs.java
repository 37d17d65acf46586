package plainscale.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import plainscale.notation.Change;
import plainscale.notation.Expr;
import plainscale.notation.Format;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;

/** What changes in a sheet when some of its names are something else, and what stays. */
final class WhatIfs {
  private static final MathContext FACTOR = new MathContext(3, RoundingMode.HALF_EVEN);

  /** As in a table of values. */
  private static final int FIGURES = 3;

  private final Showing showing;

  WhatIfs(Showing showing) {
    this.showing = showing;
  }

  Result whatIf(Statement.WhatIf whatIf) {
    Alternative other = new Alternative(showing, whatIf.changes());
    List<Result.Row> rows = new ArrayList<>();
    for (String changed : other.quantities()) {
      Expr.Name name = new Expr.Name(whatIf.span(), changed);
      rows.add(row(name, showing.value(name), other.after(name), Result.Row.Why.CHANGED));
    }
    for (Expr expr : shown(whatIf, other)) {
      rows.add(followed(expr, showing.value(expr), other));
    }
    if (whatIf.shown().isEmpty() && rows.stream().noneMatch(WhatIfs::follows)) {
      rows.addAll(turned(whatIf, other));
    }
    return new Result.Compared(
        Alternative.written(whatIf.changes()), other.relations(), rows, showing.writing());
  }

  private static boolean follows(Result.Row row) {
    return row.why() == Result.Row.Why.FOLLOWS || row.why() == Result.Row.Why.CANCELS;
  }

  /** The given that must be otherwise for a changed unknown, if there is only one. */
  private List<Result.Row> turned(Statement.WhatIf whatIf, Alternative other) {
    List<Result.Row> rows = new ArrayList<>();
    for (Change change : whatIf.changes()) {
      List<String> givens = givens(change.name().text());
      if (givens.size() > 1) {
        throw which(change, givens);
      }
      for (String given : givens) {
        Expr.Name name = new Expr.Name(whatIf.span(), given);
        rows.add(followed(name, showing.value(name), other));
      }
    }
    return rows;
  }

  /** The givens from which relations derive a name. */
  private List<String> givens(String name) {
    Map<String, Entry> entries = showing.names().entries();
    Entry entry = entries.get(name);
    return entry == null || !(entry.statement() instanceof Statement.Solve)
        ? List.of()
        : References.of(entry.statement(), entries).stream()
            .flatMap(other -> Stream.ofNullable(entries.get(other)))
            .filter(other -> other.statement() instanceof Statement.Given)
            .map(Entry::name)
            .sorted()
            .toList();
  }

  private ProblemException which(Change change, List<String> givens) {
    String sentence =
        "“%s” follows from %s; say which of them changes with it."
            .formatted(change.name().text(), String.join(", ", givens));
    List<String> repairs = givens.stream().limit(4).map(given -> "show " + given).toList();
    return showing.problem(Problem.Kind.SYNTAX, sentence, change.name().span(), repairs);
  }

  /** What was asked for, else all that the sheet computes. */
  private List<Expr> shown(Statement.WhatIf whatIf, Alternative other) {
    return whatIf.shown().isEmpty()
        ? Alternative.computed(showing, whatIf, other.quantities())
        : whatIf.shown();
  }

  private Result.Row row(Expr expr, Quantity before, Quantity after, Result.Row.Why why) {
    Shown first = showing.shown(before, Format.USUAL, expr.span());
    Format unit = before.unit().isPresent() ? Format.USUAL.with(first.unit()) : Format.USUAL;
    Shown second = showing.shown(after, unit, expr.span());
    if (why == Result.Row.Why.FOLLOWS && (isCoarse(first) || isCoarse(second))) {
      first = showing.shown(before, Format.USUAL.to(FIGURES), expr.span());
      second = showing.shown(after, unit.to(FIGURES), expr.span());
    }
    return new Result.Row(showing.label(expr, ""), first, second, factor(before, after), why);
  }

  /** One figure does not show how two values differ. */
  private static boolean isCoarse(Shown shown) {
    return shown.value().precision() < 2 && shown.uncertainty().isEmpty();
  }

  private Result.Row followed(Expr expr, Quantity before, Alternative other) {
    Quantity after = other.after(expr);
    Result.Row.Why why =
        !Alternative.isSame(before, after)
            ? Result.Row.Why.FOLLOWS
            : other.hangsOn(expr) ? Result.Row.Why.CANCELS : Result.Row.Why.NOT_CONTAINED;
    return row(expr, before, after, why);
  }

  /** By which factor it changes; none from zero, and none for a reading of a scale. */
  private static Optional<BigDecimal> factor(Quantity before, Quantity after) {
    return before.value().signum() == 0 || before.isReading()
        ? Optional.empty()
        : Optional.of(after.value().divide(before.value(), FACTOR));
  }
}
