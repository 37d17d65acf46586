package plainscale.document.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plainscale.document.WorkedLesson.WorkedCell;
import plainscale.render.Renderers;
import plainscale.sheet.GuardResult;
import plainscale.sheet.Result;

/** Values that the lesson did not expect, and values that cannot be or are hard to believe. */
record ImplausibleValues() implements Rule {
  @Override
  public String name() {
    return "implausible";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    return lesson.worked().cells().stream()
        .flatMap(
            worked ->
                worked.results().stream()
                    .flatMap(result -> check(lesson, worked, result).stream()));
  }

  private Optional<Finding> check(CheckedLesson lesson, WorkedCell worked, Result result) {
    return label(result)
        .map(label -> lesson.at(worked.cell(), label.name().orElse("")))
        .map(place -> place.warning(this, sentence(result), repair(result)));
  }

  private static Optional<Result.Label> label(Result result) {
    if (result instanceof GuardResult.Impossible impossible) {
      return Optional.of(impossible.label());
    }
    return result instanceof GuardResult.Expected expected
            && expected.verdict() == GuardResult.Verdict.OUTSIDE
        ? Optional.of(expected.label())
        : Optional.empty();
  }

  /** What the cell says of it, and below that what may be meant. */
  private static List<String> told(Result result) {
    return Renderers.text(List.of(result)).lines().map(String::strip).toList();
  }

  private static String sentence(Result result) {
    return told(result).get(0);
  }

  private static String repair(Result result) {
    return told(result).stream().skip(1).collect(Collectors.joining(" "));
  }
}
