package plainscale.sheet;

import plainscale.algebra.Equation;
import plainscale.magnitude.Writing;

/** A piece of a narrated text. */
public sealed interface Piece {

  /** Words as they stand. */
  record Words(String text) implements Piece {}

  /** A relation, or, with its number, a line of a derivation. */
  record Quoted(int number, Equation equation, Writing writing) implements Piece {}

  /** A live value in the form asked for. */
  record Live(Result.Numeral numeral) implements Piece {}
}
