package plainscale.notation;

/**
 * An expression built again with some of its parts changed. Every method gives the same kind of
 * expression with rewritten operands; a subclass overrides the parts that it changes.
 */
public abstract class Rewriting implements Expr.Visitor<Expr> {

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
    return new Expr.Binary(binary.span(), binary.operator(), left, right, binary.at());
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
    Expr operand = conversion.operand().accept(this);
    return new Expr.Conversion(conversion.span(), operand, conversion.unit());
  }
}
