package plainscale.document.edition;

import java.util.ArrayList;
import java.util.List;
import plainscale.notation.Expr;
import plainscale.notation.Rewriting;

/** The numbers that are typed into expressions. */
final class Literals extends Rewriting {
  private final List<Expr.Literal> found = new ArrayList<>();

  /** Those of all expressions that were visited, in their order. */
  List<Expr.Literal> found() {
    return List.copyOf(found);
  }

  @Override
  public Expr literal(Expr.Literal literal) {
    found.add(literal);
    return literal;
  }
}
