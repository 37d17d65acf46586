package plainscale.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainscale.notation.Expr;
import plainscale.notation.Format;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;

/** What changes in a sheet when some of its names are something else, and what stays. */
final class WhatIfs {
  private static final MathContext FACTOR = new MathContext(3, RoundingMode.HALF_EVEN);

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
    return new Result.Compared(other.relations(), rows, showing.writing());
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
    return new Result.Row(showing.label(expr, ""), first, second, factor(before, after), why);
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
