package plainscale.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plainscale.algebra.Derivation;
import plainscale.algebra.Numerically;
import plainscale.algebra.Outcome;
import plainscale.notation.Expr;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Statement;
import plainscale.quantity.Contribution;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.units.Kinds;
import plainscale.units.UnitOfMeasure;

/** Derivations as results: the steps, and the number that comes of them. */
final class Solving {
  private static final int MOST_OTHERS = 6;

  private final Showing showing;

  Solving(Showing showing) {
    this.showing = showing;
  }

  Result solved(Statement.Solve solve) {
    Expr.Name name = new Expr.Name(solve.span(), solve.unknown());
    Quantity value = showing.wave().value(name, showing.source()); // free, though all be spent
    Derivation derivation = derivation(solve);
    Shown shown = shown(solve, derivation, value);
    boolean asked = solve.format().unit().isPresent();
    Shown prefixed = asked ? null : PrefixedForm.of(shown).orElse(null);
    Set<String> kelvins = showing.wave().derivations().takenAsKelvins(solve);
    Expr inserted =
        derivation.outcome() instanceof Outcome.Solved solved
            ? solved.answer().accept(new ValuesForNames(showing, kelvins))
            : null;
    List<String> notes =
        showing.wave().derivations().byNumbers(solve, showing.source()).stream()
            .flatMap(found -> notes(found, shown, solve.unknown()).stream())
            .toList();
    List<String> remarks = new ArrayList<>(notes);
    showing
        .wave()
        .derivations()
        .together(solve, showing.source())
        .map(Solving::note)
        .ifPresent(remarks::add);
    remarks.addAll(hiddenConstants(derivation, value));
    if (!kelvins.isEmpty()) {
      remarks.add(inKelvins(kelvins));
    }
    solve.small().ifPresent(angle -> remarks.add(error(solve, angle.text(), value)));
    Result.Evaluated number =
        new Result.Evaluated(inserted, remarks, shown, prefixed, measured(value));
    return derived(solve, derivation, number);
  }

  /** A unit that cannot be may come of a letter that was meant otherwise. */
  private Shown shown(Statement.Solve solve, Derivation derivation, Quantity value) {
    try {
      return showing.shown(value, solve.format(), solve.span());
    } catch (ProblemException e) {
      List<String> letters = letters(derivation);
      Problem root = e.problems().get(0);
      throw letters.isEmpty()
          ? e
          : showing.problem(root.kind(), root.sentence(), root.span(), letters);
    }
  }

  private List<String> letters(Derivation derivation) {
    return derivation.outcome() instanceof Outcome.Solved solved
        ? References.in(solved.answer()).stream()
            .flatMap(name -> showing.wave().letter(name).stream())
            .toList()
        : List.of();
  }

  /** A result of a kind that has no name may come of a letter that was meant otherwise. */
  private List<String> hiddenConstants(Derivation derivation, Quantity value) {
    return Kinds.isNamed(value.kind())
        ? List.of()
        : letters(derivation).stream().map(sentence -> sentence + ".").toList();
  }

  /** What makes it uncertain; nothing where only constants do, which no lesson improves. */
  private List<Contribution> measured(Quantity value) {
    List<Contribution> all = Contribution.of(value);
    return all.stream().allMatch(c -> showing.isConstant(c.source())) ? List.of() : all;
  }

  private static String inKelvins(Set<String> names) {
    return "A product needs absolute temperatures: the reading%s of %s in °C or °F %s put in as"
            .formatted(
                names.size() > 1 ? "s" : "",
                String.join(", ", new TreeSet<>(names)),
                names.size() > 1 ? "are" : "is")
        + " kelvins.";
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

  private List<String> notes(RootByNumbers.Found found, Shown shown, String unknown) {
    UnitOfMeasure unit = shown.unit();
    List<String> notes = new ArrayList<>();
    notes.add(
        "No closed form was found: the last equation is solved by numbers (Brent's method),"
            + " between %s and %s."
                .formatted(text(found.root().low(), unit), text(found.root().high(), unit)));
    notes.add(
        "At the root its sides differ by %s in SI units, after %d evaluations."
            .formatted(rounded(found.root().residual()), found.all().evaluations()));
    others(found).map(others -> otherRoots(others, unit, unknown)).ifPresent(notes::add);
    return notes;
  }

  /** The other roots, those near to the one that is taken first; none if it is the only one. */
  private static Optional<List<Numerically.Root>> others(RootByNumbers.Found found) {
    double taken = found.root().value();
    List<Numerically.Root> others =
        found.all().roots().stream()
            .filter(root -> root.value() != taken)
            .sorted(Comparator.comparing(root -> Math.abs(root.value() - taken)))
            .toList();
    return Optional.of(others).filter(roots -> !roots.isEmpty());
  }

  private static String otherRoots(
      List<Numerically.Root> others, UnitOfMeasure unit, String unknown) {
    String some =
        others.stream()
            .limit(MOST_OTHERS)
            .map(root -> text(root.value(), unit))
            .collect(Collectors.joining(", "));
    int more = others.size() - MOST_OTHERS;
    return "Other roots, not taken: %s%s. To take one of them, add “with %s > …” or “with %s < …”."
        .formatted(some, more > 0 ? " and " + more + " more" : "", unknown, unknown);
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
