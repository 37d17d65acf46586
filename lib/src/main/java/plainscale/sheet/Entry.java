package plainscale.sheet;

import java.util.Optional;
import plainscale.notation.DataStatement;
import plainscale.notation.Expr;
import plainscale.notation.FieldStatement;
import plainscale.notation.Figure;
import plainscale.notation.Open;
import plainscale.notation.Origin;
import plainscale.notation.Statement;

/**
 * A name of the sheet: the statement that defines it, the cell it stands in, that cell's source,
 * and for a figure its number.
 */
public record Entry(String name, String cellId, String source, Statement statement, int figure) {

  /** A name that is no figure. */
  public Entry(String name, String cellId, String source, Statement statement) {
    this(name, cellId, source, statement, 0);
  }

  /** The same as the figure of that number. */
  Entry with(int number) {
    return new Entry(name, cellId, source, statement, number);
  }

  /**
   * Whether the name stands for a quantity: relations, fields and the forces on a body have no
   * value.
   */
  boolean isQuantity() {
    Statement plain = Open.within(statement);
    return !(plain instanceof Statement.Relation
        || plain instanceof Statement.Forces
        || plain instanceof Figure
        || plain instanceof FieldStatement);
  }

  /** What the sheet says of it in words. */
  public String description() {
    return description(Open.within(statement));
  }

  private String description(Statement statement) {
    if (statement instanceof Statement.Given given) {
      return given.description();
    }
    if (statement instanceof DataStatement data) {
      return data.named().stream()
          .filter(named -> named.name().equals(name))
          .map(DataStatement.Named::description)
          .findFirst()
          .orElse("");
    }
    if (statement instanceof Statement.Relation relation) {
      return relation.description();
    }
    if (statement instanceof Statement.Solve solve) {
      return solve.description();
    }
    if (statement instanceof FieldStatement.Declared field) {
      return field.description();
    }
    return statement instanceof Statement.Definition definition ? definition.description() : "";
  }

  /** The law behind a relation. */
  public Optional<Origin> origin() {
    return statement instanceof Statement.Relation relation ? relation.origin() : Optional.empty();
  }

  /** The formula of a definition. */
  public Optional<Expr> formula() {
    return statement instanceof Statement.Definition definition
        ? Optional.of(definition.formula())
        : Optional.empty();
  }
}
