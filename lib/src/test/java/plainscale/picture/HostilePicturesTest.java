package plainscale.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import plainscale.magnitude.Writing;

/** Whatever is to be drawn: a picture that can be read, or a sentence that a student can read. */
class HostilePicturesTest {
  private static final Pattern SENTENCE = Pattern.compile("[A-Z][^.]{20,}\\.( [^.]{5,}\\.)?");

  private static final List<String> LABELS =
      List.of(
          "",
          " \n\t ",
          "many words ".repeat(20),
          "x".repeat(200),
          "WWWWWWWW ".repeat(200),
          "a <b> & \"c\" ]]> 'd'",
          "\u05e9\u05dc\u05d5\u05dd \u05e2\u05d5\u05dc\u05dd: 5 \u05db\u05d3\u05d5\u05e8\u05d9\u05dd",
          "\u202eturned round",
          "\u0000\ud800",
          "\ud83d\udd2c".repeat(100));

  private static final List<String> NUMBERS =
      List.of(
          "0",
          "0.000",
          "1",
          "-5",
          "1E+400",
          "1E-400",
          "3.1E+1000000000",
          "-2E-1500000000",
          "9E+2147483647",
          "1E-2147483647",
          "1234567890123456789012345678901234567890.5");

  private interface Picture {
    Scene of(String title, Mark one, Mark other);
  }

  private static final List<Picture> PICTURES =
      List.of(
          (title, one, other) ->
              MagnitudeRuler.of(title, List.of(one, other), List.of(other, one), Writing.USUAL),
          (title, one, other) -> NestedSquares.of(title, one, other, Writing.USUAL),
          (title, one, other) -> Dots.of(title, List.of(one, other), Writing.USUAL));

  /** Whether there is a picture. */
  private static boolean isDrawn(Picture picture, String title, Mark one, Mark other) {
    Scene scene;
    try {
      scene = picture.of(title, one, other);
    } catch (IllegalArgumentException refusal) {
      String said = String.valueOf(refusal.getMessage());
      assertTrue(SENTENCE.matcher(said).matches(), said);
      return false;
    }
    Scenes.assertReadable(scene);
    assertTrue(SvgWriter.write(scene).length() < 200_000);
    return true;
  }

  @Test
  void anyLabelIsDrawn() {
    for (Picture picture : PICTURES) {
      for (String label : LABELS) {
        for (String other : LABELS) {
          Mark one = new Mark(label, new BigDecimal("4.2E+11"), "<kg>");
          Mark two = new Mark(other, new BigDecimal("8.1E+23"), "<kg>");
          assertTrue(isDrawn(picture, label, one, two), label);
        }
      }
    }
  }

  @Test
  void anyTwoNumbersGiveAPictureOrASentence() {
    int drawn = 0;
    for (Picture picture : PICTURES) {
      for (String number : NUMBERS) {
        for (String other : NUMBERS) {
          Mark one = new Mark("one", new BigDecimal(number), "kg");
          Mark two = new Mark("other", new BigDecimal(other), "kg");
          drawn += isDrawn(picture, "", one, two) ? 1 : 0;
        }
      }
    }
    assertTrue(drawn > PICTURES.size() * NUMBERS.size() * NUMBERS.size() / 3, drawn + " drawn");
  }

  @Test
  void equalNumbersAreDrawn() {
    Mark mark = Scenes.mark("twice", "6.02E+23", "");
    for (Picture picture : PICTURES) {
      assertTrue(isDrawn(picture, "Equal", mark, mark));
    }
  }

  @Test
  void numbersInTwoUnitsAreRefused() {
    Mark mass = Scenes.mark("mass", "1", "kg");
    Mark count = Scenes.mark("count", "1", "");
    for (Picture picture : PICTURES) {
      IllegalArgumentException refusal =
          assertThrows(IllegalArgumentException.class, () -> picture.of("", mass, count));
      assertEquals(
          "The numbers of one picture must be in one unit, not in kg and none.",
          String.valueOf(refusal.getMessage()).replace("none and kg", "kg and none"));
    }
  }

  @Test
  void aLabelReadFromTheRightDoesNotTurnTheTextAlternative() {
    Mark mark = Scenes.mark(LABELS.get(6), "3E+11", "");
    String alternative = Scenes.ruler("", List.of(mark)).alternative();
    assertTrue(alternative.contains("\u2068" + LABELS.get(6) + "\u2069: 300000000000"));
  }
}
