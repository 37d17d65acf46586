package plainscale.sheet;

import plainscale.notation.Expr;

/** Whether something is subtracted in an expression, so that its value may be negative. */
final class Differences implements Expr.Visitor<Boolean> {
  private Differences() {}

  static boolean in(Expr expr) {
    return expr.accept(new Differences());
  }

  @Override
  public Boolean literal(Expr.Literal literal) {
    return false;
  }

  @Override
  public Boolean name(Expr.Name name) {
    return false;
  }

  @Override
  public Boolean negation(Expr.Negation negation) {
    return !(negation.operand() instanceof Expr.Literal) || negation.operand().accept(this);
  }

  @Override
  public Boolean binary(Expr.Binary binary) {
    return binary.operator() == Expr.Operator.MINUS
        || binary.left().accept(this)
        || (binary.operator() != Expr.Operator.POWER && binary.right().accept(this));
  }

  @Override
  public Boolean call(Expr.Call call) {
    return call.argument().accept(this);
  }

  @Override
  public Boolean inUnits(Expr.InUnits inUnits) {
    return inUnits.operand().accept(this);
  }

  @Override
  public Boolean conversion(Expr.Conversion conversion) {
    return conversion.operand().accept(this);
  }
}
