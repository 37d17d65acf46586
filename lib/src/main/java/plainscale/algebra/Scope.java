package plainscale.algebra;

import java.util.List;
import plainscale.notation.Expr;
import plainscale.quantity.Quantity;
import plainscale.units.Kind;

/** Where an expression finds the values of its names. */
public interface Scope {

  /**
   * The value of a name.
   *
   * @throws plainscale.notation.ProblemException if it has none; {@code source} is the text in
   *     which the name stands
   */
  Quantity value(Expr.Name name, String source);

  /** Names of quantities of that kind, to offer as repairs. */
  List<String> ofKind(Kind kind);
}
