package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static plainscale.sheet.Cells.marked;
import static plainscale.sheet.Cells.onlyProblem;
import static plainscale.sheet.Cells.run;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.notation.Problem;

/** Newton's third law among the forces of a sheet. */
class ForcePairsTest {
  private final Sheet sheet = new Sheet();

  private List<String> findings(String... lines) {
    run(sheet, "bodies", lines);
    return ((Result.Paired) run(sheet, "pairs", "pairs").results().get(0))
        .findings().stream().map(ForcePairsTest::text).toList();
  }

  private static String text(Finding finding) {
    return finding.kind()
        + finding.sides().stream()
            .map(side -> " " + side.force().label() + "/" + side.body())
            .collect(Collectors.joining());
  }

  @Test
  void aBookOnATable() {
    assertEquals(
        List.of(
            "PAIR support/book support/table",
            "BALANCE weight/book support/book",
            "NOT_DRAWN weight/book",
            "NO_AGENT floor/table"),
        findings(
            "forces on book: weight 5.0 [N] down by Earth, support 5.0 [N] up by \"the table\"",
            "forces on table: support 5.0 [N] down by \"Book\", floor 9.0 [N] up"));
  }

  @Test
  void theEarthCanBeDrawnToo() {
    assertEquals(
        List.of("PAIR weight/stone weight/Earth"),
        findings(
            "forces on stone: weight 5.0 [N] down by \"the Earth\"",
            "forces on Earth: weight 5.0 [N] up by stone"));
  }

  @Test
  void twoWeightsAreNoPair() {
    assertEquals(
        List.of("ALIKE weight/a weight/b", "NOT_DRAWN weight/a", "NOT_DRAWN weight/b"),
        findings(
            "forces on a: weight 5.0 [N] down by Earth",
            "forces on b: weight 5.0 [N] down by Earth"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "push 3.1 [mN] left by b | push 3.1 [mN] right by a     | PAIR push/a push/b",
        "push 3.1 [mN] left by b | push -3.1 [mN] left by a     | PAIR push/a push/b",
        "push 3.1 [mN] left by b | push 3.1 [mN] along 0° by a  | PAIR push/a push/b",
        "push 3.1 [mN] left by b | Push 2.9 [mN] right by a     | UNEQUAL push/a Push/b",
        "push 3.1 [mN] left by b | push 3.1 [mN] left by a      | NOT_OPPOSITE push/a push/b",
        "push 3.1 [mN] left by b | push 3.1 [mN] along 5° by a  | NOT_OPPOSITE push/a push/b",
        "push 3.1 [mN] left by b | repulsion 3.1 [mN] right by a | OTHER_NAME push/a repulsion/b",
        "push 3.1 [mN] left by b | weight 3.1 [mN] down         | PARTNER_MISSING push/a",
      })
  void aPairIsOneInteractionSeenFromBothSides(String onA, String onB, String first) {
    assertEquals(first, findings("forces on a: " + onA, "forces on b: " + onB).get(0));
  }

  @Test
  void severalForcesBetweenTheSameBodiesArePairedByTheirNames() {
    assertEquals(
        List.of("PAIR push/a push/b", "PAIR pull/a pull/b"),
        findings(
            "forces on a: push 1 [N] left by b, pull 2 [N] right by b",
            "forces on b: pull 2 [N] left by a, push 1 [N] right by a"));
  }

  @Test
  void unknownsThatAreEqualWithinTheirUncertaintyAreAPair() {
    run(sheet, "g", "given F_1 = 3.10 ± 0.08 mN", "given F_2 = 2.95 ± 0.06 mN");
    assertEquals(
        List.of("PAIR push/a push/b"),
        findings("forces on a: push F_1 left by b", "forces on b: push F_2 right by a"));
  }

  @Test
  void onlyTheBodiesThatAreAskedFor() {
    run(
        sheet,
        "bodies",
        "forces on a: weight 1 [N] down by Earth",
        "forces on b: weight 1 [N] down by Earth",
        "forces on c: weight 1 [N] down by Earth");
    Result.Paired paired = (Result.Paired) run(sheet, "p", "pairs a, c").results().get(0);
    assertEquals("ALIKE weight/a weight/c", text(paired.findings().get(0)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "pairs \"lft ball\"      | \"lft ball\" | This sheet declares no forces on “lft ball”. | \"left ball\"",
        "pairs book, hook, book  | book        | This body stands here twice. | delete it",
        "pairs 3                 | 3           | Here there is “3”; the name of a body belongs here, as in: pairs \"left ball\". |",
        "pairs left ball         | left ball   | A name of several words stands in quotation marks. | \"left ball\"",
        "pairs book \"hook\"    | \"hook\"  | Between two bodies stands a comma. | , \"hook\"",
        "pairs book with         | with        | I do not understand the line from here on. |"
      })
  void whatIsWrongIsTold(String cell, String place, String sentence, String repair) {
    run(
        sheet,
        "g",
        "forces on \"left ball\": push 1 [N] left",
        "forces on book: push 1 [N] left",
        "forces on hook: push 1 [N] left");
    Problem problem = onlyProblem(sheet.run("cell", cell));
    assertEquals(sentence, problem.sentence());
    assertEquals(place, marked(problem));
    List<String> repairs = repair == null ? List.of() : List.of(repair);
    assertEquals(repairs, problem.repairs());
  }

  @Test
  void withoutABodyThereAreNoPairs() {
    Problem problem = onlyProblem(sheet.run("cell", "pairs"));
    assertEquals("This sheet declares no forces on a body yet.", problem.sentence());
  }

  @Test
  void aMistakeInTheForcesOfAnotherCellIsToldHere() {
    sheet.run("bodies", "forces on ball: push x_9 left");
    Problem problem = onlyProblem(sheet.run("cell", "\npairs"));
    assertEquals(
        "The forces on “ball” have a mistake in another cell: I do not know “x_9” in this sheet.",
        problem.sentence());
    assertEquals("pairs", marked(problem));
  }
}
