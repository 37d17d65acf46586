package plainscale.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.picture.Scenes.texts;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plainscale.magnitude.DigitStyle;
import plainscale.magnitude.Orders;
import plainscale.magnitude.Ratio;
import plainscale.magnitude.Scale;
import plainscale.magnitude.Words;
import plainscale.magnitude.Writing;

class MagnitudeRulerTest {
  private static final List<Mark> LANDMARKS =
      List.of(Scenes.mark("a dozen", "12", ""), Scenes.mark("a million", "1E+6", ""));

  private static Scene ruler(List<Mark> marks, Writing writing) {
    return MagnitudeRuler.of("", marks, List.of(), writing);
  }

  private static String together(Scene scene) {
    return String.join(" ", texts(scene));
  }

  @Test
  void namesTheDistanceInOrdersOfMagnitude() {
    Scene scene = Scenes.ruler("Two counts", Scenes.electrons());
    // 8.13E+23 / 3.2E+11 = 2.54E+12
    assertTrue(texts(scene).contains("about 12 orders of magnitude"));
    assertTrue(
        together(scene)
            .contains("the larger is about 2.5 trillion (2.5 × 10¹²) times the smaller"));
  }

  @Test
  void aRatioThatIsBetterKnownIsTheOneThatIsSaid() {
    Ratio known =
        Ratio.of(new BigDecimal("8.1349E+23"), new BigDecimal("3.2412E+11"), 4); // 2.510E+12
    Scene scene = MagnitudeRuler.of("", Marks.of(Scenes.electrons()).with(known), Writing.USUAL);
    assertTrue(scene.alternative().contains("2.510 trillion"), scene.alternative());
  }

  @Test
  void digitsWordsAndOrdersFollowTheWriting() {
    Writing other = new Writing(DigitStyle.SI_COMMA, Words.of(Scale.LONG), Orders.FLOOR);
    Scene scene = ruler(Scenes.electrons(), other);
    assertTrue(together(scene).contains("2,5 billion (2,5 × 10¹²)"), together(scene));
    assertTrue(texts(scene).contains("about 12 orders of magnitude"));
    assertTrue(together(scene).contains("counted by the floor of log₁₀"));
    assertTrue(scene.alternative().contains("counted by the floor of log₁₀"));
  }

  @Test
  void theTextAlternativeStatesBothNumbersAndTheirDistance() {
    String alternative = Scenes.ruler("", Scenes.forces()).alternative();
    assertTrue(alternative.contains("electric push: 0.0047 N"), alternative);
    assertTrue(alternative.contains("4.7 thousandths of 1 N"), alternative);
    assertTrue(alternative.contains("pull of gravity: 0.000000000000000305 N"), alternative);
    assertTrue(alternative.contains("305 quintillionths of 1 N"), alternative);
    assertTrue(alternative.contains("13 orders of magnitude"), alternative);
  }

  @Test
  void marksStandWhereTheirLogarithmIs() {
    List<Mark> marks =
        List.of(
            Scenes.mark("a", "1E+2", ""),
            Scenes.mark("b", "1E+5", ""),
            Scenes.mark("c", "1E+8", ""));
    Scene scene = MagnitudeRuler.of("", marks, LANDMARKS, Writing.USUAL);
    double[] tips = pointers(scene).stream().mapToDouble(p -> p.points().get(2).y()).toArray();
    assertEquals(3, tips.length);
    assertEquals(tips[1] - tips[0], tips[2] - tips[1], 1e-9);
    // Upwards is more; the ring of a million stands a third of the way from 10⁵ to 10⁸.
    assertTrue(tips[0] < tips[2]);
    double million = Scenes.all(scene, Shape.Discs.class).get(0).centres().get(0).y();
    assertEquals(tips[1] + (tips[0] - tips[1]) / 3, million, 1e-9);
  }

