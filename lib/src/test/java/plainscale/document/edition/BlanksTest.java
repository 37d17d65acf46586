package plainscale.document.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.document.Blank;
import plainscale.document.Edition;
import plainscale.document.LessonException;

/** What is left of each kind of result; a gap is ____, a box #, an empty place of a table ||. */
class BlanksTest {
  private static final String GIVENS =
      "given m = 2.70 ± 0.05 g \"mass\"\ngiven d = 14.0 cm \"distance\"\ngiven n = 12";
  private static final String RELATION = "relation r: m g_n = k_e q^2/d^2 \"weight = push\"";

  /** Of the cell below the givens. */
  private static String left(Blank blank, String cell) throws LessonException {
    return Worksheets.last(blank, GIVENS, RELATION, cell);
  }

  private static String lines(String... lines) {
    return String.join("\n", lines);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "VALUES;   'm = (2.70±0.05) g|own: ____g|mass|'",
        "FORMULAS; 'm = (2.70±0.05) g|own: ____g|mass|'",
        "ALL;      'm = ____g||mass|'"
      })
  void aGivenHasRoomForAnOwnValue(Blank blank, String left) throws LessonException {
    assertEquals(left, Worksheets.last(blank, "given m = 2.70 ± 0.05 g \"mass\""));
  }

  @Test
  void theLimitsOfAGivenGoWithItsValue() throws LessonException {
    String given = "given h = 7.35 ± 0.05 m rectangular \"height\"";
    assertTrue(Worksheets.last(Blank.VALUES, given).contains("within ± 0.05 m"));
    assertTrue(Worksheets.last(Blank.ALL, given).endsWith("h = ____m||height|"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "VALUES;   w = m g_n \"weight\"; 'w = m gn = ____N||weight|'",
        "FORMULAS; w = m g_n \"weight\"; 'w = ____ = ____N||weight|'",
        "ALL;      w = m g_n \"weight\"; 'w = ____N||weight|'",
        "VALUES;   x = 2.5e-3 [N];       'x = 0.0025 N|||'",
        "FORMULAS; x = 2.5e-3 [N];       'x = ____N|||'",
        "VALUES;   show m in kg;         'm = ____kg||mass|'",
        "VALUES;   m n;                  'm n = ____g|||'",
        "FORMULAS; m n;                  '____ = ____g|||'",
        "ALL;      m n;                  '____g|||'"
      })
  void aValueHasItsFormulaAndAGapAndTheUnitThatNoSizeHasChosen(
      Blank blank, String cell, String left) throws LessonException {
    assertEquals(left, left(blank, cell));
  }

  @Test
  void aRelationStaysUnlessAllIsBlank() throws LessonException {
    assertEquals("r: m gn=ke q2d2  weight = push", Worksheets.last(Blank.FORMULAS, RELATION));
    assertEquals("r: weight = push\n________", Worksheets.last(Blank.ALL, RELATION));
  }

  @Test
  void aNumberInWordsHasBoxesAndALine() throws LessonException {
    assertEquals(
        lines("n", "### ###", "In words: ____", "In words (German): ____"),
        left(Blank.VALUES, "show n in words\nshow n in words de"));
    assertEquals(
        lines("### ### ### ### ### ###", "In words (lakh and crore): ____"),
        left(Blank.VALUES, "show 4.19e11 in words indian"));
    assertEquals(lines("mn", "In words: ____"), left(Blank.VALUES, "show m/n roughly"));
  }

  @Test
  void aContrastHasAsManyBoxesForEachNumber() throws LessonException {
    String boxes = lines("### ###", "### ### ### ### ### ### ### ###", "In words: ____");
    assertEquals(
        lines(
            "n1 = 4.19×1011|||",
            "n2 = 8.13×1023|||",
            "two",
            "n1",
            boxes,
            "n2",
            boxes,
            "The larger is ____ times the smaller.",
            "### ### ### ### ### ###",
            "For every one of ____ there are about ____ of ____."),
        left(Blank.VALUES, "n_1 = 4.19e11\nn_2 = 8.13e23\ncontrast n_1 with n_2 \"two\""));
  }

  @Test
  void unitOnesStandUnderOneAnother() throws LessonException {
    String boxes = "### ###. ### ### ### ###N\nIn words: ____";
    assertEquals(
        lines(
            "1×10−5 N",
            boxes,
            "3 N",
            boxes,
            "The larger is ____ times the smaller.",
            "### ### ### ###"),
        left(Blank.VALUES, "contrast 1e-5 [N] with 3 [N]"));
  }

  @Test
  void theWayToDigitsHasTheSameStepsForEveryNumber() throws LessonException {
    String first = left(Blank.VALUES, "a = 4.7e13*n\nexpand a");
    String other = left(Blank.VALUES, "a = 5e12*n\nexpand a");
    assertTrue(first.contains("____ × 10 to the power ____\nMove the decimal marker ____ places"));
    assertEquals(first.lines().skip(1).toList(), other.lines().skip(1).toList());
    assertTrue(left(Blank.VALUES, "expand 4.7e13 with boxes").contains("\n4.7×1013\n"));
  }

  @Test
  void landmarksOfANumberAreToBeFound() throws LessonException {
    assertEquals(
        lines(
            "Something larger: ____; it is ____ times as much.",
            "mass: ____",
            "Something smaller: ____; it goes ____ times into it."),
        left(Blank.VALUES, "near m"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "ruler m with 3 [kg] \"masses\"; [masses]",
        "squares n with 1e9;             [Squared paper to draw on: squares within squares]",
        "dots n \"twelve\";              [twelve]",
        "forces on ball: weight m g_n down by \"Earth\" with dot; [Force diagram]"
      })
  void picturesAreToBeDrawn(String cell, String left) throws LessonException {
    assertTrue(left(Blank.VALUES, cell).endsWith(left), () -> cell);
  }

  @Test
  void forcesAndPairsAreEmptyTables() throws LessonException {
    String forces = "forces on ball: weight m g_n down by \"Earth\", support m g_n up by \"table\"";
    assertEquals(
        lines(
            "Forces on the ball",
            "force|size|direction|by|",
            "||||\n".repeat(5) + "[Force diagram]",
            "force|on|by|its partner acts on|",
            "||||\n".repeat(5).strip()),
        left(Blank.VALUES, forces + "\npairs"));
  }

  @Test
  void whatIfAsksForBeforeAndAfterAndWhy() throws LessonException {
    assertEquals(
        lines(
            "What if m=2 m, d=1 m",
            "|before|after|larger, smaller, the same? why?|",
            "m||||",
            "d||||",
            "md||||"),
        left(Blank.VALUES, "what if m = 2*m, d = 1 [m] show m/d"));
    String relation = left(Blank.VALUES, "what if r: m g_n = k_e q^2/(2*d^2) show m/d");
    assertTrue(
        relation.startsWith("What if r: m gn=ke q22 d2  instead of  m gn=ke q2d2\n"), relation);
  }

  @Test
  void casesSayWhatTheyChange() throws LessonException {
    assertEquals(
        lines(
            "In “twice”: m=2 m", "|now|twice|larger, smaller, the same? why?|", "m||||", "md||||"),
        left(Blank.VALUES, "compare \"now\" with \"twice\": m = 2*m show m/d"));
  }

  @Test
  void aTableKeepsItsFirstColumnUnlessThatIsToBeFound() throws LessonException {
    assertEquals(
        lines("d|md|", "8 cm||", "16 cm||"),
        left(Blank.VALUES, "vary d from 8 cm to 16 cm by 8 cm show m/d"));
    assertEquals(
        lines("a = 2 d = ____cm|||", "a|ma|", "||", "||"),
        left(Blank.VALUES, "a = 2*d\nvary a from 8 cm to 16 cm by 8 cm show m/a"));
  }

  @Test
  void aLimitAsksWhatBecomesOfIt() throws LessonException {
    assertEquals(
        lines("d|md|", "||\n".repeat(4) + "md: What becomes of it? ____"),
        left(Blank.VALUES, "limit d to 0 cm show m/d"));
  }

  @Test
  void aDependenceAsksForThePower() throws LessonException {
    assertEquals(
        "md ∝ d to the power ____, if there is one", left(Blank.VALUES, "depends m/d on d"));
  }

  @Test
  void aBudgetIsAnEmptyTable() throws LessonException {
    assertEquals(
        lines(
            "md = ____kg/m",
            "source|share of the variance|",
            "||\n".repeat(4) + "To know it better, measure ____ better."),
        left(Blank.VALUES, "budget m/d"));
  }

  @Test
  void aSentenceHasGapsForItsValues() throws LessonException {
    assertEquals(
        "It is ____kg/m, or ____, by m gn=ke q2d2",
        left(Blank.VALUES, "say \"It is {m/d}, or {m/d in words}, by {r}\""));
    assertTrue(left(Blank.ALL, "say \"by {r}\"").endsWith("by ____"));
  }

  @Test
  void aFigureKeepsItsNumberAndItsCaption() throws LessonException {
    String left = left(Blank.VALUES, "ruler m with 3 [kg]\nfigure f \"Two masses\"");
    assertTrue(left.endsWith("Figure 1: Two masses"), left);
  }

  @Test
  void remarksAreLeftOutAndMistakesAreForTheTeacher() throws LessonException {
    assertEquals("", left(Blank.VALUES, "constants textbook"));
    assertEquals("This line does not work yet; ask your teacher.", left(Blank.VALUES, "m + d"));
  }

  @Test
  void aFieldKeepsItsSourcesAsTheyWereWritten() throws LessonException {
    String field = "field f: charge 3 nC at (d/2, 0 cm), ring 2 nC radius d at (0 cm, 1 cm) across";
    String sources =
        lines(
            "Field f",
            "source|amount|where|",
            "point charge|3 nC|(d2, 0 cm)|",
            "ring|2 nC|(0 cm, 1 cm); radius d|");
    assertEquals(sources, left(Blank.VALUES, field));
    assertTrue(left(Blank.FORMULAS, field).endsWith("point charge|||\nring|||"));
    String probe = left(Blank.VALUES, field + "\npotential of f at (0 cm, 5 cm)");
    assertTrue(
        probe.contains(
            lines("Field of f at a place", "place: (0 cm, 5 cm)", "V = ____V||potential|")),
        probe);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "map f \"It\"",
        "relief f \"It\"",
        "section f from (-5 cm, 1 cm) to (5 cm, 1 cm) \"It\"",
        "release charge 1 nC mass 1 g at (5 cm, 3 cm) in f for 0.1 s \"It\""
      })
  void theFieldIsToBeDrawn(String drawing) throws LessonException {
    String cell = "field f: charge 3 nC at (d, 0 cm), charge -3 nC at (0 cm, 0 cm)\n" + drawing;
    String left = left(Blank.VALUES, cell);
    assertTrue(left.contains("\n[It]"), left);
  }

  @Test
  void aBodyThatIsReleasedIsSaidAsItWasWritten() throws LessonException {
    String cell =
        "field f: charge 3 nC at (d, 0 cm)\n"
            + "release charge 1 nC mass 1 g at (5 cm, 3 cm) moving (1 km/s, 0 km/s) in f for 0.1 s";
    String left = left(Blank.VALUES, cell);
    assertTrue(left.contains("1 nC, 1 g; place: (5 cm, 3 cm); velocity: (1 km/s, 0 km/s)\n"), left);
    assertTrue(left.contains("moment|time|speed|kinetic|potential|together|\n||||||"), left);
  }

  @Test
  void classDataKeepTheirColumnsAndTheKindOfCurve() throws LessonException {
    String data = "data \"class.csv\" as I, U, d_c";
    assertTrue(
        left(Blank.VALUES, data).contains("column|smallest|largest|mean|\ngroup||||\nI (mA)||||"));
    assertTrue(
        left(Blank.VALUES, data + "\nstatistics U").contains("|U|\nmean||\nstandard deviation||"));
    String counted = left(Blank.VALUES, data + "\nhistogram U \"It\"");
    assertTrue(counted.endsWith("from|to below|number|\n" + "|||\n".repeat(6) + "[It]"), counted);
    String fit = data + "\nfit line U against I as R_1, U_0 \"It\"";
    assertTrue(
        left(Blank.VALUES, fit)
            .endsWith(
                lines(
                    "Straight line: U=R1 I+U0",
                    "[It]",
                    "R1 = ____V/mA||slope|",
                    "U0 = ____V||intercept|")));
    assertTrue(left(Blank.FORMULAS, fit).contains("Straight line: ____\n"));
    assertTrue(left(Blank.VALUES, data + "\nplot U against I \"It\"").endsWith("[It]"));
  }

  @Test
  void aCellThatIsNotThereHasNothing() throws LessonException {
    String page = Handout.html(Worksheets.worked(Blank.CELL, GIVENS), Edition.STUDENT, Fading.LAST);
    assertFalse(page.contains("distance"), page);
  }
}
