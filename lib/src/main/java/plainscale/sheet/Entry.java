package plainscale.sheet;

import java.util.Optional;
import plainscale.notation.DataStatement;
import plainscale.notation.Expr;
import plainscale.notation.Statement;

/**
 * A name of the sheet: the statement that defines it, the cell it stands in, and that cell's
 * source.
 */
public record Entry(String name, String cellId, String source, Statement statement) {

  /** Whether the name stands for a quantity: a relation and the forces on a body have no value. */
  boolean isQuantity() {
    return !(statement instanceof Statement.Relation || statement instanceof Statement.Forces);
  }

  /** What the sheet says of it in words. */
  public String description() {
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
    return statement instanceof Statement.Definition definition ? definition.description() : "";
  }

  /** The formula of a definition. */
  public Optional<Expr> formula() {
    return statement instanceof Statement.Definition definition
        ? Optional.of(definition.formula())
        : Optional.empty();
  }
}