  /** The triangles that lie on their side; an arrow's head stands upright. */
  private static List<Shape.Polygon> pointers(Scene scene) {
    return Scenes.all(scene, Shape.Polygon.class).stream()
        .filter(p -> p.points().get(0).x() == p.points().get(1).x())
        .toList();
  }

  @Test
  void landmarksAreQuieterAndOfAnotherForm() {
    Scene scene = MagnitudeRuler.of("", Scenes.electrons(), LANDMARKS, Writing.USUAL);
    assertEquals(2, pointers(scene).size());
    int discs =
        Scenes.all(scene, Shape.Discs.class).stream().mapToInt(d -> d.centres().size()).sum();
    assertEquals(4, discs); // a ring is a disc on a disc
    TextStyle landmark = style(scene, "a million");
    TextStyle number = style(scene, "8.13\u00a0×\u00a010²³");
    assertTrue(landmark.weight().number() < number.weight().number());
    assertTrue(landmark.size() < number.size());
    assertTrue(scene.alternative().contains("Landmarks to compare with: a dozen: 12; a million"));
  }

  private static TextStyle style(Scene scene, String content) {
    return scene.texts().filter(t -> t.content().equals(content)).findFirst().orElseThrow().style();
  }

  @Test
  void withOneNumberThereIsNoDistance() {
    Scene scene = MagnitudeRuler.of("", Scenes.electrons().subList(0, 1), LANDMARKS, Writing.USUAL);
    Scenes.assertReadable(scene);
    assertEquals(1, Scenes.all(scene, Shape.Polygon.class).size());
    assertFalse(together(scene).contains("order") || scene.alternative().contains("order"));
  }

  @Test
  void numbersBesideOneAnotherAndEqualNumbersKeepApart() {
    Mark mark = Scenes.mark("a number with a rather long label", "2.75", "kg");
    for (int count = 1; count <= 6; count++) {
      List<Mark> equal = Collections.nCopies(count, mark);
      Scenes.assertReadable(MagnitudeRuler.of("Title", equal, equal, Writing.USUAL));
    }
    assertTrue(texts(Scenes.ruler("", List.of(mark, mark))).contains("both are about the same"));
    assertTrue(
        texts(Scenes.ruler("", List.of(mark, mark, mark))).contains("all are about the same"));
  }

  @Test
  void nothingOverlapsWhateverIsMarked() {
    Random random = new Random(50);
    for (int i = 0; i < 1000; i++) {
      Scenes.assertReadable(Scenes.ruler("Ruler " + i, Scenes.random(random, 99)));
      List<Mark> marks = Scenes.random(random, 4);
      List<Mark> landmarks =
          Scenes.random(random, 30).stream()
              .map(m -> new Mark(m.label(), m.value(), marks.get(0).unit()))
              .toList();
      Scenes.assertReadable(MagnitudeRuler.of("", marks, landmarks, Writing.USUAL));
    }
  }

  @Test
  void endlessNumbersAndLabelsStillMakeASmallPicture() {
    Scene scene =
        Scenes.ruler(
            "",
            List.of(
                Scenes.mark("x".repeat(5000), "8.7E+1000000000", ""),
                Scenes.mark("tiny", "3E-1000000000", "")));
    Scenes.assertReadable(scene);
    assertTrue(scene.shapes().size() < 500);
    assertTrue(SvgWriter.write(scene).length() < 100_000);
  }

  @Test
  void refusesZeroAndAnUnfitNumberOfMarks() {
    Mark one = Scenes.mark("b", "1", "");
    List<Mark> zero = List.of(Scenes.mark("a", "0", ""), one);
    assertThrows(IllegalArgumentException.class, () -> Scenes.ruler("", zero));
    assertThrows(IllegalArgumentException.class, () -> Scenes.ruler("", List.of()));
    List<Mark> seven = Collections.nCopies(7, one);
    assertThrows(IllegalArgumentException.class, () -> Scenes.ruler("", seven));
    assertThrows(
        IllegalArgumentException.class,
        () -> MagnitudeRuler.of("", List.of(one), seven, Writing.USUAL));
  }
}
