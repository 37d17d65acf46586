package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.sheet.Cells.marked;
import static plainscale.sheet.Cells.onlyProblem;
import static plainscale.sheet.Cells.run;
import static plainscale.sheet.Cells.updated;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.magnitude.DigitStyle;
import plainscale.magnitude.Language;
import plainscale.magnitude.Orders;
import plainscale.magnitude.Scale;
import plainscale.magnitude.Writing;
import plainscale.notation.Problem;

/** What a sheet can be told once for all its cells, and what it answers to a choice it lacks. */
class ChoicesTest {
  private final Sheet sheet = new Sheet();

  @Test
  void aSheetBeginsWithTheDigitsOfTheSiBrochureAndEnglishWords() {
    assertEquals(Writing.USUAL, sheet.writing());
  }

  @Test
  void aLocaleChoosesLanguageScaleAndDigits() {
    run(sheet, "one", "locale en-IN");
    assertEquals(Language.INDIAN_ENGLISH, sheet.writing().words().language());
    assertEquals(Scale.INDIAN, sheet.writing().words().scale());
    assertEquals(2, sheet.writing().digits().grouping().next());
  }

  @Test
  void theOtherChoicesRefineTheLocaleWhateverTheirOrder() {
    run(sheet, "one", "scale short", "digits spaced", "orders floor");
    run(sheet, "two", "locale de");
    Writing writing = sheet.writing();
    assertEquals(Language.GERMAN, writing.words().language());
    assertEquals(Scale.SHORT, writing.words().scale());
    assertEquals(DigitStyle.SI_COMMA, writing.digits());
    assertEquals(DigitStyle.SI_COMMA, writing.words().style());
    assertEquals(Orders.FLOOR, writing.orders());
  }

  @Test
  void aChangeOfLocaleUpdatesEveryCellOnce() {
    run(sheet, "n", "n = 8.7e12");
    run(sheet, "show", "show n in words");
    assertEquals(List.of("n", "show"), updated(run(sheet, "set", "locale de")));
    assertEquals(List.of(), updated(run(sheet, "set", "locale de")));
  }

  @Test
  void siIsTheWayBack() {
    run(sheet, "set", "locale hi");
    run(sheet, "back", "locale SI");
    assertEquals(Writing.USUAL, sheet.writing());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "constants old | old | “old” is no choice for “constants”. | constants codata",
        "scale foo     | foo | “foo” is no choice for “scale”.     | scale short",
        "digits many   | many | “many” is no choice for “digits”.  | digits everyday",
        "orders big    | big | “big” is no choice for “orders”.    | orders ratio",
        "locale ge     | ge  | I have no number words for “ge”; I know en-US | locale de",
        "locale x      | x   | I have no number words for “x”; I know en-US  | locale en-US",
        "show 3 in words foo | foo | I have no number words for “foo”; I know en-US | in words en-US"
      })
  void aChoiceThatIsNotThereIsNamedWithTheNearest(
      String cell, String place, String sentence, String repair) {
    Problem problem = onlyProblem(sheet.run("cell", cell));
    assertEquals(place, marked(problem));
    assertTrue(problem.sentence().startsWith(sentence), problem.sentence());
    assertEquals(repair, problem.repairs().get(0));
    assertEquals(Writing.USUAL, sheet.writing());
  }

  @Test
  void aMistakenChoiceLeavesTheOneBefore() {
    run(sheet, "one", "locale de");
    onlyProblem(sheet.run("two", "locale xx"));
    assertEquals(Language.GERMAN, sheet.writing().words().language());
  }
}
