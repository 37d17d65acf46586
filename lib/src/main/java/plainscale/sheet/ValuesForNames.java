package plainscale.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import plainscale.notation.Expr;
import plainscale.notation.Rewriting;
import plainscale.quantity.Shown;
import plainscale.units.UnitOfMeasure;

/** An expression with the rounded values in place of the names, as it is put into a calculator. */
final class ValuesForNames extends Rewriting {
  /** Nobody types more figures of a constant; the value itself is computed with all of them. */
  private static final MathContext OF_CONSTANTS = new MathContext(4, RoundingMode.HALF_EVEN);

  private final Showing showing;

  ValuesForNames(Showing showing) {
    this.showing = showing;
  }

  @Override
  public Expr name(Expr.Name name) {
    Shown shown = showing.value(name).shown();
    UnitOfMeasure unit = shown.unit().equals(UnitOfMeasure.ONE) ? null : shown.unit();
    boolean own = showing.names().entries().containsKey(name.text());
    BigDecimal value = own ? shown.value() : shown.value().round(OF_CONSTANTS);
    return new Expr.Literal(name.span(), value, unit, false);
  }
}
