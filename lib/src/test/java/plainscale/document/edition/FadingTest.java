package plainscale.document.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.document.Blank;
import plainscale.document.LessonException;

/** Steps of a derivation are left blank from its end. */
class FadingTest {
  private static final String GIVENS = "given m = 2.70 g\ngiven d = 14.0 cm";
  private static final String RELATION = "relation r: m g_n = k_e q^2/d^2 \"weight = push\"";
  private static final String BLANK_STEP = "\nWhich principle? ____\n(%d) ____";
  private static final String HEAD = "q from r: charge\n(1) m gn=ke q2d2  weight = push";
  private static final String SECOND = "\nMultiply both sides of (1) by d²/k_e.\n(2) q2=m gn d2ke";

  private static String left(Blank blank, Fading fading, String how) throws LessonException {
    String solve = "solve r for q in nC" + how + " \"charge\"";
    return Worksheets.last(blank, fading, GIVENS, RELATION, solve);
  }

  @Test
  void withNoneBlankTheAnswerStandsWithoutItsValue() throws LessonException {
    String left = left(Blank.VALUES, new Fading(0), "");
    assertTrue(
        left.startsWith(HEAD + SECOND + "\nTake the square root of (2); q is positive."), left);
    assertTrue(left.endsWith("\nq=d m gnke = ____nC"), left);
  }

  @Test
  void theLastStepIsBlankAndNothingAfterItTellsTheAnswer() throws LessonException {
    assertEquals(
        HEAD + SECOND + BLANK_STEP.formatted(3) + "\nq = ____nC",
        left(Blank.VALUES, Fading.LAST, ""));
  }

  @ParameterizedTest
  @ValueSource(strings = {"2", "3", "99", "all"})
  void manyLeaveTheRelationsAndTheUnknown(String word) throws LessonException {
    assertEquals(
        HEAD + BLANK_STEP.formatted(2) + BLANK_STEP.formatted(3) + "\nq = ____nC",
        left(Blank.VALUES, Fading.named(word).orElseThrow(), ""));
  }

  @Test
  void whereFormulasAreBlankNoStepIsShown() throws LessonException {
    assertEquals(left(Blank.VALUES, Fading.ALL, ""), left(Blank.FORMULAS, new Fading(0), ""));
  }

  @Test
  void whereAllIsBlankTheWordsOfTheRelationsAreLeft() throws LessonException {
    String left = left(Blank.ALL, new Fading(0), "");
    assertTrue(left.startsWith("q from r: charge\n(1)   weight = push  ____\nWhich"), left);
  }

  @Test
  void aDerivationInReasonsOrInQuestionsAsksForTheRest() throws LessonException {
    String boxes = left(Blank.VALUES, new Fading(0), " with boxes");
    assertTrue(boxes.contains("Multiply both sides of (1) by d²/k_e.\n(2) ____"), boxes);
    assertTrue(boxes.endsWith("q = ____nC"), boxes);
    String questions = left(Blank.VALUES, new Fading(0), " with questions");
    assertTrue(questions.contains("Which principle? ____\n(2) q2=m gn d2ke"), questions);
  }

  @Test
  void anAnswerWithoutStepsHasRoomForItsFormula() throws LessonException {
    assertEquals(HEAD + "\nq = ____ = ____nC", left(Blank.VALUES, Fading.LAST, " with answer"));
    assertTrue(left(Blank.VALUES, new Fading(0), " with answer").endsWith("q=d m gnke = ____nC"));
  }

  @Test
  void whatIsBlankInOneCellIsQuotedInNone() throws LessonException {
    String solve = "solve r for q in nC \"charge\"";
    String say = "say \"From {equation 2 of q} to {equation 3 of q}\"";
    String[] cells = {GIVENS, RELATION, solve, say};
    assertEquals(
        "From (2) q2=m gn d2ke to (3) ____", Worksheets.last(Blank.VALUES, Fading.LAST, cells));
    assertFalse(Worksheets.last(Blank.VALUES, Fading.ALL, cells).contains("q2"));
  }

  @ParameterizedTest
  @CsvSource({"0, 5", "1, 4", "2, 3", "5, 0", "7, 0", "all, 0"})
  void stepsAreCountedFromTheEnd(String word, int shown) {
    assertEquals(shown, Fading.named(word).orElseThrow().shown(5));
  }

  @ParameterizedTest
  @ValueSource(strings = {"-1", "some", "", "1.5", "99999"})
  void otherWordsAreNoNumberOfSteps(String word) {
    assertEquals(Optional.empty(), Fading.named(word));
  }

  @Test
  void fewerThanNoneAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Fading(-1));
  }
}
