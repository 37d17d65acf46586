package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.notation.Problem;
import plainscale.render.Renderers;

/** Numbers of pictures. */
class FiguresTest {
  private final Sheet sheet = new Sheet();

  @BeforeEach
  void twoPictures() {
    Cells.run(sheet, "one", "ruler 1 [m] with 1 [km]", "figure lengths \"Two lengths\"");
    Cells.run(sheet, "two", "dots 28", "figure class");
  }

  private String shown(String line) {
    return Renderers.text(sheet.run("say", line).results());
  }

  @Test
  void figuresAreNumberedInOrderAndNamedInSentences() {
    assertEquals(
        "Compare Figure 1 with Figure 2.",
        shown("say \"Compare {figure lengths} with {figure class}.\""));
  }

  @Test
  void aCaptionStandsBelowThePicture() {
    Run run = Cells.run(sheet, "one", "ruler 1 [m] with 1 [km]", "figure lengths \"Two lengths\"");
    assertTrue(Renderers.text(run.results()).endsWith("\nFigure 1: Two lengths"));
    assertTrue(Renderers.cellHtml(run.results()).contains("<b>Figure 1: Two lengths</b>"));
  }

  @Test
  void aNumberStaysWhenItsCellRunsAgain() {
    Cells.run(sheet, "one", "ruler 1 [m] with 2 [km]", "figure lengths \"Two lengths\"");
    Cells.run(sheet, "three", "squares 1 with 10^6", "figure share");
    assertEquals("Figure 1, Figure 3", shown("say \"{figure lengths}, {figure share}\""));
  }

  @Test
  void itIsSaidInTheLanguageOfTheSheet() {
    shown("say \"{figure class}\"");
    sheet.run("locale", "locale de");
    assertEquals("Abbildung 2", shown("say \"{figure class}\""));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "say \"{figure clas}\" | I know no figure “clas” in this sheet. | {figure class}",
        "figure alone | A figure stands on the line after its picture. | put it below forces, map, ruler or another picture",
      })
  void whatIsWrongIsTold(String line, String sentence, String repair) {
    Problem problem = Cells.onlyProblem(sheet.run("wrong", line));
    assertEquals(sentence, problem.sentence());
    assertEquals(List.of(repair), problem.repairs());
  }
}
