package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import plainscale.notation.Problem;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;

/** What the tests of this package ask of runs. */
final class Cells {
  private Cells() {}

  /** Runs a cell that has no mistake. */
  static Run run(Sheet sheet, String id, String... lines) {
    Run run = sheet.run(id, String.join("\n", lines));
    assertEquals(List.of(), run.mistakes());
    return run;
  }

  /** The only problem of a run. */
  static Problem onlyProblem(Run run) {
    List<Problem> problems = run.mistakes().stream().map(Result.Mistaken::problem).toList();
    assertEquals(1, problems.size(), problems::toString);
    return problems.get(0);
  }

  /** The text at the place of a problem. */
  static String marked(Problem problem) {
    return problem.source().substring(problem.span().start(), problem.span().end());
  }

  /** The remarks among the results. */
  static List<String> remarks(List<Result> results) {
    return results.stream()
        .filter(Result.Noted.class::isInstance)
        .map(result -> ((Result.Noted) result).remark())
        .toList();
  }

  /** The cells that a run brings up to date. */
  static List<String> updated(Run run) {
    return run.updates().stream().map(Run.Update::cellId).toList();
  }

  /** The number that the last result of a list shows, with its figures. */
  static String number(List<Result> results) {
    return shown(results).value().toPlainString();
  }

  /** What the last result of a list shows. */
  static Shown shown(List<Result> results) {
    return ((Result.Valued) results.get(results.size() - 1)).shown();
  }

  /** The value of a name. */
  static Quantity value(Sheet sheet, String name) {
    return sheet.value(name).orElseThrow();
  }
}
