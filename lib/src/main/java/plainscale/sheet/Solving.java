package plainscale.sheet;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plainscale.algebra.Derivation;
import plainscale.algebra.Outcome;
import plainscale.notation.Expr;
import plainscale.notation.ProblemException;
import plainscale.notation.Statement;
import plainscale.quantity.Contribution;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;

/** Derivations as results: the steps, and the number that comes of them. */
final class Solving {
  private final Showing showing;

  Solving(Showing showing) {
    this.showing = showing;
  }

  Result solved(Statement.Solve solve) {
    Quantity value = showing.value(new Expr.Name(solve.span(), solve.unknown()));
    Derivation derivation = derivation(solve);
    Outcome.Solved outcome = (Outcome.Solved) derivation.outcome();
    Shown shown = showing.shown(value, solve.format(), solve.span());
    boolean asked = solve.format().unit().isPresent();
    Shown prefixed = asked ? null : PrefixedForm.of(shown).orElse(null);
    Expr inserted = outcome.answer().accept(new ValuesForNames(showing));
    Result.Evaluated number =
        new Result.Evaluated(inserted, shown, prefixed, Contribution.of(value));
    return derived(solve, derivation, number);
  }

  /** The steps as far as they came, for an unknown that has no value. */
  Optional<Result> unsolved(Statement.Solve solve) {
    try {
      Derivation derivation = derivation(solve);
      return derivation.steps().isEmpty()
          ? Optional.empty()
          : Optional.of(derived(solve, derivation, null));
    } catch (ProblemException noRelations) {
      return Optional.empty();
    }
  }

  private Derivation derivation(Statement.Solve solve) {
    return showing.wave().derivations().of(solve, showing.source());
  }

  private Result.Derived derived(
      Statement.Solve solve, Derivation derivation, Result.@Nullable Evaluated number) {
    return new Result.Derived(
        derivation, solve.description(), solve.telling(), number, showing.writing());
  }
}
