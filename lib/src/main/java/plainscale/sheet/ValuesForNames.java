package plainscale.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import plainscale.notation.Expr;
import plainscale.quantity.Shown;
import plainscale.units.UnitOfMeasure;

/** An expression with the rounded values in place of the names, as it is put into a calculator. */
record ValuesForNames(Showing showing) implements Expr.Visitor<Expr> {
  /** Nobody types more figures of a constant; the value itself is computed with all of them. */
  private static final MathContext OF_CONSTANTS = new MathContext(4, RoundingMode.HALF_EVEN);

  @Override
  public Expr literal(Expr.Literal literal) {
    return literal;
  }

  @Override
  public Expr name(Expr.Name name) {
    Shown shown = showing.value(name).shown();
    UnitOfMeasure unit = shown.unit().equals(UnitOfMeasure.ONE) ? null : shown.unit();
    boolean own = showing.names().entries().containsKey(name.text());
    BigDecimal value = own ? shown.value() : shown.value().round(OF_CONSTANTS);
    return new Expr.Literal(name.span(), value, unit, false);
  }

  @Override
  public Expr negation(Expr.Negation negation) {
    return new Expr.Negation(negation.span(), negation.operand().accept(this));
  }

  @Override
  public Expr binary(Expr.Binary binary) {
    return new Expr.Binary(
        binary.span(),
        binary.operator(),
        binary.left().accept(this),
        binary.right().accept(this),
        binary.at());
  }

  @Override
  public Expr call(Expr.Call call) {
    return new Expr.Call(call.span(), call.function(), call.argument().accept(this));
  }

  @Override
  public Expr inUnits(Expr.InUnits inUnits) {
    return new Expr.InUnits(inUnits.span(), inUnits.operand().accept(this), inUnits.unit());
  }

  @Override
  public Expr conversion(Expr.Conversion conversion) {
    return new Expr.Conversion(
        conversion.span(), conversion.operand().accept(this), conversion.unit());
  }
}
