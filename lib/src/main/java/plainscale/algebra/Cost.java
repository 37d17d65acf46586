package plainscale.algebra;

import plainscale.notation.Span;

/** Who pays for the steps of a computation, and at which place of a source that is told. */
public record Cost(Budget budget, String source, Span span) {

  /** Pays for one step. */
  void pay() {
    budget.spend(source, span);
  }
}
