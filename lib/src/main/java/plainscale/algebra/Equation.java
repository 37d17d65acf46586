package plainscale.algebra;

import plainscale.notation.Expr;
import plainscale.notation.Printer;

/** Two expressions for the same quantity. */
public record Equation(Expr left, Expr right) {

  /** The equation as it would be written in a cell. */
  public String text() {
    return Printer.print(left) + " = " + Printer.print(right);
  }
}
