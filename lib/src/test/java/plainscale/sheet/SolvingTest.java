package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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

/** Relations of a sheet, and unknowns that are solved for. */
class SolvingTest {
  private final Sheet sheet = new Sheet();

  /** OpenStax University Physics 2, m58415, problem on two hanging balls. */
  @BeforeEach
  void twoHangingBalls() {
    run(sheet, "givens", "given m = 5.0 g", "given s = 50 cm", "given θ = 5.0°");
    run(
        sheet,
        "relations",
        "relation level: k_e q^2/d^2 = T sin(θ)",
        "relation upright: m g_n = T cos(θ)",
        "relation shape: sin(θ) = d/(2*s)");
  }

  private Result.Derived derived(String cell) {
    List<Result> results = run(sheet, "solve", cell).results();
    return (Result.Derived) results.get(results.size() - 1);
  }

  @Test
  void theChargeOfTheHangingBallsIsThatOfTheBookByExactTrigonometry() {
    Result.Derived derived = derived("solve level, upright, shape for q");
    // The book prints 6.1e-8 C from rounded steps; exactly it is 6.02e-8 C.
    assertEquals(6.02e-8, value(sheet, "q").value().doubleValue(), 0.005e-8);
    assertEquals("C", derived.value().orElseThrow().shown().unit().text());
  }

  @Test
  void thePathIsShortAndBeginsWithADivision() {
    run(sheet, "givens", "given m = 5.0 g", "given s = 50 cm", "given d = 8.7 cm");
    List<Step> steps = derived("solve level, upright, shape for q").derivation().steps();
    assertTrue(steps.size() <= 7, steps::toString);
    assertEquals(Rule.DIVIDE_EQUATIONS, steps.get(0).rule());
    assertEquals("Divide (1) by (2): T cancels.", steps.get(0).reason());
  }

  /** With a 3-4-5 triangle of forces. */
  @Test
  void twoUnknownsOfTheSameRelationsDoNotLeanOnEachOther() {
    run(
        sheet,
        "two",
        "given F = 3.0 N",
        "given W = 4.0 N",
        "relation across: F = S sin(β)",
        "relation upright: W = S cos(β)",
        "solve across, upright for S",
        "solve across, upright for β");
    assertEquals(5, value(sheet, "S").value().doubleValue(), 1e-12);
    assertEquals(0.75, Math.tan(value(sheet, "β").value().doubleValue()), 1e-12);
  }

