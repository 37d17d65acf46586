package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.sheet.Cells.number;
import static plainscale.sheet.Cells.onlyProblem;
import static plainscale.sheet.Cells.run;
import static plainscale.sheet.Cells.updated;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.notation.Problem;

/** What a sheet says of blanks, and of what waits for them. */
class BlanksTest {
  private final Sheet sheet = new Sheet();

  private static List<String> told(Run run) {
    return run.results().stream()
        .filter(Result.Unfinished.class::isInstance)
        .map(result -> ((Result.Unfinished) result).sentence())
        .toList();
  }

  private static int blanks(Run run) {
    return run.results().stream()
        .filter(Result.Unfinished.class::isInstance)
        .mapToInt(result -> ((Result.Unfinished) result).blanks())
        .sum();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          given m = ? g       | m is still blank: put your value in place of the ? (in g).
          given n = ?         | n is still blank: put your value in place of the ?.
          given m = ? ± ? g   | m is still blank: put your values in place of each ? (in g).
          given m = 3 ± ? g   | m has a blank: put its uncertainty in place of the ? (in g).
          given U = 5.0, ? V  | U has a blank: put your reading in place of the ? (in V).
          F_e = ? "push"      | F_e is still blank: write what it equals in place of the ?.
          F_e = ? in N        | F_e is still blank: write what it equals in place of the ?.
          F_e = k_e ?/2       | F_e has a blank: write what is missing in place of the ?.
          relation r: ?       | r is still blank: write an equation in place of the ?.
          relation r: ? = T   | r has a blank: write the other side in place of the ?.
          relation r: ? = ?   | r has 2 blanks: fill in each ?.
          relation r: 2*? = T | r has a blank: write what is missing in place of the ?.
          solve ? for q       | q has a blank: name the relations in place of the ?.
          solve ? for ?       | This derivation has 2 blanks: fill in each ?.
          contrast 2 with ?   | This contrast has a blank: put a quantity in place of the ?.
          say "{?} of it"     | This sentence has a blank: put a quantity in place of the ?.
          show ? in mN        | This line is still blank: put a quantity in place of the ?.
          depends c on ?      | This dependence has a blank: name a quantity in place of the ?.
          forces on "red ball": ? | The forces on “red ball” are still blank: write the forces in place of the ?.
          forces on ball: pull 2 [N] up, ? | The forces on “ball” have a blank: write the forces in place of the ?.
          field f: ?          | f has a blank: write the charges or masses in place of the ?.
          """)
  void aLineWithBlanksSaysWhatIsAskedFor(String line, String sentence) {
    Run run = run(sheet, "a", line);
    assertEquals(List.of(sentence), told(run));
    assertEquals(line.chars().filter(c -> c == '?').count(), blanks(run));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          w = m g_n             | w waits for m, which is still blank.
          show 2*m in kg        | 2*m waits for m, which is still blank.
          m                     | m waits for m, which is still blank.
          rho = m/V             | ρ waits for m and V, which are still blank.
          say "It is {m}."      | This sentence waits for m, which is still blank.
          contrast m with 3 [g] | This contrast waits for m, which is still blank.
          near m                | This search for landmarks waits for m, which is still blank.
          ruler m               | This ruler waits for m, which is still blank.
          budget m              | This budget waits for m, which is still blank.
          depends r on m        | This dependence waits for m, which is still blank.
          vary r from 1 cm to 2 cm show m r | This table waits for m, which is still blank.
          limit r to 0 cm show m r | This limit waits for m, which is still blank.
          what if m = 2*m       | This what-if waits for m, which is still blank.
          solve fall for t      | t waits for fall, which is still blank.
          pairs                 | This search for pairs waits for the forces on “cup”, which are still blank.
          map pole              | This map waits for pole, which is still blank.
          forces on ball: pull m g_n up | The forces on “ball” wait for m, which is still blank.
          forces on bowl mirrors cup | The forces on “bowl” wait for the forces on “cup”, which are still blank.
          """)
  void whatHangsOnABlankWaitsForIt(String line, String sentence) {
    run(sheet, "blanks", "given m = ? g", "V = ?", "relation fall: ?", "field pole: ?");
    run(sheet, "more", "given r = 2.00 cm", "forces on cup: ?");
    Run run = run(sheet, "a", line);
    assertEquals(List.of(sentence), told(run));
    assertEquals(0, blanks(run));
  }

  @Test
  void whatHangsOnNoBlankIsComputed() {
    Run run = run(sheet, "a", "given m = ? g", "given r = 2.00 cm", "w = m g_n", "A = r^2");
    assertEquals(4, run.results().size());
    assertEquals("0.000400", number(run.results()));
  }

  @Test
  void aWaitIsPassedOnWithTheNameOfTheBlankItself() {
    run(sheet, "a", "given m = ? g");
    run(sheet, "b", "w = m g_n");
    Run run = run(sheet, "c", "half = w/2", "show half in mN");
    assertEquals(
        List.of(
            "half waits for m, which is still blank.", "half waits for m, which is still blank."),
        told(run));
  }

