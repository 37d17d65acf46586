package plainscale.document.check;

import java.util.stream.Stream;
import plainscale.notation.Statement;
import plainscale.notation.Statement.Given;

/** Givens that nothing uses. */
record UnusedGivens() implements Rule {
  @Override
  public String name() {
    return "unused-given";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    Mentions mentions = Mentions.in(lesson);
    return lesson
        .lines(Given.class)
        .filter(line -> !mentions.any(given(line), UnusedGivens::uses))
        .map(
            line ->
                CheckedLesson.at(line)
                    .warning(
                        this,
                        "Nothing uses the given %s.".formatted(given(line)),
                        "use it, or take its line out"));
  }

  private static String given(CheckedLesson.Line line) {
    return ((Given) line.statement()).name();
  }

  /** That readings belong together is said of them and computes nothing. */
  private static boolean uses(CheckedLesson.Line line) {
    return !(line.statement() instanceof Statement.Together);
  }
}
