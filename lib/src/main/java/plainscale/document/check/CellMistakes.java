package plainscale.document.check;

import java.util.stream.Stream;
import plainscale.document.LessonCell;
import plainscale.document.WorkedLesson.WorkedCell;
import plainscale.notation.Problem;
import plainscale.sheet.Result;

/** Cells that show a mistake. */
record CellMistakes() implements Rule {
  @Override
  public String name() {
    return "mistake";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    return lesson.worked().cells().stream().flatMap(this::mistakes);
  }

  private Stream<Finding> mistakes(WorkedCell worked) {
    return worked.results().stream()
        .filter(Result::isMistake)
        .map(
            result ->
                result instanceof Result.Failed failed
                    ? CheckedLesson.at(worked.cell()).error(this, failed.lines().get(0), "")
                    : mistake(worked.cell(), ((Result.Mistaken) result).problem()));
  }

  private Finding mistake(LessonCell cell, Problem problem) {
    return CheckedLesson.at(cell, problem.line())
        .error(this, problem.sentence(), String.join(" or ", problem.repairs()));
  }
}
