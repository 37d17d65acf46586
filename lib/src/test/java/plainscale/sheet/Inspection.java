package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import plainscale.notation.Problem;
import plainscale.render.Renderers;

/** What holds for the results of every cell, whatever was typed into it. */
final class Inspection {
  private static final int SHOWN = 200;

  /** A class, a package or an exception of the program in a sentence for students. */
  private static final Pattern INSIDES =
      Pattern.compile(
          "\\b(?:java|javax|plainscale|org|com|tech)\\.|\\w(?:Exception|Error)\\b|\\bnull\\b");

  private Inspection() {}

  /** Runs a cell, inspects what it shows and gives it back. */
  static Run run(Sheet sheet, String cellId, String source) {
    Run run =
        assertDoesNotThrow(() -> sheet.run(cellId, source), () -> "running " + excerpt(source));
    results(run.results(), source);
    run.updates().forEach(update -> results(update.results(), source));
    return run;
  }

  private static void results(List<Result> results, String source) {
    for (Result result : results) {
      if (result instanceof Result.Mistaken mistaken) {
        problem(mistaken.problem());
      }
    }
    assertDoesNotThrow(() -> rendered(results), () -> "rendering " + excerpt(source));
  }

  private static void rendered(List<Result> results) {
    String text = Renderers.text(results);
    assertFalse(INSIDES.matcher(text).find(), text);
    assertEquals(results.isEmpty(), Renderers.cellHtml(results).isEmpty());
    assertEquals(results.isEmpty(), Renderers.pageHtml(results).isEmpty());
    Renderers.latex(results).ifPresent(tex -> assertFalse(tex.isBlank()));
  }

  private static void problem(Problem problem) {
    String what = problem.sentence() + " " + problem.span() + " in " + excerpt(problem.source());
    int start = problem.span().start();
    int end = problem.span().end();
    assertTrue(0 <= start && start <= end && end <= problem.source().length(), what);
    assertTrue(problem.sentence().matches("(?s).*\\S.*[.?:]"), what);
    assertFalse(INSIDES.matcher(problem.sentence()).find(), what);
    problem.repairs().forEach(repair -> assertFalse(repair.isBlank(), what));
  }

  private static String excerpt(String source) {
    StringBuilder shown = new StringBuilder();
    source
        .chars()
        .limit(SHOWN)
        .forEach(
            c ->
                shown.append(
                    c < ' ' || c > 0xD7FF ? "\\u%04x".formatted(c) : Character.toString(c)));
    return shown + (source.length() > SHOWN ? "… (" + source.length() + " characters)" : "");
  }
}
