package plainscale.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plainscale.algebra.Derivation;
import plainscale.algebra.Outcome;
import plainscale.notation.Expr;
import plainscale.notation.ProblemException;
import plainscale.notation.Statement;
import plainscale.quantity.Contribution;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.units.UnitOfMeasure;

/** Derivations as results: the steps, and the number that comes of them. */
final class Solving {
  private final Showing showing;

  Solving(Showing showing) {
    this.showing = showing;
  }

  Result solved(Statement.Solve solve) {
    Expr.Name name = new Expr.Name(solve.span(), solve.unknown());
    Quantity value = showing.wave().value(name, showing.source()); // free, though all be spent
    Derivation derivation = derivation(solve);
    Shown shown = showing.shown(value, solve.format(), solve.span());
    boolean asked = solve.format().unit().isPresent();
    Shown prefixed = asked ? null : PrefixedForm.of(shown).orElse(null);
    Expr inserted =
        derivation.outcome() instanceof Outcome.Solved solved
            ? solved.answer().accept(new ValuesForNames(showing))
            : null;
    List<String> notes =
        showing.wave().derivations().byNumbers(solve, showing.source()).stream()
            .flatMap(found -> notes(found, shown).stream())
            .toList();
    List<String> remarks = new ArrayList<>(notes);
    showing
        .wave()
        .derivations()
        .together(solve, showing.source())
        .map(Solving::note)
        .ifPresent(remarks::add);
    solve.small().ifPresent(angle -> remarks.add(error(solve, angle.text(), value)));
    Result.Evaluated number =
        new Result.Evaluated(inserted, remarks, shown, prefixed, Contribution.of(value));
    return derived(solve, derivation, number);
  }

  private static String note(SystemByNumbers.Found found) {
    String roots =
        found.quantities().entrySet().stream()
            .sorted(Map.Entry.comparingByKey())
            .map(e -> e.getKey() + " = " + text(e.getValue()))
            .collect(Collectors.joining(", "));
    return "No closed form was found: what is left is solved together by numbers (Levenberg and"
        + " Marquardt's method): %s; the sides differ by %s of their size at most."
            .formatted(roots, rounded(found.residual()));
  }

  private static String text(Quantity quantity) {
    return text(quantity.value().doubleValue(), quantity.displayUnit());
  }

  /** By how much the approximation misses, for these givens. */
  private String error(Statement.Solve solve, String angle, Quantity approximate) {
    Quantity exact = showing.wave().derivations().value(solve.exactly(), showing.source());
    double error = approximate.value().doubleValue() / exact.value().doubleValue() - 1;
    return "Taking %s to be small makes %s %s %% too %s here."
        .formatted(
            angle, solve.unknown(), rounded(Math.abs(100 * error)), error < 0 ? "small" : "large");
  }

  private List<String> notes(RootByNumbers.Found found, Shown shown) {
    UnitOfMeasure unit = shown.unit();
    List<String> notes = new ArrayList<>();
    notes.add(
        "No closed form was found: the last equation is solved by numbers (Brent's method),"
            + " between %s and %s."
                .formatted(text(found.root().low(), unit), text(found.root().high(), unit)));
    notes.add(
        "At the root its sides differ by %s in SI units, after %d evaluations."
            .formatted(rounded(found.root().residual()), found.all().evaluations()));
    if (found.all().roots().size() > 1) {
      String others =
          found.all().roots().stream()
              .filter(root -> root.value() != found.root().value())
              .map(root -> text(root.value(), unit))
              .collect(Collectors.joining(", "));
      String which = found.root().value() > 0 ? "the smallest positive one" : "the least";
      notes.add("Other roots, not taken: " + others + ", because " + which + " is taken.");
    }
    return notes;
  }

  private static String text(double coherent, UnitOfMeasure unit) {
    String number = rounded(unit.fromCoherent(BigDecimal.valueOf(coherent)).doubleValue());
    String gap = unit.text().isEmpty() || unit.text().equals("°") ? "" : " ";
    return number + gap + unit.text();
  }

  private static String rounded(double value) {
    return BigDecimal.valueOf(value).round(new MathContext(3)).toString().replace("E", "e");
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
