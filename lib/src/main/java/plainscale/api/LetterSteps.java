package plainscale.api;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import plainscale.algebra.Budget;
import plainscale.algebra.Derivation;
import plainscale.algebra.Equation;
import plainscale.algebra.Known;
import plainscale.algebra.Relation;
import plainscale.algebra.Solver;
import plainscale.notation.Greek;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.sheet.Result;
import plainscale.sheet.Sheet;

/**
 * A derivation in letters, while what it hangs on has no values yet. Of one relation all other
 * letters are taken as known; of several it must be said which.
 */
record LetterSteps(Sheet sheet, List<String> relations, String unknown, Set<String> letters)
    implements Known {

  /** The derivation, if values are missing and it is clear which letters count as known. */
  static Optional<Result> of(
      Sheet sheet,
      List<String> relations,
      String unknown,
      Set<String> said,
      Statement.Telling telling) {
    Set<String> letters = new LinkedHashSet<>(said);
    if (relations.size() == 1 && said.isEmpty()) {
      letters.addAll(sheet.letters(Greek.normal(relations.get(0))));
    }
    letters.removeIf(name -> name.equals(unknown) || hasValue(sheet, name));
    LetterSteps steps = new LetterSteps(sheet, relations, unknown, Set.copyOf(letters));
    return letters.isEmpty()
        ? Optional.empty()
        : Optional.of(new Result.Derived(steps.derivation(), "", telling, null, sheet.writing()));
  }

  private Derivation derivation() {
    List<Relation> stated = new ArrayList<>();
    for (String name : relations) {
      relation(sheet, name)
          .ifPresent(
              r ->
                  stated.add(
                      new Relation(name, new Equation(r.left(), r.right()), r.description())));
    }
    return Solver.solve(stated, unknown, this, Budget.usual());
  }

  private static Optional<Statement.Relation> relation(Sheet sheet, String name) {
    return sheet
        .entry(Greek.normal(name))
        .map(entry -> entry.statement())
        .filter(Statement.Relation.class::isInstance)
        .map(Statement.Relation.class::cast);
  }

  private static boolean hasValue(Sheet sheet, String name) {
    return sheet.value(name).isPresent() || sheet.constants().has(name);
  }

  @Override
  public boolean isKnown(String name) {
    return !name.equals(unknown) && (letters.contains(name) || hasValue(sheet, name));
  }

  @Override
  public OptionalDouble value(String name) {
    Optional<Quantity> own = sheet.value(name);
    Optional<Quantity> value =
        own.isPresent() ? own : sheet.constants().find(name).map(constant -> constant.quantity());
    return value.isPresent() && isKnown(name)
        ? OptionalDouble.of(value.get().value().doubleValue())
        : OptionalDouble.empty();
  }
}
