package plainscale.notation;

import java.util.List;

/**
 * A statement with blanks: {@code given m = ? g}, {@code F_e = ? "electric push"}. It is read like
 * any other, with {@link #SIGN} as a name that no sheet can define wherever a blank stands; until
 * they are filled in it has no value.
 *
 * @param around the statement as it was read, which must not be evaluated
 * @param blanks its blanks, in the order in which they were read; at least one
 */
public record Open(Span span, Statement around, List<Blank> blanks) implements Statement {
  /** How a blank is written. */
  public static final String SIGN = "?";

  /** Keeps its own copy of the blanks. */
  public Open {
    blanks = List.copyOf(blanks);
  }

  /** A blank, and what belongs there. */
  public record Blank(Span span, Asked asked) {}

  /** What belongs in the place of a blank. */
  public enum Asked {
    /** The value of a given. */
    VALUE,
    /** What follows the ± of a given. */
    UNCERTAINTY,
    /** One of the readings of a given. */
    READING,
    /** A formula or a part of one. */
    EXPRESSION,
    /** Both sides of a relation. */
    RELATION,
    /** The names of relations. */
    RELATIONS,
    /** The name of a quantity. */
    NAME,
    /** One or more forces on a body. */
    FORCES,
    /** One or more sources of a field. */
    SOURCES
  }

  /** The statement without its blanks being told; any other statement as it is. */
  public static Statement within(Statement statement) {
    return statement instanceof Open open ? open.around() : statement;
  }

  /** Whether an expression is a blank and nothing else, with a unit perhaps. */
  public static boolean isBlank(Expr expr) {
    return expr instanceof Expr.InUnits units
        ? isBlank(units.operand())
        : expr instanceof Expr.Name name && name.text().equals(SIGN);
  }

  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.open(this);
  }
}
