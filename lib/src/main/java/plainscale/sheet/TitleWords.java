package plainscale.sheet;

import plainscale.notation.Expr;
import plainscale.notation.Printer;

/** What a value is called in a sentence: by its name, if it has one. */
final class TitleWords {
  private TitleWords() {}

  static String of(Expr expr) {
    return expr instanceof Expr.Literal ? "" : Printer.print(expr);
  }
}
