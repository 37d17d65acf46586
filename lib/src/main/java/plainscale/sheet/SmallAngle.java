package plainscale.sheet;

import java.math.BigDecimal;
import plainscale.notation.Expr;
import plainscale.notation.Span;
import plainscale.quantity.ElementaryFunction;

/**
 * Relations with one angle taken to be small: the sine and the tangent are the angle in radians,
 * the cosine is one (first terms of the Taylor series).
 */
record SmallAngle(String angle) implements Expr.Visitor<Expr> {
  private static final Expr ONE = new Expr.Literal(new Span(0, 0), BigDecimal.ONE, null, true);

  @Override
  public Expr literal(Expr.Literal literal) {
    return literal;
  }

  @Override
  public Expr name(Expr.Name name) {
    return name;
  }

  @Override
  public Expr negation(Expr.Negation negation) {
    return new Expr.Negation(negation.span(), negation.operand().accept(this));
  }

  @Override
  public Expr binary(Expr.Binary binary) {
    Expr left = binary.left().accept(this);
    Expr right = binary.right().accept(this);
    boolean timesOne = right.equals(ONE) && binary.operator() == Expr.Operator.TIMES;
    return timesOne
        ? left
        : new Expr.Binary(binary.span(), binary.operator(), left, right, binary.at());
  }

  @Override
  public Expr call(Expr.Call call) {
    boolean small = call.argument() instanceof Expr.Name name && name.text().equals(angle);
    if (small && call.function() == ElementaryFunction.COS) {
      return ONE;
    }
    boolean same =
        call.function() == ElementaryFunction.SIN || call.function() == ElementaryFunction.TAN;
    return small && same
        ? call.argument()
        : new Expr.Call(call.span(), call.function(), call.argument().accept(this));
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
