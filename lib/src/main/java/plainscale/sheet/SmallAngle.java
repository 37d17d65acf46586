package plainscale.sheet;

import java.math.BigDecimal;
import plainscale.notation.Expr;
import plainscale.notation.Rewriting;
import plainscale.notation.Span;
import plainscale.quantity.ElementaryFunction;

/**
 * Relations with one angle taken to be small: the sine and the tangent are the angle in radians,
 * the cosine is one (first terms of the Taylor series).
 */
final class SmallAngle extends Rewriting {
  private static final Expr ONE = new Expr.Literal(new Span(0, 0), BigDecimal.ONE, null, true);

  private final String angle;

  SmallAngle(String angle) {
    this.angle = angle;
  }

  @Override
  public Expr binary(Expr.Binary binary) {
    Expr.Binary rewritten = (Expr.Binary) super.binary(binary);
    boolean timesOne = rewritten.operator() == Expr.Operator.TIMES && rewritten.right().equals(ONE);
    return timesOne ? rewritten.left() : rewritten;
  }

  @Override
  public Expr call(Expr.Call call) {
    boolean small = call.argument() instanceof Expr.Name name && name.text().equals(angle);
    if (small && call.function() == ElementaryFunction.COS) {
      return ONE;
    }
    boolean same =
        call.function() == ElementaryFunction.SIN || call.function() == ElementaryFunction.TAN;
    return small && same ? call.argument() : super.call(call);
  }
}
