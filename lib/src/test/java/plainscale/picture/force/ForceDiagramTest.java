package plainscale.picture.force;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.magnitude.Writing;
import plainscale.picture.Point;
import plainscale.picture.Scene;
import plainscale.picture.Scenes;
import plainscale.picture.Shade;
import plainscale.picture.Shape;
import plainscale.picture.SvgWriter;

/** Force diagrams to scale on squared paper. */
class ForceDiagramTest {
  private static final Body LEFT =
      new Body(
          "left ball",
          List.of(
              new Force("weight", 0, -0.026, "26 mN"),
              new Force("thread", 0.004, 0.026, "26.3 mN"),
              new Force("push", -0.004, 0, "4 mN")),
          "They balance.");

  private static Scene scene(Body body, Edition edition) {
    return ForceDiagram.of("", List.of(body), List.of(), edition, Writing.USUAL);
  }

  private static List<Shape.Polygon> heads(Scene scene) {
    return Scenes.all(scene, Shape.Polygon.class).stream()
        .filter(head -> head.fill() == Shade.ACCENT)
        .toList();
  }

  private static Point dot(Scene scene) {
    return Scenes.all(scene, Shape.Discs.class).get(0).centres().get(0);
  }

  @Test
  void arrowsEndSoManyBoxesFromTheDotAsTheScaleSays() {
    Scene scene = scene(LEFT, Edition.WHOLE);
    assertTrue(Scenes.texts(scene).contains("One box: 4\u00a0mN."), Scenes.texts(scene)::toString);
    Point dot = dot(scene);
    Point weight = heads(scene).get(0).points().get(0);
    Point thread = heads(scene).get(1).points().get(0);
    assertEquals(6.5 * Paper.BOX, weight.y() - dot.y(), 1e-9);
    assertEquals(Paper.BOX, thread.x() - dot.x(), 1e-9);
    assertEquals(-6.5 * Paper.BOX, thread.y() - dot.y(), 1e-9);
  }

  /** Components that are whole or half boxes for a round scale come out so. */
  @ParameterizedTest
  @CsvSource({
    "6, 8, 10, 1",
    "30, 40, 50, 5",
    "0.003, 0.004, 0.005, 5E-4",
    "1.5, 2, 2.5, 0.25",
    "7, 24, 25, 2"
  })
  void componentsComeOutInHalfBoxesWhereTheyCan(double x, double y, double sum, double box) {
    Scale scale = Scale.of(List.of(x, y, sum), sum, 14);
    for (double component : List.of(x, y)) {
      double halves = 2 * scale.boxes(component);
      assertEquals(Math.rint(halves), halves, 0.1, scale::toString);
    }
    assertTrue(scale.newtons().doubleValue() >= box / 3, scale::toString);
  }

  @Test
  void whatIsDrawnFitsAndUsesMostOfThePaper() {
    for (double size = 1e-30; size < 1e30; size *= 7.3) {
      double boxes = Scale.of(List.of(size), size, 9).boxes(size);
      assertTrue(boxes <= 9 && boxes >= 0.55 * 9, "" + boxes);
    }
  }

  static List<Body> random() {
    Random random = new Random(4);
    return IntStream.range(0, 60).mapToObj(i -> random(random)).toList();
  }

  private static Body random(Random random) {
    List<Force> forces = new ArrayList<>();
    double size = Math.pow(10, 12 * random.nextDouble() - 6);
    for (int i = 0; i <= random.nextInt(5); i++) {
      double angle = 2 * Math.PI * random.nextDouble();
      double newtons = size * Math.pow(10, 2 * random.nextDouble());
      String label = "weight thread push".split(" ", -1)[random.nextInt(3)] + i;
      forces.add(new Force(label, newtons * Math.cos(angle), newtons * Math.sin(angle), "some N"));
    }
    double slope = random.nextBoolean() ? 0 : random.nextDouble();
    return new Body("a body", forces, "They do not balance.", slope);
  }

  @ParameterizedTest
  @MethodSource("random")
  void picturesAreReadable(Body body) {
    for (Edition edition : Edition.values()) {
      Scenes.assertReadable(scene(body, edition));
    }
  }

  @Test
  void headToTailAClosedPolygonEndsWhereItBegins() {
    Scene closed = scene(LEFT, Edition.WHOLE);
    assertTrue(closed.alternative().contains("Head to tail they close."), closed.alternative());
    List<Shape.Polygon> heads = heads(closed);
    Point last = heads.get(heads.size() - 1).points().get(0);
    boolean meets =
        Scenes.all(closed, Shape.Line.class).stream()
            .anyMatch(
                line ->
                    line.stroke().shade() == Shade.ACCENT
                        && Math.hypot(line.from().x() - last.x(), line.from().y() - last.y())
                            < 1e-6);
    assertTrue(meets);
  }

