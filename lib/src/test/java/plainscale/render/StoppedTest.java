package plainscale.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import plainscale.algebra.Budget;
import plainscale.notation.Problem;
import plainscale.sheet.Result;
import plainscale.sheet.Run;
import plainscale.sheet.Sheet;

/** A derivation that was stopped: its steps, what is left, and what to try. */
class StoppedTest {
  /** The first run that came as far as a step. */
  private static Run run(String telling) {
    for (int steps = 20; steps < 10_000; steps += 20) {
      Run run = run(telling, steps, false);
      if (run.results().size() > 1) {
        return run;
      }
    }
    throw new AssertionError("no run shows a step");
  }

  private static Run run(String telling, int steps, boolean stopped) {
    Sheet sheet = new Sheet();
    sheet.run(
        "bridge",
        """
        given R_1 = 10.0 Ω
        given R_2 = 22.0 Ω
        given R_3 = 33.0 Ω
        given R_4 = 47.0 Ω
        given R_5 = 15.0 Ω
        given U = 9.00 V
        relation a: I_1 = I_3 + I_5
        relation b: I_4 = I_2 + I_5
        relation c: R_1 I_1 + R_5 I_5 = R_2 I_2
        relation d: R_3 I_3 = R_4 I_4 + R_5 I_5
        relation e: U = R_1 I_1 + R_3 I_3
        """);
    Budget budget = new Budget(steps, Duration.ofMinutes(1), () -> stopped);
    return sheet.run("cell", "solve a, b, c, d, e for I_5" + telling, budget);
  }

  @Test
  void theStepsStandBeforeTheReason() {
    List<Result> results = run("").results();
    assertEquals(2, results.size());
    String text = Renderers.text(results);
    assertTrue(
        text.contains(
            "  Here the search was stopped. (1), (3), (5) and (6) are left, with I_1, I_2 and I_3"
                + " still unknown.\nI did not find “I_5”: this cell takes too long; it was"
                + " stopped.\n"),
        text);
    assertFalse(text.contains("\n  I_5 ="), text);
    Problem problem = ((Result.Mistaken) results.get(1)).problem();
    assertEquals(
        List.of(
            "in two steps: solve … for I_1, then … for I_5",
            "give I_1 a value",
            "leave out relations that are not needed"),
        problem.repairs());
  }

  @Test
  void inHtmlToo() {
    String html = Renderers.cellHtml(run("").results());
    assertTrue(html.contains("<p>Here the search was stopped. (1), (3), (5) and (6)"), html);
    assertTrue(html.contains("<summary>Substitute I_4 from (2) in (4).</summary>"), html);
  }

  @Test
  void whoWantsTheAnswerOnlyReadsNothingOfLines() {
    assertFalse(Renderers.text(run(" with answer").results()).contains("are left"));
  }

  @Test
  void whoStopsItIsToldSo() {
    List<Result> results = run("", 10_000, true).results();
    assertEquals(1, results.size());
    assertTrue(Renderers.text(results).startsWith("Stopped, as you asked."));
  }
}