  /** Two masses over a pulley: the acceleration from both relations, then the tension from one. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "solve up, down for a | solve up for P",
        "solve up for P | solve up, down for a",
        "solve up, down for a | solve up, down for P"
      })
  void anUnknownMayFollowFromAnotherAndFromOneOfItsRelations(String first, String second) {
    run(sheet, "masses", "given m_1 = 2.0 kg", "given m_2 = 3.0 kg");
    run(sheet, "laws", "relation up: P - m_1 g_n = m_1 a", "relation down: m_2 g_n - P = m_2 a");
    run(sheet, "solve", first, second);
    assertEquals(9.80665 / 5, value(sheet, "a").value().doubleValue(), 1e-9);
    assertEquals(2 * 9.80665 * 1.2, value(sheet, "P").value().doubleValue(), 1e-9);
  }

  @Test
  void whatWasSolvedForIsANameOfTheSheetAndFollowsTheGivens() {
    run(sheet, "solve", "solve level, upright, shape for q");
    run(sheet, "count", "n = q/e");
    double before = value(sheet, "n").value().doubleValue();
    Run changed = run(sheet, "givens", "given m = 20.0 g", "given s = 50 cm", "given θ = 5.0°");
    assertTrue(updated(changed).containsAll(List.of("solve", "count")), updated(changed)::toString);
    assertEquals(2 * before, value(sheet, "n").value().doubleValue(), 1e-6 * before);
  }

  @Test
  void whatShowsTheSameIsNoUpdate() {
    run(sheet, "solve", "solve level, upright, shape for q");
    assertEquals(List.of(), updated(run(sheet, "solve", "solve level, upright, shape for q")));
  }

  @Test
  void theSharesOfTheUncertaintyAddUpToOne() {
    run(sheet, "givens", "given m = 5.0(1) g", "given s = 50.0(5) cm", "given d = 8.7(2) cm");
    Result.Evaluated value = derived("solve level, upright, shape for q").value().orElseThrow();
    assertTrue(value.budget().size() >= 3);
    assertEquals(1, value.budget().stream().mapToDouble(c -> c.share()).sum(), 1e-12);
    assertEquals("d", value.budget().get(0).source());
  }

  @Test
  void withoutAClosedFormTheRootIsFoundByNumbersWithItsUnitAndUncertainty() {
    run(sheet, "root", "given F = 0.5(1)", "relation wave: cos(z) = F z/1 [rad]");
    Result.Derived derived = derived("solve wave for z");
    assertTrue(derived.value().orElseThrow().inserted().isEmpty());
    double z = value(sheet, "z").value().doubleValue();
    assertEquals(0.5 * z, Math.cos(z), 1e-12);
    assertTrue(value(sheet, "z").kind().angle());
    // dz/dF = -z/(F + sin z)
    double u = 0.1 * z / (0.5 + Math.sin(z));
    assertEquals(u, value(sheet, "z").uncertainty().standard(), 1e-5 * u);
  }

  @Test
  void unequalMassesAtLargeAnglesAreSolvedTogetherByNumbers() {
    run(
        sheet,
        "unequal",
        "given m_1 = 5.00(5) g",
        "given m_2 = 2.00 g",
        "given L = 0.500 m",
        "given q_1 = 400 nC",
        "relation one: k_e q_1^2/(L sin(α) + L sin(β))^2 = m_1 g_n tan(α)",
        "relation two: k_e q_1^2/(L sin(α) + L sin(β))^2 = m_2 g_n tan(β)");
    run(sheet, "alpha", "solve one, two for α");
    double a = value(sheet, "α").value().doubleValue();
    double b = Math.atan(5.0 * Math.tan(a) / 2.0); // from m_1 tan α = m_2 tan β
    assertTrue(a < b && b > Math.toRadians(20), a + " " + b);
    double distance = 0.5 * (Math.sin(a) + Math.sin(b));
    double push = 8.9875517862e9 * 400e-9 * 400e-9 / (distance * distance);
    assertEquals(5e-3 * 9.80665 * Math.tan(a), push, 1e-8 * push);
    assertTrue(value(sheet, "α").uncertainty().standard() > 0);
    assertTrue(value(sheet, "α").kind().angle());
  }

  @Test
  void aSmallAngleIsAnApproximationWithAStatedError() {
    run(sheet, "givens", "given m = 5.0 g", "given s = 50 cm", "given d = 8.7 cm");
    Result.Derived derived = derived("solve level, upright, shape for q with small θ");
    // sin θ = 0.087: tan θ/sin θ = 1/sqrt(1 - 0.087²) = 1.00381; its root 1.0019
    String note = derived.value().orElseThrow().notes().get(0);
    assertTrue(note.startsWith("Taking θ to be small makes q 0.190 % too small"), note);
  }

  @Test
  void withBoxesTheAnswerStandsNowhere() {
    run(sheet, "givens", "given m = 5.0 g", "given s = 50 cm", "given d = 8.7 cm");
    List<Result> results =
        run(sheet, "solve", "solve level, upright, shape for q with boxes").results();
    for (String shown : List.of(Renderers.text(results), Renderers.pageHtml(results))) {
      assertFalse(shown.contains("sqrt"), shown);
      assertFalse(shown.matches("(?s).*6\\.\\d+.*"), shown);
      assertTrue(shown.contains("Divide (1) by (2)"), shown);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "solve level, foo for q   | foo   | I know no relation “foo” in this sheet.",
        "solve level for q        | solve level for q | The relations are too few for “q”: still free are T, d.",
        "solve level for          | ''    | a name belongs here, as in: solve level, upright for q",
        "solve level q            | q     | Before the unknown stands “for”.",
        "solve for q              | for   | the name of a relation belongs here, as in: solve level for q.",
        "show level               | level | “level” has a mistake in another cell: “level” is a relation, not a quantity.",
        "relation odd = 3         | =     | After the name of a relation comes a colon.",
        "relation odd: 3          | ''    | A relation says that two sides are equal: here “=” and the other side are missing.",
        "solve level for q with ink | ink | A derivation is shown with steps, answer, boxes or questions."
      })
  void whatCanNotBeSolvedIsTold(String cell, String place, String sentence) {
    Problem problem = onlyProblem(sheet.run("cell", cell));
    assertTrue(problem.sentence().contains(sentence.replaceAll("\\.$", "")), problem.sentence());
    assertEquals(place, marked(problem));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "x + 1 = x + 2       | The relations contradict each other",
        "m + x = x^2 + s     | The units of the relation “odd” cannot agree",
        "x^2 = -1            | There is no real solution",
        "x = x               | “x” drops out"
      })
  void relationsThatSayNothingOrTooMuchAreTold(String relation, String sentence) {
    sheet.run("odd", "relation odd: " + relation); // units are told here already
    Problem problem = onlyProblem(sheet.run("cell", "solve odd for x"));
    assertTrue(problem.sentence().contains(sentence), problem.sentence());
  }
}
