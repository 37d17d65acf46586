package plainscale.document.edition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainscale.document.Blank;
import plainscale.magnitude.Writing;
import plainscale.notation.Expr;
import plainscale.sheet.Result;
import plainscale.units.Kinds;
import plainscale.units.UnitOfMeasure;

/** How much of a cell is blank, what is to be found in its lesson, and the words for that. */
record Task(Blank blank, Key key, FixedWords words) {
  /** A head of a table. */
  List<List<Piece>> head(String... keys) {
    List<List<Piece>> head = new ArrayList<>();
    for (String word : keys) {
      head.add(word.isEmpty() ? List.of() : List.of(new Piece.Words(words.say(word))));
    }
    return head;
  }

  /** So many rows of empty cells. */
  static List<List<List<Piece>>> emptyRows(int rows, int columns) {
    List<List<List<Piece>>> empty = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      empty.add(emptyCells(columns));
    }
    return empty;
  }

  static List<List<Piece>> emptyCells(int columns) {
    List<List<Piece>> cells = new ArrayList<>();
    for (int i = 0; i < columns; i++) {
      cells.add(List.of());
    }
    return cells;
  }

  /** The first cell of a row, then so many empty ones. */
  static List<List<Piece>> row(List<Piece> first, int empty) {
    List<List<Piece>> row = new ArrayList<>(List.of(first));
    row.addAll(emptyCells(empty));
    return row;
  }

  boolean hidesFormulas() {
    return Key.isAtLeast(blank, Blank.FORMULAS);
  }

  boolean hidesRelations() {
    return Key.isAtLeast(blank, Blank.ALL);
  }

  /** Name and formula of a label, as far as they are there; a blank formula is a gap. */
  List<List<Piece>> sides(Result.Label label, Writing writing) {
    List<List<Piece>> sides = new ArrayList<>();
    label.name().ifPresent(name -> sides.add(List.of(new Piece.Name(name))));
    label.formula().flatMap(f -> formula(f, writing)).ifPresent(f -> sides.add(List.of(f)));
    return sides;
  }

  /** A formula, or room for it, or nothing where it is not even asked for. */
  private Optional<Piece> formula(Expr formula, Writing writing) {
    if (!hidesFormulas()) {
      return Optional.of(new Piece.Formula(formula, writing));
    }
    return hidesRelations() ? Optional.empty() : Optional.of(Piece.Gap.VALUE);
  }

  /** What a quantity is called: its description, else its name, else its formula. */
  List<Piece> called(Result.Label label, Writing writing) {
    return label.description().isEmpty()
        ? named(label, writing)
        : List.of(new Piece.Words(label.description()));
  }

  /** Its name, else its formula, else what it is. */
  List<Piece> named(Result.Label label, Writing writing) {
    List<List<Piece>> sides = sides(label, writing);
    if (!sides.isEmpty()) {
      return sides.get(0);
    }
    if (!label.description().isEmpty()) {
      return List.of(new Piece.Words(label.description()));
    }
    return label.formula().isPresent() ? List.of(Piece.Gap.VALUE) : List.of();
  }

  /** The sides of an equation with signs between them. */
  static List<Piece> equal(List<List<Piece>> sides) {
    List<Piece> pieces = new ArrayList<>();
    for (List<Piece> side : sides) {
      if (!pieces.isEmpty()) {
        pieces.add(new Piece.Words(" = "));
      }
      pieces.addAll(side);
    }
    return pieces;
  }

  /** A gap and the unit behind it, if the size of the value has not chosen the unit. */
  static List<Piece> gap(UnitOfMeasure unit) {
    boolean usual = unit.kind().angle() || unit.equals(Kinds.of(unit.kind()).unit());
    return usual ? asked(unit) : List.of(Piece.Gap.VALUE);
  }

  /** A gap and a unit that was asked for. */
  static List<Piece> asked(UnitOfMeasure unit) {
    return unit.equals(UnitOfMeasure.ONE)
        ? List.of(Piece.Gap.NUMBER)
        : List.of(Piece.Gap.NUMBER, new Piece.Unit(unit));
  }
}
