package plainscale.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import plainscale.magnitude.DigitStyle;
import plainscale.magnitude.Language;
import plainscale.magnitude.Orders;
import plainscale.magnitude.Words;
import plainscale.magnitude.Writing;

/** Pictures say what they show in the reader's language. */
class PictureLanguagesTest {
  private static final Pattern ENGLISH =
      Pattern.compile("\\b(the|times|each|ruler|square|dots?|about|smallest)\\b");

  private static Writing writing(Language language) {
    DigitStyle digits = DigitStyle.of(language.locale());
    return new Writing(
        digits, Words.of(language, language.defaultScale()).with(digits), Orders.FLOOR);
  }

  /** Small and large ratios, a negative number, zero, landmarks, all three kinds of picture. */
  private static Stream<Scene> scenes(Writing writing) {
    Mark small = Scenes.mark("a", "4.2E+11", "");
    Mark large = Scenes.mark("b", "-8.1E+23", "");
    Mark one = Scenes.mark("a", "2.0", "m");
    Mark more = Scenes.mark("b", "3.0", "m");
    return Stream.of(
        NestedSquares.of("", small, large, writing),
        NestedSquares.of("", one, more, writing),
        NestedSquares.of("", one, one, writing),
        NestedSquares.of("", one, Scenes.mark("b", "2E+59", "m"), writing),
        MagnitudeRuler.of("", List.of(small, large), List.of(small), writing),
        MagnitudeRuler.of("", List.of(small, large), List.of(), writing),
        MagnitudeRuler.of("", List.of(one, more, more), List.of(), writing),
        Dots.of("", List.of(small, large), writing),
        Dots.of("", List.of(one, Scenes.mark("b", "0", "m")), writing),
        Dots.of("", List.of(Scenes.mark("a", "1", ""), Scenes.mark("b", "123.4", "")), writing));
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void everyPictureIsReadableAndWhollyInItsLanguage(Language language) {
    boolean english = language.locale().getLanguage().equals("en");
    scenes(writing(language))
        .forEach(
            scene -> {
              Scenes.assertReadable(scene);
              String said = (scene.title() + scene.alternative()).toLowerCase(Locale.ROOT);
              assertEquals(english, ENGLISH.matcher(said).find(), said);
              assertFalse(said.contains("{"), said);
            });
  }

  @Test
  void squaresInGerman() {
    Writing writing = Writing.of(Locale.GERMAN).orElseThrow();
    Mark small = Scenes.mark("klein", "4.2E+11", "");
    Mark large = Scenes.mark("groß", "8.1E+23", "");
    // 8.1E+23 / 4.2E+11 = 1.9E+12: four times a thousand, and 1.9
    assertEquals(
        "Quadrate, deren Flächen für Zahlen stehen, jedes im vorigen."
            + " Das erste Quadrat steht für groß: 810000000000000000000000 (810 Trilliarden)."
            + " Die nächsten: 1 Tausendstel, 1 Millionstel, 1 Milliardstel, 1 Billionstel."
            + " Das dunkle Quadrat im letzten steht für klein: 420000000000 (420 Milliarden)."
            + " 4 Schritte mit dem Faktor tausend und ein letzter mit dem Faktor 1,9."
            + " In jedem Quadrat ist das kleine maßstabsgetreu; das nächste Quadrat zeigt es"
            + " vergrößert. Vom kleinsten zum größten Wert: etwa 12 Größenordnungen; der größere"
            + " Wert ist etwa 1,9 Billionen (1,9 × 10¹²) Mal so groß wie der kleinere.",
        NestedSquares.of("", small, large, writing).alternative());
  }

  @Test
  void dotsInFrench() {
    Writing writing = Writing.of(Locale.FRENCH).orElseThrow();
    List<Mark> marks = List.of(Scenes.mark("a", "8.13E+8", "kg"), Scenes.mark("b", "2.0E+4", "kg"));
    // one dot for 1E+6 kg; 1E+6 / 2.0E+4 = 50
    assertEquals(
        "Nombres en points, par blocs de cent. Chaque point représente 1 million de kg (10⁶)."
            + " a : 813000000 kg (813 millions de kg). 813 points."
            + " b : 20000 kg (20 mille kg). Moins d’un point : pour en avoir un, il faudrait environ"
            + " 50 fois cette valeur.",
        Dots.of("", marks, writing).alternative().replace('\u00a0', ' '));
  }
}
