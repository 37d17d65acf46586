package plainscale.sheet;

import java.util.List;
import plainscale.algebra.Equation;
import plainscale.laws.Law;
import plainscale.magnitude.Writing;
import plainscale.notation.Expr;
import plainscale.notation.Printer;
import plainscale.units.UnitOfMeasure;

/** What a statement about the table of laws shows. */
public sealed interface LawResult extends Result {

  /** Calls the visitor's method for this kind of result about laws. */
  <R> R acceptLaw(Visitor<R> visitor);

  @Override
  default <R> R accept(Result.Visitor<R> visitor) {
    return visitor.law(this);
  }

  /**
   * A law that became a relation of the sheet.
   *
   * @param name of the relation
   * @param rows its symbols and constants
   * @param description what the statement says of it, possibly empty
   */
  record Used(
      String name, Law law, Equation equation, List<Row> rows, String description, Writing writing)
      implements LawResult {
    /** Keeps its own copy of the rows. */
    public Used {
      rows = List.copyOf(rows);
    }

    /** Whether something stands for a symbol that the law calls otherwise. */
    public boolean renames() {
      return rows.stream().anyMatch(row -> !Printer.print(row.here()).equals(row.symbol()));
    }

    @Override
    public <R> R acceptLaw(Visitor<R> visitor) {
      return visitor.used(this);
    }
  }

  /** What stands for a symbol here, the symbol, its unit, what it means. */
  record Row(Expr here, String symbol, UnitOfMeasure unit, String meaning) {}

  /** The laws that fit some words, the best first. */
  record Found(String words, List<Law> laws, Writing writing) implements LawResult {
    /** Keeps its own copy of the laws. */
    public Found {
      laws = List.copyOf(laws);
    }

    @Override
    public <R> R acceptLaw(Visitor<R> visitor) {
      return visitor.found(this);
    }
  }

  /** One method for each kind of result about laws. */
  interface Visitor<R> {
    R used(Used used);

    R found(Found found);
  }
}
