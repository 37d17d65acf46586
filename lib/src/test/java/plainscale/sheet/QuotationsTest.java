package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static plainscale.sheet.Cells.marked;
import static plainscale.sheet.Cells.onlyProblem;
import static plainscale.sheet.Cells.run;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.notation.Problem;

/** Sentences that refer to relations and to lines of derivations. */
class QuotationsTest {
  private final Sheet sheet = new Sheet();

  @BeforeEach
  void aFallingStone() {
    run(sheet, "relation", "relation fall: h = 1/2 g_n t^2");
    run(sheet, "given", "given h = 1.25 m");
    run(sheet, "solution", "solve fall for t");
  }

  private List<Piece> pieces(String text) {
    Run run = run(sheet, "sentence", "say \"" + text + "\"");
    return ((Result.Narrated) run.results().get(0)).pieces();
  }

  private Piece.Quoted quoted(String text) {
    return (Piece.Quoted) pieces(text).get(0);
  }

  @Test
  void aRelationIsWrittenByItsName() {
    Piece.Quoted relation = quoted("{fall} holds.");
    assertEquals("h = (1/2) g_n t^2", relation.equation().text());
    assertEquals(0, relation.number());
  }

  @Test
  void aLineOfADerivationIsWrittenByItsNumber() {
    assertEquals("h = (1/2) g_n t^2", quoted("{equation 1 of t}").equation().text());
    Piece.Quoted last = quoted("{equation 3 of t}");
    assertEquals("t = sqrt(2*h/g_n)", last.equation().text());
    assertEquals(3, last.number());
    assertEquals(new Piece.Words("2"), pieces("{steps of t}").get(0));
  }

  @Test
  void theSentenceFollowsTheRelation() {
    run(sheet, "by name", "say \"{fall}\"");
    run(sheet, "by number", "say \"{equation 3 of t}\"");
    run(sheet, "count", "say \"{steps of t}\"");
    List<String> updated = Cells.updated(run(sheet, "relation", "relation fall: h = g_n t^2"));
    assertEquals(List.of("solution", "by name", "by number"), updated); // two steps, as before
  }

  @Test
  void theyAreNoNamesOfTheSheet() {
    run(sheet, "names", "given equation = 2 m", "given steps = 7");
    assertEquals(3, quoted("{equation 3 of t}").number());
    Run run = run(sheet, "sentence", "say \"{equation} {steps} {equation*3}\"");
    long live =
        ((Result.Narrated) run.results().get(0))
            .pieces().stream().filter(Piece.Live.class::isInstance).count();
    assertEquals(3, live);
  }

  @Test
  void anUnsolvedUnknownHasItsRelations() {
    run(sheet, "open", "relation open: y = t + w");
    sheet.run("unsolved", "solve open for w");
    assertEquals("y = t + w", quoted("{equation 1 of w}").equation().text());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{equation 4 of t}   | 4    | “t” has equations (1) to (3).",
        "{equation 0 of t}   | 0    | Equations are numbered from 1, as in: {equation 5 of q}.",
        "{equation 1.5 of t} | 1.5  | Equations are numbered from 1, as in: {equation 5 of q}.",
        "{equation 99999999999 of t} | 99999999999 | “t” has equations (1) to (3).",
        "{equation 1 of h}   | h    | “h” is not derived from relations, so it has no equations.",
        "{steps of fall}     | fall | “fall” is not derived from relations, so it has no equations.",
        "{steps of x_9}      | x_9  | I do not know “x_9” in this sheet.",
        "{equation 1 of t in s} | in | Here there is “in”; the brace ends after the name, as in: {equation 5 of q}.",
        "{fall in s}         | fall | “fall” is a relation, which has no unit and no figures.",
        "{fall + h}          | fall | “fall” has a mistake in another cell: “fall” is a relation, not a quantity."
      })
  void whatIsWrongIsTold(String text, String place, String sentence) {
    Problem problem = onlyProblem(sheet.run("sentence", "say \"" + text + "\""));
    assertEquals(sentence, problem.sentence());
    assertEquals(place, marked(problem));
  }
}
