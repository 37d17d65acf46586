package plainscale.render;

import java.util.ArrayList;
import java.util.List;
import plainscale.notation.Problem;

/** A problem as lines of plain text: the sentence, the line with carets, the repairs. */
public final class ProblemText {
  private ProblemText() {}

  /** The lines. */
  public static List<String> lines(Problem problem) {
    Excerpt excerpt = Excerpt.of(problem);
    String number = "line " + excerpt.lineNumber() + ": ";
    List<String> lines = new ArrayList<>();
    lines.add(problem.sentence());
    lines.add("  " + number + excerpt.line());
    lines.add("  " + " ".repeat(number.length()) + excerpt.carets());
    if (!problem.repairs().isEmpty()) {
      lines.add("Try:  " + String.join("   or   ", problem.repairs()));
    }
    return lines;
  }
}
