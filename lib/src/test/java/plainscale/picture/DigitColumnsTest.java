package plainscale.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import plainscale.magnitude.Alignment;
import plainscale.magnitude.DigitStyle;
import plainscale.magnitude.Digits;

class DigitColumnsTest {
  private static String written(Scene scene, TextRole role) {
    return scene
        .texts()
        .filter(t -> t.style().role() == role)
        .map(Shape.Text::content)
        .collect(Collectors.joining());
  }

  @Test
  void tellsFiguresFromZerosByShadeAndByWeight() {
    Scene scene = DigitColumns.of("", Scenes.electrons());
    assertEquals("32813", written(scene, TextRole.FIGURE));
    assertEquals("0".repeat(10 + 21), written(scene, TextRole.ZERO));
    List<TextStyle> styles = scene.texts().map(Shape.Text::style).toList();
    TextStyle figure =
        styles.stream().filter(s -> s.role() == TextRole.FIGURE).findFirst().orElseThrow();
    TextStyle zero =
        styles.stream().filter(s -> s.role() == TextRole.ZERO).findFirst().orElseThrow();
    assertTrue(zero.weight().number() < figure.weight().number());
    assertTrue(ShadeTest.luminance(zero.shade()) > ShadeTest.luminance(figure.shade()));
  }

  @Test
  void countsTheZerosInSight() {
    List<String> texts =
        DigitColumns.of("", List.of(Scenes.electrons().get(0), Scenes.forces().get(1)))
            .texts()
            .map(Shape.Text::content)
            .toList();
    assertTrue(
        texts.contains("2 significant figures, then 10 place-holder zeros"), texts::toString);
    assertTrue(
        texts.contains("15 zeros after the point, then 3 significant figures"), texts::toString);
    assertTrue(texts.contains("320\u00a0billion = 3.2\u00a0×\u00a010¹¹"), texts::toString);
  }

  @Test
  void theTextAlternativeStatesBothNumbers() {
    String alternative = DigitColumns.of("", Scenes.electrons()).alternative();
    assertTrue(alternative.contains("320000000000 (320 billion)"), alternative);
    assertTrue(alternative.contains("813000000000000000000000 (813 sextillion)"), alternative);
    assertTrue(alternative.contains("21 place-holder zeros"), alternative);
  }

  @Test
  void everyPlaceHasOneColumnInAllRows() {
    Random random = new Random(60);
    DigitStyle indian = DigitStyle.of(Locale.forLanguageTag("en-IN"));
    for (int i = 0; i < 500; i++) {
      DigitStyle style = i % 2 == 0 ? DigitStyle.SI : indian;
      Alignment alignment =
          Alignment.of(
              Scenes.random(random, 30).stream().map(m -> Digits.of(m.value(), style)).toList());
      Map<Integer, Double> columns = new TreeMap<>();
      for (Alignment.Row row : alignment.rows()) {
        DigitLine line = DigitLine.of(row, new Point(10, 0), 20);
        line.places()
            .forEach((place, x) -> assertEquals(x, columns.merge(place, x, (a, b) -> a), 1e-6));
        assertEquals(
            row.digits().integerPlaces() + row.digits().decimalPlaces(), line.places().size());
      }
    }
  }

  @Test
  void nothingOverlapsWhateverIsWritten() {
    Random random = new Random(61);
    DigitStyle english = DigitStyle.of(Locale.US);
    for (int i = 0; i < 500; i++) {
      Scenes.assertClean(DigitColumns.of("Digits " + i, Scenes.random(random, 99)));
      Scenes.assertClean(DigitColumns.of("", Scenes.random(random, 9), english));
    }
  }

  @Test
  void aNumberTooLongIsAPowerOfTenAndSaysSo() {
    Scene scene =
        DigitColumns.of(
            "",
            List.of(
                Scenes.mark("endless", "8.7E+1000000000", ""), Scenes.mark("short", "12", "kg")));
    Scenes.assertClean(scene);
    assertTrue(scene.texts().anyMatch(t -> t.content().equals("too long for full digits")));
    assertFalse(scene.alternative().isEmpty());
    assertTrue(SvgWriter.write(scene).length() < 20_000);
  }
}
