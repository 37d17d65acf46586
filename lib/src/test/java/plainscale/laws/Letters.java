package plainscale.laws;

import java.util.stream.Stream;
import plainscale.notation.Expr;

/** The names in an expression. */
final class Letters implements Expr.Visitor<Stream<String>> {
  @Override
  public Stream<String> literal(Expr.Literal literal) {
    return Stream.empty();
  }

  @Override
  public Stream<String> name(Expr.Name name) {
    return Stream.of(name.text());
  }

  @Override
  public Stream<String> negation(Expr.Negation negation) {
    return negation.operand().accept(this);
  }

  @Override
  public Stream<String> binary(Expr.Binary binary) {
    return Stream.concat(binary.left().accept(this), binary.right().accept(this));
  }

  @Override
  public Stream<String> call(Expr.Call call) {
    return call.argument().accept(this);
  }

  @Override
  public Stream<String> inUnits(Expr.InUnits inUnits) {
    return inUnits.operand().accept(this);
  }

  @Override
  public Stream<String> conversion(Expr.Conversion conversion) {
    return conversion.operand().accept(this);
  }
}
