package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.sheet.Cells.marked;
import static plainscale.sheet.Cells.onlyProblem;
import static plainscale.sheet.Cells.run;

import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.algebra.Budget;
import plainscale.notation.Problem;

/** What a sheet says when something is wrong with it. */
class ProblemsTest {
  private final Sheet sheet = new Sheet();

  @Test
  void oneProblemIsToldOnceHoweverManyLinesHangOnIt() {
    Run run = sheet.run("cell", "y = b + 1\nw = 2*y\nz = y w\nshow z\nsay \"{w} and {z}\"");
    Problem problem = onlyProblem(run);
    assertEquals(Problem.Kind.NAME, problem.kind());
    assertEquals("b", marked(problem));
    assertEquals(1, problem.line());
    assertEquals(1, run.results().size());
  }

  @Test
  void aProblemOfAnotherCellIsToldAtTheNameThatLeansOnIt() {
    sheet.run("first", "given m = 2.0 kg\ngiven t = 3.0 s\nx = m + t");
    Problem problem = onlyProblem(sheet.run("second", "y = 2 x"));
    assertEquals("y = 2 x", problem.source());
    assertEquals("x", marked(problem));
    assertTrue(
        problem.sentence().startsWith("“x” has a mistake in another cell: You are adding"),
        problem.sentence());
  }

  @Test
  void aProblemTwoCellsAwayIsToldOnce() {
    sheet.run("first", "x = 1/0");
    sheet.run("second", "y = 2*x");
    Problem problem = onlyProblem(sheet.run("third", "z = 2*y"));
    assertEquals(
        "“y” has a mistake in another cell: You are dividing by zero.", problem.sentence());
  }

  @Test
  void twoProblemsAreBothTold() {
    Run run = sheet.run("cell", "a = 1/0\nb = sqrt(-1)");
    assertEquals(2, run.mistakes().size());
  }

  @Test
  void aCircleIsNamed() {
    Problem problem = onlyProblem(sheet.run("cell", "x = y + 1\ny = z\nz = 2*x"));
    assertEquals("“x” is defined by itself: x → y → z → x.", problem.sentence());
    assertFalse(problem.repairs().isEmpty());
  }

  @Test
  void aNameCanNotBeDefinedByItself() {
    Problem problem = onlyProblem(sheet.run("cell", "a = a + 1"));
    assertEquals("“a” is defined by itself: a → a.", problem.sentence());
  }

  @Test
  void aCircleThroughSeveralCellsIsFoundAndCanBeOpened() {
    run(sheet, "one", "given b = 1.0 m");
    run(sheet, "two", "y = 2*b");
    Run closed = sheet.run("one", "b = 3*y");
    assertTrue(onlyProblem(closed).sentence().contains("is defined by itself"));
    run(sheet, "one", "given b = 4.0 m");
    assertEquals("8.0", Cells.number(run(sheet, "look", "y").results()));
  }

  @Test
  void aChainOfDefinitionsHasALimit() {
    String chain =
        IntStream.range(0, 400)
            .mapToObj(i -> "x" + i + " = x" + (i + 1))
            .collect(Collectors.joining("\n"));
    List<Problem> problems =
        sheet.run("cell", chain + "\nx400 = 1").mistakes().stream()
            .map(Result.Mistaken::problem)
            .toList();
    assertEquals(Problem.Kind.LIMIT, problems.get(0).kind());
  }

  @ParameterizedTest
  @CsvSource({
    "lenght, length",
    "Length, length",
    "mass_bal, mass_ball",
    "massball, mass_ball",
    "kmass_ball, k*mass_ball",
    "N_a, N_A",
    "me, m_e"
  })
  void anUnknownNameGetsTheNearestKnownOne(String wrong, String repair) {
    run(sheet, "given", "given length = 1.0 m", "given mass_ball = 2.0 g", "given θ = 3.0°");
    run(sheet, "stiffness", "given k = 4.0 N/m");
    Problem problem = onlyProblem(sheet.run("cell", "show 2*" + wrong));
    assertEquals("I do not know “" + wrong + "” in this sheet.", problem.sentence());
    assertEquals(wrong, marked(problem));
    assertTrue(problem.repairs().contains(repair), problem.repairs()::toString);
  }

  @Test
  void aUnitWithoutNumberIsNotAQuantity() {
    Problem problem = onlyProblem(sheet.run("cell", "show 3*mm"));
    assertTrue(
        problem.repairs().contains("as a unit, after a number or in brackets: 1 [mm]"),
        problem.repairs()::toString);
  }

  @Test
  void aNameLikeNothingElseIsToBeDefined() {
    Problem problem = onlyProblem(sheet.run("cell", "show xylophone"));
    assertEquals(
        List.of("define it first: given xylophone = …, or xylophone = …"), problem.repairs());
  }

  @Test
  void addingTwoKindsOffersWhatTheSheetHas() {
    run(sheet, "given", "given d = 2.0 m", "given t = 3.0 s", "given b = 0.5 m");
    Problem problem = onlyProblem(sheet.run("cell", "show d + t"));
    assertEquals(
        "You are adding metres to seconds: a length and a time do not go together.",
        problem.sentence());
    assertEquals("+", marked(problem));
    assertEquals(List.of("on the right, a quantity of the kind on the left: b"), problem.repairs());
  }

  @Test
  void aContrastIsBetweenTwoOfOneKind() {
    Problem problem = onlyProblem(sheet.run("cell", "contrast m_e with e"));
    assertEquals(Problem.Kind.UNIT, problem.kind());
    assertEquals("e", marked(problem));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "show r",
        "show r in words",
        "say \"{r}\"",
        "show r + 1 [s]",
        "show 1 - r",
        "show sin(r)",
        "show exp(r)",
        "show 2^r",
        "show r in m",
        "contrast r with r",
        "contrast d with r",
        "x = (r in kg)"
      })
  void theRootOfAUnitIsNoUnitToShow(String line) {
    run(sheet, "given", "given d = 2.0 m");
    sheet.run("root", "r = sqrt(d)");
    Problem problem = onlyProblem(sheet.run("cell", line));
    assertEquals(Problem.Kind.UNIT, problem.kind());
    assertTrue(problem.sentence().contains("root of a unit"), problem.sentence());
  }

  @Test
  void whatGoesOnFromTheRootOfAUnitIsComputed() {
    assertEquals("2.0", Cells.number(sheet.run("cell", "r = sqrt(2.0 [m])\nr r").results()));
  }

  @Test
  void aSpentBudgetStopsTheCellWithASentence() {
    Budget small = new Budget(5, Duration.ofHours(1), () -> false);
    Problem problem = onlyProblem(sheet.run("cell", "a = 1+1+1+1+1+1+1+1", small));
    assertEquals(Problem.Kind.LIMIT, problem.kind());
  }

  @Test
  void aStopIsObeyed() {
    Problem problem = onlyProblem(sheet.run("cell", "a = 1+1", Budget.usual(() -> true)));
    assertEquals("Stopped, as you asked.", problem.sentence());
  }
}
