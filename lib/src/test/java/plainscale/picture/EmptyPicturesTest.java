package plainscale.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import plainscale.magnitude.Writing;

/** Pictures to draw in. */
class EmptyPicturesTest {
  private static final List<Mark> LANDMARKS =
      List.of(
          Scenes.mark("people on Earth", "8E+9", ""),
          Scenes.mark("molecules in a drop", "1.7E+21", ""));

  private static Scene ruler(Mark... numbers) {
    return EmptyRuler.of("Electrons", Marks.of(List.of(numbers)).with(LANDMARKS), Writing.USUAL);
  }

  @Test
  void aRulerHasItsLandmarksAndNoNumber() {
    Scene ruler = ruler(Scenes.mark("moved", "4.19E+11", ""), Scenes.mark("there", "8.13E+23", ""));
    Scenes.assertReadable(ruler);
    List<String> texts = Scenes.texts(ruler);
    assertTrue(String.join(" ", texts).contains("people on Earth"), texts::toString);
    String all = ruler.alternative() + texts;
    assertFalse(all.contains("moved") || all.contains("4.19"), all);
    assertTrue(ruler.alternative().contains("people on Earth"), ruler.alternative());
  }

  @Test
  void itsEndsDoNotTellWhereTheNumbersLie() {
    Scene one = ruler(Scenes.mark("moved", "4.19E+11", ""), Scenes.mark("there", "8.13E+23", ""));
    Scene other = ruler(Scenes.mark("moved", "6E+13", ""), Scenes.mark("there", "2.5E+22", ""));
    assertEquals(one, other);
  }

  @Test
  void withoutLandmarksThePowersAreNamed() {
    Marks marks = Marks.of(List.of(Scenes.mark("moved", "4.19E+11", "")));
    Scene ruler = EmptyRuler.of("", marks, Writing.USUAL);
    Scenes.assertReadable(ruler);
    assertTrue(Scenes.texts(ruler).contains("billion"), Scenes.texts(ruler)::toString);
  }

  @Test
  void zeroHasNoPlace() {
    Marks marks = Marks.of(List.of(Scenes.mark("nothing", "0", "")));
    assertThrows(IllegalArgumentException.class, () -> EmptyRuler.of("", marks, Writing.USUAL));
  }

  @Test
  void squaredPaperHasItsTitlesAndNothingElse() {
    SquaredPaper.Axes axes = new SquaredPaper.Axes(Symbol.of("I") + "/mA", Symbol.of("U") + "/V");
    Scene paper = SquaredPaper.of("Voltage and current", axes, 18, "Paper for a plot");
    Scenes.assertReadable(paper);
    assertEquals(3, paper.texts().count());
    assertEquals("Paper for a plot", paper.alternative());
    Scene plain = SquaredPaper.of("", SquaredPaper.Axes.NONE, 18, "Paper for a map");
    assertEquals(0, plain.texts().count());
    assertEquals("Paper for a map", plain.title());
  }
}
