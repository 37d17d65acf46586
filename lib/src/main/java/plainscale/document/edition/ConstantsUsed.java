package plainscale.document.edition;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import plainscale.algebra.Equation;
import plainscale.document.Blank;
import plainscale.document.Edition;
import plainscale.document.WorkedLesson;
import plainscale.laws.Constants;
import plainscale.notation.Expr;
import plainscale.notation.Rewriting;
import plainscale.sheet.LawResult;
import plainscale.sheet.Result;
import plainscale.sheet.Sheet;

/**
 * The constants of nature in the formulas that a student's page shows: whoever works on paper needs
 * their values, and nobody measures them.
 */
public final class ConstantsUsed {
  private static final String TEXTBOOK = "textbook";
  private static final Set<String> KNOWN_BY_HEART = Set.of("π");

  private final Set<String> names = new LinkedHashSet<>();
  private final Set<String> own = new LinkedHashSet<>();

  private ConstantsUsed() {}

  /** Their values, by the set that the lesson names, to four figures or as the textbooks round. */
  public static List<Result> of(WorkedLesson worked) {
    ConstantsUsed used = new ConstantsUsed();
    worked.cells().stream()
        .filter(cell -> cell.cell().head().blank(Edition.STUDENT).compareTo(Blank.VALUES) <= 0)
        .flatMap(cell -> cell.results().stream())
        .forEach(used::add);
    String set = worked.lesson().head().constants().orElse("");
    String ending = set.equals(TEXTBOOK) ? "" : " to 4 figures";
    StringBuilder cell = new StringBuilder(set.equals(TEXTBOOK) ? "constants textbook\n" : "");
    used.constants().forEach(name -> cell.append("show ").append(name).append(ending).append('\n'));
    return new Sheet()
        .run("constants", cell.toString()).results().stream()
            .filter(Result.Valued.class::isInstance)
            .toList();
  }

  private Stream<String> constants() {
    return names.stream()
        .filter(name -> !own.contains(name) && !KNOWN_BY_HEART.contains(name))
        .filter(Constants.CODATA::has);
  }

  private void add(Result result) {
    if (result instanceof Result.Valued valued) {
      valued.label().formula().ifPresent(this::add);
      Optional<String> name = valued.label().name();
      boolean shown = valued.role() == Result.Role.SHOWN || valued.role() == Result.Role.VALUE;
      name.ifPresent(shown ? names::add : own::add);
    } else if (result instanceof Result.Stated stated) {
      add(stated.equation());
    } else if (result instanceof LawResult.Used law) {
      add(law.equation());
    } else if (result instanceof Result.Derived derived) {
      own.add(derived.derivation().unknown());
    }
  }

  private void add(Equation equation) {
    add(equation.left());
    add(equation.right());
  }

  private void add(Expr expr) {
    expr.accept(new Collector());
  }

  private final class Collector extends Rewriting {
    @Override
    public Expr name(Expr.Name name) {
      names.add(name.text());
      return name;
    }
  }
}
