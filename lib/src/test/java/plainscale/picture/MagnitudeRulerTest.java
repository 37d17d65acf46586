package plainscale.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class MagnitudeRulerTest {
  private static List<String> texts(Scene scene) {
    return scene.texts().map(Shape.Text::content).toList();
  }

  @Test
  void namesTheDistanceInOrdersOfMagnitude() {
    Scene scene = MagnitudeRuler.of("Two counts", Scenes.electrons());
    // 8.13E+23 / 3.2E+11 = 2.54E+12
    assertTrue(texts(scene).contains("about 12 orders of magnitude"));
    assertTrue(
        texts(scene).contains("the larger is about 2.5 trillion (2.5 × 10¹²) times the smaller"));
  }

  @Test
  void theTextAlternativeStatesBothNumbersAndTheirDistance() {
    String alternative = MagnitudeRuler.of("", Scenes.forces()).alternative();
    assertTrue(alternative.contains("electric push: 0.0047 N"), alternative);
    assertTrue(alternative.contains("4.7 thousandths of 1 N"), alternative);
    assertTrue(alternative.contains("pull of gravity: 0.000000000000000305 N"), alternative);
    assertTrue(alternative.contains("305 quintillionths of 1 N"), alternative);
    assertTrue(alternative.contains("13 orders of magnitude"), alternative);
  }

  @Test
  void marksStandWhereTheirLogarithmIs() {
    Scene scene =
        MagnitudeRuler.of(
            "",
            List.of(
                Scenes.mark("a", "1E+2", ""),
                Scenes.mark("b", "1E+5", ""),
                Scenes.mark("c", "1E+8", "")));
    List<Double> tips =
        scene.shapes().stream()
            .filter(Shape.Polygon.class::isInstance)
            .map(s -> ((Shape.Polygon) s).points().get(2))
            .map(Point::x)
            .limit(3)
            .toList();
    assertEquals(tips.get(1) - tips.get(0), tips.get(2) - tips.get(1), 1e-9);
    double power =
        scene.texts().filter(t -> t.content().equals("10⁵")).findFirst().orElseThrow().at().x();
    assertEquals(power, tips.get(1), 1e-9);
  }

  @Test
  void numbersBesideOneAnotherAndEqualNumbersKeepApart() {
    Mark mark = Scenes.mark("a number with a rather long label", "2.75", "kg");
    for (int count = 2; count <= 6; count++) {
      Scenes.assertClean(MagnitudeRuler.of("Title", Collections.nCopies(count, mark)));
    }
    Scene equal = MagnitudeRuler.of("", List.of(mark, mark));
    assertTrue(texts(equal).contains("both are about the same"));
  }

  @Test
  void nothingOverlapsWhateverIsMarked() {
    Random random = new Random(50);
    for (int i = 0; i < 1500; i++) {
      Scenes.assertClean(MagnitudeRuler.of("Ruler " + i, Scenes.random(random, 99)));
      Scenes.assertClean(MagnitudeRuler.of("", Scenes.random(random, 4)));
    }
  }

  @Test
  void endlessNumbersAndLabelsStillMakeASmallPicture() {
    Scene scene =
        MagnitudeRuler.of(
            "",
            List.of(
                Scenes.mark("x".repeat(5000), "8.7E+1000000000", ""),
                Scenes.mark("tiny", "3E-1000000000", "")));
    Scenes.assertClean(scene);
    assertTrue(scene.shapes().size() < 500);
    assertTrue(SvgWriter.write(scene).length() < 100_000);
  }

  @Test
  void refusesZeroAndAnUnfitNumberOfMarks() {
    List<Mark> zero = List.of(Scenes.mark("a", "0", ""), Scenes.mark("b", "1", ""));
    assertThrows(IllegalArgumentException.class, () -> MagnitudeRuler.of("", zero));
    List<Mark> one = zero.subList(1, 2);
    assertThrows(IllegalArgumentException.class, () -> MagnitudeRuler.of("", one));
    List<Mark> seven = Collections.nCopies(7, zero.get(1));
    assertThrows(IllegalArgumentException.class, () -> MagnitudeRuler.of("", seven));
  }
}
