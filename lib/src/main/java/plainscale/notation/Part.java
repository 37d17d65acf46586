package plainscale.notation;

/** A piece of a {@code say}. */
public sealed interface Part {

  /** Words as they stand. */
  record Text(String text) implements Part {}

  /** A live value in braces. */
  record Value(Expr value, Format format) implements Part {}

  /** {@code equation 5 of q} in braces: a line of a derivation; {@code span}: its number. */
  record EquationOf(Span span, int number, Statement.Option unknown) implements Part {}

  /** {@code figure balls} in braces: the number of a picture. */
  record FigureOf(Statement.Option figure) implements Part {}

  /** {@code steps of q} in braces: how many steps a derivation has. */
  record StepsOf(Statement.Option unknown) implements Part {}
}
