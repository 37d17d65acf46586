package plainscale.document.edition;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import plainscale.algebra.Derivation;
import plainscale.algebra.Equation;
import plainscale.document.Blank;
import plainscale.document.Edition;
import plainscale.document.WorkedLesson;
import plainscale.sheet.Result;

/**
 * What of a lesson students are to find, so that no other cell tells it: the names whose values are
 * blank, and the equations that are.
 */
final class Key {
  private final Fading fading;
  private final Set<String> names = new HashSet<>();
  private final Set<String> equations = new HashSet<>();

  private Key(Fading fading) {
    this.fading = fading;
  }

  /** The key of an edition. */
  static Key of(WorkedLesson worked, Edition edition, Fading fading) {
    Key key = new Key(fading);
    for (WorkedLesson.WorkedCell cell : worked.cells()) {
      Blank blank = cell.cell().head().blank(edition);
      if (blank != Blank.NOTHING) {
        cell.results().forEach(result -> key.add(result, blank));
      }
    }
    for (WorkedLesson.WorkedCell cell : worked.cells()) {
      Blank blank = cell.cell().head().blank(edition);
      cell.results().forEach(result -> key.addSteps(result, blank));
    }
    return key;
  }

  private void add(Result result, Blank blank) {
    if (result instanceof Result.Valued valued) {
      boolean known = isKnown(valued, blank);
      valued.label().name().filter(name -> !known).ifPresent(names::add);
    } else if (result instanceof Result.Written written) {
      written.label().name().ifPresent(names::add);
    } else if (result instanceof Result.Derived derived) {
      names.add(derived.derivation().unknown());
    } else if (result instanceof Result.Stated stated && isAtLeast(blank, Blank.ALL)) {
      equations.add(stated.equation().text());
    }
  }

  /** What stands in the cell as a number is no computed value. */
  static boolean isKnown(Result.Valued valued, Blank blank) {
    boolean number = valued.role() == Result.Role.DEFINED && valued.label().formula().isEmpty();
    return valued.role() == Result.Role.GIVEN
        ? !isAtLeast(blank, Blank.ALL)
        : number && !isAtLeast(blank, Blank.FORMULAS);
  }

  static boolean isAtLeast(Blank blank, Blank level) {
    return blank.compareTo(level) >= 0;
  }

  /** Once it is known which relations are blank. */
  private void addSteps(Result result, Blank blank) {
    if (blank != Blank.NOTHING && result instanceof Result.Derived derived) {
      Derivation derivation = derived.derivation();
      int shown = shownSteps(derivation, blank);
      derivation.steps().subList(shown, derivation.steps().size()).stream()
          .map(step -> step.after().text())
          .forEach(equations::add);
    }
  }

  /** How many steps of a derivation are shown: none if one of its relations is blank. */
  int shownSteps(Derivation derivation, Blank blank) {
    boolean open =
        !isAtLeast(blank, Blank.FORMULAS)
            && derivation.relations().stream().noneMatch(r -> isHidden(r.equation()));
    return open ? fading.shown(derivation.steps().size()) : 0;
  }

  /** Whether the answer of a derivation is shown. */
  boolean showsAnswer(Derivation derivation, Blank blank) {
    List<?> steps = derivation.steps();
    return !fading.hidesAnswer()
        && !isAtLeast(blank, Blank.FORMULAS)
        && shownSteps(derivation, blank) == steps.size();
  }

  boolean isHidden(Equation equation) {
    return equations.contains(equation.text());
  }

  /** Whether the value of that name is to be found. */
  boolean isHidden(String name) {
    return names.contains(name);
  }
}
