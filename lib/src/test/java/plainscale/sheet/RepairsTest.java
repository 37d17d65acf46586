package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.sheet.Cells.onlyProblem;
import static plainscale.sheet.Cells.run;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.notation.Problem;
import plainscale.render.Renderers;

/** Lines that are nearly right, and the repair that comes first. */
class RepairsTest {
  private final Sheet sheet = new Sheet();

  @BeforeEach
  void aSheet() {
    run(
        sheet,
        "sheet",
        "given r = 2.0 m",
        "given k = 50 N/m",
        "given M = 2.0 kg",
        "given T_0 = 20 °C",
        "relation en: 1/2 k r^2 = 1/2 M v^2",
        "relation en2: E_k = 1/2 k r^2",
        "solve en for v with answer",
        "solve en2 for E_k with answer",
        "d = T_0 - 5 °C");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "given v_1 = 0.8 c | v_1 = 0.8*c",
        "forces on \"ball\": weight 5 [N] down \"Earth\" | by \"Earth\"",
        "forces on \"ball\": pull 5 [N] left down | along 225°",
        "forces on \"ball\": pull 5 [N] up right | along 45°",
        "forces on \"ball\": pull 5 [N] down right | along 315°",
        "forces on \"ball\": pull 5 [N] north | up",
        "forces on \"ball\": pull 5 [N] northwest | up",
        "forces on \"ball\": spring force 5 [N] up | \"spring force\"",
        "forces on \"ball\": weight 5 down | weight 5 [N]",
        "compare \"a\" with \"b\" r = 2*r | \"b\": r = …",
        "limit r to inf show v | infinity",
        "limit r to -infinity show v | infinity",
        "limit r to -∞ show v | infinity",
        "limit r to 0 show v | to 0 m",
        "relation f: F = M g_n = 5 [N] | relation f: F = M g_n",
        "relation f: M g_n | relation f: … = M g_n",
        "say \"{equation two of v}\" | {equation 2 of v}",
        "say \"{equation (2) of v}\" | {equation 2 of v}",
        "say \"{equations 2 of v}\" | {equation 2 of v}",
        "solve en v_1 | for v_1",
        "solve en en2 for v_1 | , en2",
        "solve en and en2 for v_1 | ,",
        "what if v = 2 [m/s] show r, | –",
      })
  void theFirstRepairIsTheNearest(String line, String repair) {
    Problem problem = onlyProblem(sheet.run("line", line));
    String first = problem.repairs().isEmpty() ? "–" : problem.repairs().get(0);
    assertEquals(repair, first, problem::sentence);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "what if en: 1/2 k r^2 = M v show v | “v” is a speed; with the changed relation it would",
        "vary v from 1 to 5 by 1 show r | “v” is a speed; it cannot become a plain number.",
        "vary r from 1 m to 5 m by 1 N show v | “r” is a length; it cannot become a force.",
        "what if r = sqrt(3 [m]) show v | This would have the root of a unit",
        "what if en: k r = M v^4 show v | This would have the root of a unit",
        "vary w from 1 m to 5 m by 1 m show v | I do not know “w” in this sheet.",
      })
  void aChangeOfKindIsRefused(String line, String sentence) {
    Problem problem = onlyProblem(sheet.run("line", line));
    assertTrue(problem.sentence().startsWith(sentence), problem::sentence);
  }

  @Test
  void aStepOfATemperatureIsADifference() {
    String text = text("vary T_0 from 10 °C to 30 °C by 10 °C show d");
    assertTrue(text.contains("30 °C   25.0 K"), text);
  }

  @Test
  void aChangedUnknownAsksWhichGivenFollows() {
    Sheet other = new Sheet();
    run(other, "s", "given a = 3 m", "given b = 2 s", "relation f: v = a/b", "solve f for v");
    Problem problem = onlyProblem(other.run("w", "what if v = 5 [m/s]"));
    assertEquals("“v” follows from a, b; say which of them changes with it.", problem.sentence());
    assertEquals("[show a, show b]", problem.repairs().toString());
  }

  /** v = a/(2 s), so that 5 m/s need 10 m; there is nothing to ask. */
  @Test
  void theOnlyGivenFollowsByItself() {
    Sheet other = new Sheet();
    run(other, "s", "given a = 3 m", "relation f: v = a/(2 [s])", "solve f for v");
    String text = Renderers.text(run(other, "w", "what if v = 5 [m/s]").results());
    assertTrue(text.contains("a   3.00 m"), text);
    assertTrue(text.contains("10.0 m"), text);
  }

  @Test
  void aNegativePowerIsAFraction() {
    run(sheet, "q", "w = k/r^2");
    assertTrue(text("depends w on r").contains("w goes as 1/r^2"));
  }

  @Test
  void theRowsOfALimitHaveNoUncertainty() {
    run(sheet, "u", "given θ = 30 ± 1°", "T = M g_n/cos(θ)");
    String text = text("limit θ to 90° show T");
    assertTrue(!text.contains("±"), text);
  }

  @Test
  void oneBrokenBodyIsLeftOutOfThePairs() {
    Run run =
        sheet.run(
            "p",
            """
            forces on "a": push 5 [N] right by "b"
            forces on "b": push 5 [N] right by "a"
            forces on "c": weight M down
            pairs""");
    String text = Renderers.text(run.results());
    onlyProblem(run);
    assertTrue(text.contains("but here both point right"), text);
    assertTrue(text.contains("The forces on “c” are left out: “weight” needs a force"), text);
  }

  @Test
  void whatIsLeftOnASlopePointsAlongIt() {
    String text =
        text(
            "forces on \"block\" slope 30°: weight M g_n down,"
                + " normal M g_n cos(30°) away, rope 1 [N] uphill");
    assertTrue(text.contains("what is left is 9 N, downhill."), text);
  }

  @Test
  void aForceThatStandsTwiceIsTold() {
    String text = text("forces on \"a\": push 5 [N] right, push 5 [N] right, pull 5 [N] right");
    assertTrue(text.contains("“push” stands here twice, and both count."), text);
    assertTrue(!text.contains("“pull” stands here twice"), text);
  }

  private String text(String line) {
    return Renderers.text(run(sheet, "line", line).results());
  }
}