  @Test
  void aBlankThatIsFilledInUpdatesWhatWaitedForIt() {
    run(sheet, "a", "given m = ? g");
    run(sheet, "b", "w = m g_n in mN");
    run(sheet, "c", "given r = 2.0 cm");
    Run filled = run(sheet, "a", "given m = 2.70 g");
    assertEquals(List.of("b"), updated(filled));
    assertEquals("26.5", number(filled.updates().get(0).results()));
    Run emptied = run(sheet, "a", "given m = ? g");
    assertEquals(List.of("b"), updated(emptied));
    assertInstanceOf(Result.Unfinished.class, emptied.updates().get(0).results().get(0));
  }

  @ParameterizedTest
  @ValueSource(strings = {"given c = ? m/s", "c = ?", "given c = ? m/s \"own\""})
  void noConstantStepsIn(String blank) {
    run(sheet, "a", blank);
    assertEquals(List.of("E waits for c, which is still blank."), told(run(sheet, "b", "E = c^2")));
    assertTrue(sheet.value("c").isEmpty());
  }

  @Test
  void noOlderDefinitionStepsIn() {
    run(sheet, "old", "given m = 5.00 g");
    run(sheet, "new", "given m = ? g");
    assertEquals(List.of("w waits for m, which is still blank."), told(run(sheet, "b", "w = 2*m")));
  }

  @Test
  void aDerivationIsToldThoughItsNumberWaits() {
    run(sheet, "a", "given m = ? kg", "relation weight: 2*F = m g_n");
    Run run = run(sheet, "b", "solve weight for F", "say \"{weight}: {steps of F} steps\"");
    assertInstanceOf(Result.Derived.class, run.results().get(0));
    assertEquals(List.of("F waits for m, which is still blank."), told(run));
    assertInstanceOf(Result.Narrated.class, run.results().get(2));
  }

  @Test
  void aChoiceAmongRootsWaitsForTheValuesThatDecideIt() {
    run(sheet, "a", "given h = ? m", "given v = 20.0 m/s");
    run(sheet, "b", "relation height: h = v t - 1/2 g_n t^2");
    String solve = "solve height for t with t > 2 s";
    assertEquals(List.of("t waits for h, which is still blank."), told(run(sheet, "c", solve)));
    Run filled = run(sheet, "a", "given h = 15.0 m", "given v = 20.0 m/s");
    assertEquals(List.of("c"), updated(filled));
    Result.Derived derived = (Result.Derived) filled.updates().get(0).results().get(0);
    assertEquals("3.09", derived.value().orElseThrow().shown().value().toPlainString());
  }

  @Test
  void aWhatIfShowsWhatDoesNotWait() {
    run(sheet, "a", "given m = ? g", "given r = 2.00 cm", "w = m r", "A = r^2");
    Run run = run(sheet, "b", "what if r = 2*r", "compare \"now\" with \"twice\": r = 2*r");
    Result.Compared compared = (Result.Compared) run.results().get(0);
    assertEquals(2, compared.rows().size());
    assertEquals(List.of(), told(run));
    Run asked = run(sheet, "c", "what if r = 2*r show w");
    assertEquals(List.of("This what-if waits for m, which is still blank."), told(asked));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          x = 1 [m] + 2 [s] + ?     | 1 | You are adding metres to seconds
          x = ? + nothing           | 1 | I do not know “nothing”
          contrast ? with nothing   | 1 | I do not know “nothing”
          say "{?} and {1/0}"       | 1 | You are dividing by zero.
          solve ?, levl for q       | 1 | I know no relation “levl”
          y = m + (1 [m] + 2 [s])   | 0 | You are adding metres to seconds
          given z = ? flurbs        | 0 | I do not know the unit “flurbs”.
          """)
  void whatIsWrongElsewhereInTheLineIsTold(String line, int blanks, String sentence) {
    run(sheet, "a", "given m = ? m");
    Run run = sheet.run("b", line);
    Problem problem = onlyProblem(run);
    assertTrue(problem.sentence().startsWith(sentence), problem.sentence());
    assertEquals(blanks, blanks(run));
    assertFalse(run.ok());
  }

  @Test
  void equalLinesWithBlanksAreCountedEach() {
    assertEquals(3, blanks(run(sheet, "a", "show ?", "show ?", "show ?")));
  }

  @Test
  void aBlankWhoseNameIsDefinedElsewhereSaysSo() {
    run(sheet, "a", "given m = ? g");
    Run run = run(sheet, "b", "given m = 2.0 g");
    assertEquals(List.of("a"), updated(run));
    assertEquals(
        List.of("“m” is defined in another cell now; this line no longer counts."),
        Cells.remarks(run.updates().get(0).results()));
  }

  @Test
  void readingsThatBelongTogetherWaitForABlankAmongThem() {
    Run run = run(sheet, "a", "given U = 1.0, 2.0 V", "given I = 1.0, ? A", "together U, I");
    assertEquals("This line waits for I, which is still blank.", told(run).get(1));
  }

  @Test
  void aPictureThatWaitsKeepsItsFigure() {
    Run run = run(sheet, "a", "given m = ? g", "ruler m", "figure scale \"A mass\"");
    assertInstanceOf(Result.Captioned.class, run.results().get(2));
  }
}
