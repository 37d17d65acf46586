package plainscale.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.magnitude.DigitStyle;
import plainscale.magnitude.Orders;
import plainscale.magnitude.Scale;
import plainscale.magnitude.Words;
import plainscale.magnitude.Writing;

class MarkTest {
  private static final Writing COMMA =
      new Writing(DigitStyle.SI_COMMA, Words.of(Scale.LONG), Orders.RATIO);

  @ParameterizedTest
  @CsvSource({
    "412, 412",
    "0.047, 0.047",
    "9999, 9999",
    "1.6E+3, 1600",
    "12345, 1.2345 × 10⁴",
    "0.0047, 4.7 × 10⁻³",
    "-5, −5"
  })
  void everydayNumbersStandAsTheyAreAndOthersAsAPowerOfTen(String number, String figures) {
    Mark mark = Scenes.mark("", number, "");
    assertEquals(figures, mark.inFigures(Writing.USUAL).replace('\u00a0', ' '));
  }

  @Test
  void digitsAndWordsFollowTheWriting() {
    Mark mark = Scenes.mark("mass", "8.7E+12", "kg");
    assertEquals("8.7\u00a0trillion\u00a0kg", mark.inWords(Writing.USUAL));
    assertEquals("8,7\u00a0billion\u00a0kg", mark.inWords(COMMA));
    assertEquals("8,7\u00a0×\u00a010¹²\u00a0kg", mark.inPowers(COMMA));
    assertEquals(
        "mass: 0,005 kg (5 thousandths of 1 kg)", Scenes.mark("mass", "0.005", "kg").said(COMMA));
    assertEquals("mass: 0,05 kg", Scenes.mark("mass", "0.05", "kg").said(COMMA));
  }

  @Test
  void aMarkWithoutLabelIsSaidByItsNumberAlone() {
    assertEquals("7 kg", Scenes.mark("  ", "7", "kg").said(Writing.USUAL));
  }

  @Test
  void anEndlessLabelIsCut() {
    String name = Scenes.mark("\ud83d\udd2c".repeat(1000), "7", "").name();
    assertTrue(name.endsWith("\ud83d\udd2c…"));
    assertEquals(241, name.codePointCount(0, name.length()));
    assertFalse(Scenes.mark("y".repeat(200), "7", "").name().endsWith("…"));
  }
}
