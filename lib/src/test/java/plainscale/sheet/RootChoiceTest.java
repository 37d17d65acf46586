package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.sheet.Cells.marked;
import static plainscale.sheet.Cells.onlyProblem;
import static plainscale.sheet.Cells.run;
import static plainscale.sheet.Cells.updated;
import static plainscale.sheet.Cells.value;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.algebra.Rule;
import plainscale.algebra.Step;
import plainscale.notation.Problem;
import plainscale.render.Renderers;

/** Which of several answers is meant. */
class RootChoiceTest {
  private final Sheet sheet = new Sheet();

  /** 15 = 20 t − 4.903325 t²: t = (20 ± √(400 − 294.1995))/9.80665 = 0.99056 s and 3.08830 s. */
  @BeforeEach
  void aBallPassesAHeightTwice() {
    run(
        sheet,
        "ball",
        "given h_b = 15.0 m",
        "given v_b = 20.0 m/s",
        "relation flight: h_b = v_b t - 1/2 g_n t^2");
  }

  @Test
  void bothAreToldWithTheirValuesAndAWayToChoose() {
    Problem problem = onlyProblem(sheet.run("s", "solve flight for t"));
    assertTrue(problem.sentence().contains("= 3.09 s or t = "), problem::sentence);
    assertTrue(problem.sentence().contains("= 0.99 s. Say which"), problem::sentence);
    assertEquals(List.of("with t < 2 s", "with t > 2 s"), problem.repairs());
  }

  @ParameterizedTest
  @CsvSource({
    "t < 2 s,       0.99056",
    "t > 2 s,       3.08830",
    "t > v_b/g_n,   3.08830",
    "t < 1500 ms,   0.99056",
    "t > 1 s with t < 1 min, 3.08830"
  })
  void aComparisonChooses(String condition, double expected) {
    run(sheet, "s", "solve flight for t with " + condition);
    assertEquals(expected, value(sheet, "t").value().doubleValue(), 1e-5);
  }

  @Test
  void theLastStepIsTheAnswer() {
    List<Result> results = run(sheet, "s", "solve flight for t with t > 2 s").results();
    Result.Derived derived = (Result.Derived) results.get(0);
    Step last = derived.derivation().steps().get(derived.derivation().steps().size() - 1);
    assertEquals(Rule.CHOOSE_ROOT, last.rule());
    assertEquals("Of the roots the one with t > 2 s is taken.", last.reason());
    assertEquals("t = (sqrt(v_b^2 - 2*h_b g_n) + v_b)/g_n", last.after().text());
    String text = Renderers.text(results);
    assertTrue(text.contains(", because t > 2 s is asked for."), text);
  }

  /** Thrown from 15 m above: a negative time is the root that is usually not taken. */
  @Test
  void aRootThatIsUsuallyNotTakenCanBeAskedFor() {
    run(sheet, "below", "given h_b = -15.0 m", "solve flight for t with t < 0");
    assertEquals(-0.6473, value(sheet, "t").value().doubleValue(), 1e-4);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "t < 10 s | More than one answer fits t < 10 s | t < 10 s",
        "t > 1 h  | No answer fits t > 1 h | t > 1 h",
        "t < 1 m  | “t” is a time; it cannot be compared with a length. | 1 m",
        "x < 1 m  | What chooses among the answers compares the unknown with a value. | x",
      })
  void aComparisonThatDoesNotChooseIsTold(String condition, String sentence, String place) {
    Problem problem = onlyProblem(sheet.run("s", "solve flight for t with " + condition));
    assertTrue(problem.sentence().startsWith(sentence), problem::sentence);
    assertEquals(place, marked(problem));
  }

  @Test
  void aTableKeepsToTheChosenRoot() {
    run(sheet, "s", "solve flight for t with t > v_b/g_n");
    List<Result> results =
        run(sheet, "v", "vary v_b from 18 m/s to 22 m/s by 2 m/s show t").results();
    // (18 + √(324 − 294.2))/9.80665 = 2.392; 3.088; (22 + √(484 − 294.2))/9.80665 = 3.648
    List<String> shown =
        ((Result.Varied) results.get(0))
            .rows().stream().map(r -> r.get(1).orElseThrow().value().toPlainString()).toList();
    assertEquals(List.of("2.39", "3.09", "3.65"), shown);
  }

  /** A limit of 4 s fits neither root, so the cell that compares with it must be told again. */
  @Test
  void whatIsComparedWithIsFollowed() {
    run(sheet, "limit", "given t_m = 2 s");
    run(sheet, "s", "solve flight for t with t > t_m");
    assertTrue(updated(sheet.run("limit", "given t_m = 4 s")).contains("s"));
  }

  /** x cos(x) = 1/4: the roots next to zero are 0.2586, 1.3899 and 4.7649 (by bisection). */
  @Test
  void rootsByNumbersAreChosenToo() {
    run(
        sheet,
        "n",
        "relation num: x cos(x) = 1/4",
        "solve num for x with x > 1 rad with x < 3 rad");
    assertEquals(1.3899, value(sheet, "x").value().doubleValue(), 1e-4);
    Problem problem =
        onlyProblem(sheet.run("n2", "solve num for x with x > 1 rad with x < 1.1 rad"));
    assertTrue(problem.sentence().startsWith("No root fits"), problem::sentence);
  }

  @Test
  void theSecondLineForANameIsToldOnly() {
    Run run = sheet.run("s", "solve flight for t with t < 2 s\nsolve flight for t with t > 2 s");
    assertEquals("“t” is defined twice in this cell; line 1 counts.", onlyProblem(run).sentence());
    assertEquals(1, run.results().stream().filter(Result.Derived.class::isInstance).count());
  }

  @Test
  void aDefinitionThatDoesNotCountHasNoValue() {
    Run run = sheet.run("s", "b = 2\nb = 3");
    assertEquals(1, run.results().stream().filter(Result.Valued.class::isInstance).count());
  }
}
