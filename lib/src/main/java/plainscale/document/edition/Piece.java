package plainscale.document.edition;

import plainscale.algebra.Equation;
import plainscale.magnitude.Writing;
import plainscale.notation.Expr;
import plainscale.quantity.Shown;
import plainscale.units.UnitOfMeasure;

/** A piece of a line on a worksheet. */
sealed interface Piece {

  /** Calls the visitor's method for this kind of piece. */
  <R> R accept(Visitor<R> visitor);

  /** Whether something is to be written here. */
  default boolean isOpen() {
    return false;
  }

  /** Words as they stand. */
  record Words(String text) implements Piece {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.words(this);
    }
  }

  /** The name of a quantity. */
  record Name(String name) implements Piece {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.name(this);
    }
  }

  /** A formula. */
  record Formula(Expr expr, Writing writing) implements Piece {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.formula(this);
    }
  }

  /** An equation. */
  record Line(Equation equation, Writing writing) implements Piece {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.line(this);
    }
  }

  /** A value that students are given. */
  record Given(Shown shown, Writing writing) implements Piece {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.given(this);
    }
  }

  /** A unit, behind a gap. */
  record Unit(UnitOfMeasure unit) implements Piece {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.unit(this);
    }
  }

  /** Room to write in. Its width hangs on the kind of what is missing, never on its length. */
  enum Gap implements Piece {
    /** A number. */
    NUMBER,
    /** A value with its unit and uncertainty, or a word or two. */
    VALUE,
    /** An equation or a sentence: the rest of the line. */
    REST;

    @Override
    public boolean isOpen() {
      return true;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.gap(this);
    }
  }

  /** One method for each kind of piece. */
  interface Visitor<R> {
    R words(Words words);

    R name(Name name);

    R formula(Formula formula);

    R line(Line line);

    R given(Given given);

    R unit(Unit unit);

    R gap(Gap gap);
  }
}
