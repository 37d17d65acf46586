package plainscale.data;

/** One column of a table: numbers with a unit, or words. */
public sealed interface Column permits NumberColumn, TextColumn {

  /** The name, valid in the notation: a letter, then letters, digits and {@code _}. */
  String name();

  /** The heading as it stands in the file, unit and all. */
  String heading();

  /** How many rows the table has. */
  int rows();

  /** Whether something readable stands in that row, counted from 1. */
  boolean has(int row);

  /** What the visitor makes of it. */
  <R> R accept(Visitor<R> visitor);

  /** One method for each kind of column. */
  interface Visitor<R> {
    /** Numbers. */
    R numbers(NumberColumn column);

    /** Words. */
    R texts(TextColumn column);
  }
}
