package plainscale.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.picture.Scenes.texts;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.magnitude.DigitStyle;
import plainscale.magnitude.Orders;
import plainscale.magnitude.Scale;
import plainscale.magnitude.Words;
import plainscale.magnitude.Writing;

class NestedSquaresTest {
  private static Scene squares(String small, String large) {
    return NestedSquares.of(
        "", Scenes.mark("small", small, ""), Scenes.mark("large", large, ""), Writing.USUAL);
  }

  private static List<Box> filled(Scene scene, Shade shade) {
    return Scenes.all(scene, Shape.Rectangle.class).stream()
        .filter(r -> r.fill() == shade)
        .map(Shape.Rectangle::box)
        .toList();
  }

  /** The panels, without the square of the key. */
  private static List<Box> panels(Scene scene) {
    List<Box> light = filled(scene, Shade.TINT);
    return light.subList(1, light.size());
  }

  private static double area(Box box) {
    return box.width() * box.height();
  }

  /** How many times the dark square goes into the first panel, by what is drawn. */
  private static double drawn(Scene scene) {
    List<Box> panels = panels(scene);
    List<Box> small = filled(scene, Shade.INK);
    double ratio = area(panels.get(panels.size() - 1)) / area(filled(scene, Shade.ACCENT).get(0));
    for (int i = 0; i < small.size(); i++) {
      ratio *= area(panels.get(i)) / area(small.get(i));
    }
    return ratio;
  }

  @ParameterizedTest
  @CsvSource({
    "4.2E+11, 8.1E+23, 5, 1.9E+12", // 1.93E+12 to the two figures of the numbers
    "2.7, 58, 1, 21",
    "2.70, 1.00E+4, 2, 3.70E+3",
    "1, 1E+40, 14, 1E+40",
    "1, 1E+60, 21, 1E+60",
    "5E-30, 5E-30, 1, 1",
    "3, -3E+3, 2, 1E+3",
    "1.00E-3, 9.99E-1, 1, 999"
  })
  void theAreasThatAreDrawnMultiplyToTheRatio(
      String small, String large, int panels, double ratio) {
    Scene scene = squares(small, large);
    Scenes.assertReadable(scene);
    assertEquals(panels, panels(scene).size());
    assertEquals(panels - 1, filled(scene, Shade.INK).size());
    assertEquals(1, drawn(scene) / ratio, 1e-9);
  }

  @Test
  void everySmallSquareIsAThousandthAndLiesInItsPanel() {
    Scene scene = squares("1", "3E+13");
    List<Box> small = filled(scene, Shade.INK);
    for (int i = 0; i < small.size(); i++) {
      assertEquals(1e-3, area(small.get(i)) / area(panels(scene).get(i)), 1e-12);
      assertTrue(panels(scene).get(i).contains(small.get(i)));
    }
    Box last = panels(scene).get(small.size());
    assertTrue(last.contains(filled(scene, Shade.ACCENT).get(0)));
  }

  @Test
  void thePanelsAreReadAsLinesOfTextAre() {
    List<Box> panels = panels(squares("1", "1E+59"));
    for (int i = 1; i < panels.size(); i++) {
      Box before = panels.get(i - 1);
      Box here = panels.get(i);
      boolean right = here.y() == before.y() && here.x() > before.right();
      assertTrue(right || here.y() > before.bottom());
      assertFalse(here.overlaps(before));
    }
  }

  @Test
  void captionsSayWhichShareEachPanelIs() {
    String drawn = String.join(" ", texts(squares("4.2E+11", "8.1E+23")));
    assertTrue(
        drawn.contains("the whole 1 in a thousand 1 in a million 1 in a billion 1 in a trillion"),
        drawn);
    assertTrue(drawn.contains("4 steps of a thousand and a last one of 1.9."), drawn);
    assertTrue(drawn.contains("The first square: large"), drawn);
    assertTrue(drawn.contains("The dark square in the last: small"), drawn);
  }

  @Test
  void sharesFollowTheWordsOfTheReader() {
    List<Mark> marks = List.of(Scenes.mark("a", "1", ""), Scenes.mark("b", "3E+10", ""));
    Writing indian = new Writing(DigitStyle.SI, Words.of(Scale.INDIAN), Orders.RATIO);
    Scene scene = NestedSquares.of("", Marks.of(marks), indian);
    assertTrue(texts(scene).contains("1 in 10 lakh"), texts(scene).toString());
    assertTrue(texts(squares("1", "1E+28")).stream().noneMatch(t -> t.contains("1 in a o")));
  }

  @Test
  void theTextAlternativeSaysNumbersAndSteps() {
    String alternative = squares("4.2E+11", "8.1E+23").alternative();
    for (String part :
        List.of(
            "The first square is large: 810000000000000000000000 (810 sextillion).",
            "1 in a thousand, 1 in a million, 1 in a billion, 1 in a trillion.",
            "The dark square in the last is small: 420000000000 (420 billion).",
            "4 steps of a thousand and a last one of 1.9.",
            "about 12 orders of magnitude")) {
      assertTrue(alternative.contains(part), alternative);
    }
  }

  @Test
  void aNegativeNumberIsDrawnByItsSizeAndItIsSaid() {
    Scene scene = squares("-3", "-4E+8");
    assertTrue(texts(scene).stream().anyMatch(t -> t.contains("drawn by its size")));
    assertTrue(scene.alternative().contains("drawn by its size"));
  }

  @Test
  void nothingOverlapsWhateverIsNested() {
    Random random = new Random(62);
    for (int i = 0; i < 500; i++) {
      List<Mark> marks = Scenes.random(random, 28).subList(0, 2);
      Scenes.assertReadable(NestedSquares.of("Squares " + i, Marks.of(marks), Writing.USUAL));
    }
    IntStream.rangeClosed(0, 60).forEach(n -> Scenes.assertReadable(squares("1", "1E+" + n)));
  }

  @Test
  void refusesZeroWhatIsTooFarApartAndAnyOtherNumberOfMarks() {
    assertThrows(IllegalArgumentException.class, () -> squares("0", "1"));
    IllegalArgumentException far =
        assertThrows(IllegalArgumentException.class, () -> squares("1", "1E+61"));
    assertEquals(
        "One number is about 10⁶¹ times the other. Nested squares go up to 10⁶⁰ times;"
            + " a ruler in powers of ten goes further.",
        far.getMessage());
    Marks one = Marks.of(Scenes.electrons().subList(0, 1));
    assertThrows(IllegalArgumentException.class, () -> NestedSquares.of("", one, Writing.USUAL));
  }
}
