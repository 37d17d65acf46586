package plainscale.document.check;

import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import plainscale.notation.Greek;

/** Live values that stand in prose: only a sentence of a cell computes what is in braces. */
record BracedNames() implements Rule {
  private static final Pattern BRACED =
      Pattern.compile("\\{\\h*(?<name>[\\p{L}_][\\p{L}\\p{N}_]*)[^{}]*\\}");

  @Override
  public String name() {
    return "braces";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    return lesson
        .said()
        .flatMap(
            said ->
                BRACED
                    .matcher(said.passage().text())
                    .results()
                    .filter(match -> isName(lesson, match))
                    .map(match -> finding(said, match)));
  }

  private static boolean isName(CheckedLesson lesson, MatchResult match) {
    return lesson.sheet().entry(Greek.normal(match.group(1))).isPresent();
  }

  private Finding finding(CheckedLesson.Said said, MatchResult match) {
    return CheckedLesson.at(said.cell(), said.passage().lineAt(match.start()))
        .warning(
            this,
            "%s stands in a text, which shows it as it is written; only cells compute."
                .formatted(match.group()),
            "a line in a cell: say \"… %s …\"".formatted(match.group()));
  }
}