  @Test
  void aWrongSetIsDrawnAsGivenWithItsGap() {
    Body wrong =
        new Body(
            "crate",
            List.of(new Force("weight", 0, -8, "8 N"), new Force("rope", 0, 5, "5 N")),
            "They do not balance: what is left is 3 N down.");
    String alternative = scene(wrong, Edition.WHOLE).alternative();
    assertTrue(alternative.contains("Together: 3 boxes down."), alternative);
    assertTrue(alternative.contains("do not close; the dotted line is 3 boxes up"), alternative);
    assertTrue(alternative.endsWith("They do not balance: what is left is 3 N down."), alternative);
  }

  @Test
  void aHintIsDashedAndDoesNotCount() {
    Body hinted =
        new Body(
            "crate",
            List.of(new Force("weight", 0, -8, "8 N"), new Force("missing", 0, 8, "8 N", true)),
            "They do not balance.");
    Scene scene = scene(hinted, Edition.WHOLE);
    assertTrue(scene.alternative().contains("missing (dashed: not there): 8 N"));
    assertTrue(scene.alternative().contains("Together: 4 boxes down."), scene.alternative());
    assertTrue(SvgWriter.write(scene).contains("stroke-dasharray=\"6 4\""));
  }

  /** The least that fits on the paper beside the largest, and 10³⁰ times less. */
  @ParameterizedTest
  @CsvSource({"1e-2, 10", "1e-3, 100", "1e-10, 10⁹", "1e-30, 10²⁹"})
  void aTinyForceIsEnlargedInAnInset(double tiny, String times) {
    Body body =
        new Body(
            "stone",
            List.of(new Force("weight", 0, -5, "5 N"), new Force("tide", 0, 5 * tiny, "little")),
            "");
    Scene scene = scene(body, Edition.WHOLE);
    assertTrue(
        Scenes.texts(scene).contains("enlarged " + times + " times")
            || Scenes.texts(scene).contains("tide (stone), enlarged " + times)
            || Scenes.texts(scene).contains("tide (stone), enlarged " + times + " times"),
        Scenes.texts(scene)::toString);
    assertTrue(scene.alternative().contains("tide: little; a dot at this scale."));
    Scenes.assertReadable(scene);
  }

  @Test
  void aForceOfNoLengthAndABodyWithoutForcesAreDrawn() {
    Body none = new Body("stone", List.of(new Force("weight", 0, 0, "0 N")), "");
    assertTrue(scene(none, Edition.WHOLE).alternative().contains("weight: no length."));
    Scenes.assertReadable(scene(new Body("stone", List.of(), ""), Edition.WHOLE));
  }

  @Test
  void forcesOfOneDirectionAreDrawnBesideOneAnother() {
    Body two =
        new Body(
            "shelf", List.of(new Force("own", 0, -4, "4 N"), new Force("books", 0, -8, "8 N")), "");
    List<Shape.Polygon> heads = heads(scene(two, Edition.WHOLE));
    assertFalse(heads.get(0).points().get(0).x() == heads.get(1).points().get(0).x());
  }

  @ParameterizedTest
  @EnumSource(names = {"DOT", "DIRECTIONS"})
  void aStudentsEditionHoldsNoSize(Edition edition) {
    String svg = SvgWriter.write(scene(LEFT, edition));
    assertFalse(svg.contains("mN") || svg.contains("balance") || svg.contains("4 N"), svg);
    assertTrue(svg.contains("One box: ________ N."));
    assertEquals(edition == Edition.DIRECTIONS, svg.contains("weight down; thread up"));
  }

  @Test
  void onSlopesComponentsGoAlongAndAwayFromIt() {
    double slope = Math.atan2(3, 4);
    Body crate = new Body("crate", List.of(new Force("weight", 0, -10, "10 N")), "", slope);
    String alternative = scene(crate, Edition.WHOLE).alternative();
    assertTrue(alternative.contains("6 boxes down the slope, 8 boxes into the slope"), alternative);
  }

  @Test
  void actionAndReactionAreLinkedOthersAreNot() {
    Body right =
        new Body(
            "right ball",
            List.of(new Force("weight", 0, -0.026, "26 mN"), new Force("push", 0.004, 0, "4 mN")),
            "");
    Scene scene =
        ForceDiagram.of(
            "",
            List.of(LEFT, right),
            List.of(new Pair(0, 1, "push")),
            Edition.WHOLE,
            Writing.USUAL);
    List<String> texts = Scenes.texts(scene);
    assertEquals(1, texts.stream().filter(t -> t.contains("action and reaction")).count());
    assertTrue(
        scene.alternative().contains("push on left ball and push on right ball: action and"),
        scene.alternative());
    assertFalse(scene.alternative().contains("weight on"), scene.alternative());
  }

  @Test
  void fromOneToFourBodies() {
    assertThrows(
        IllegalArgumentException.class,
        () -> ForceDiagram.of("", List.of(), List.of(), Edition.WHOLE, Writing.USUAL));
  }
}
