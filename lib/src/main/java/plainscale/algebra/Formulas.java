package plainscale.algebra;

import java.util.Optional;
import plainscale.notation.Expr;
import plainscale.quantity.Quantity;

/** What the names of an expression stand for, so that it can be computed again and again. */
public interface Formulas {

  /** The expression that defines a name; empty for what is given, and for a constant. */
  Optional<Expr> formula(String name);

  /** The value of a name. */
  Quantity value(String name);
}
