package plainscale.notation;

/** What a what-if has otherwise than its sheet. */
public sealed interface Change {

  /** The name that is changed, where it stands. */
  Statement.Option name();

  /** {@code m = 2*m}: a quantity has another value. */
  record Value(Statement.Option name, Expr value) implements Change {}

  /** {@code level: k_e q_1 q_2/d^2 = T sin(θ)}: a relation says something else. */
  record Relation(Statement.Option name, Expr left, Expr right) implements Change {}
}
