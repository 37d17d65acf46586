package plainscale.picture;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plainscale.magnitude.Writing;

/** Scenes for tests, and what holds for every scene. */
public final class Scenes {
  /** The width of a picture on a phone, and the smallest text there, in CSS pixels. */
  private static final double PHONE = 358;

  private static final double LEAST_SIZE = 10.5;

  private Scenes() {}

  static Mark mark(String label, String value, String unit) {
    return new Mark(label, new BigDecimal(value), unit);
  }

  static List<Mark> electrons() {
    return List.of(
        mark("electrons moved by rubbing", "3.2E+11", ""),
        mark("electrons on the ball already", "8.13E+23", ""));
  }

  static List<Mark> forces() {
    return List.of(mark("electric push", "4.7E-3", "N"), mark("pull of gravity", "3.05E-16", "N"));
  }

  /** A ruler without landmarks in the usual writing. */
  static Scene ruler(String title, List<Mark> marks) {
    return MagnitudeRuler.of(title, marks, List.of(), Writing.USUAL);
  }

  public static List<String> texts(Scene scene) {
    return scene.texts().map(Shape.Text::content).toList();
  }

  public static <S extends Shape> List<S> all(Scene scene, Class<S> kind) {
    return scene.shapes().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /**
   * Two to six numbers with labels of any length, from 10^-reach to 10^reach, some of them close.
   */
  static List<Mark> random(Random random, int reach) {
    int centre = random.nextInt(2 * reach + 1) - reach;
    int spread = 1 + random.nextInt(reach);
    String unit = random.nextBoolean() ? "" : "kg";
    return IntStream.range(0, 2 + random.nextInt(5))
        .mapToObj(i -> randomMark(random, centre + random.nextInt(spread), unit))
        .toList();
  }

  private static Mark randomMark(Random random, int order, String unit) {
    BigDecimal figures =
        new BigDecimal(new BigInteger(1 + random.nextInt(40), random)).add(BigDecimal.ONE);
    BigDecimal value = figures.scaleByPowerOfTen(order - figures.precision() + 1);
    String label =
        Stream.generate(() -> "wordswords".substring(random.nextInt(10)))
            .limit(random.nextInt(9))
            .collect(Collectors.joining(" "));
    return new Mark(label, random.nextInt(6) == 0 ? value.negate() : value, unit);
  }

  /** No text touches another or leaves the picture; only below a halo may lines run through. */
  static void assertClean(Scene scene) {
    List<Shape.Text> texts = scene.texts().toList();
    Box picture = new Box(0, 0, scene.width(), scene.height());
    for (int i = 0; i < texts.size(); i++) {
      Shape.Text text = texts.get(i);
      assertTrue(picture.contains(text.box()), () -> text + " leaves the picture");
      for (Shape.Text other : texts.subList(i + 1, texts.size())) {
        assertFalse(text.box().overlaps(other.box()), () -> text + " overlaps " + other);
      }
      if (!text.style().halo()) {
        lines(scene).forEach(line -> assertApart(line, text));
      }
    }
    assertFalse(texts.isEmpty());
  }

  /** Clean, every text is large enough on a phone, and nothing that is drawn leaves the picture. */
  public static void assertReadable(Scene scene) {
    assertClean(scene);
    Box picture = new Box(0, 0, scene.width(), scene.height());
    scene
        .texts()
        .forEach(
            t -> assertTrue(t.style().size() * PHONE / scene.width() >= LEAST_SIZE, t::toString));
    all(scene, Shape.Rectangle.class).forEach(r -> assertTrue(picture.contains(r.box())));
    Stream.of(
            all(scene, Shape.Polygon.class).stream().flatMap(p -> p.points().stream()),
            all(scene, Shape.Curve.class).stream().flatMap(c -> c.points().stream()),
            all(scene, Shape.Facet.class).stream().flatMap(f -> f.points().stream()),
            all(scene, Shape.Discs.class).stream().flatMap(d -> d.centres().stream()),
            lines(scene).flatMap(l -> Stream.of(l.from(), l.to())))
        .flatMap(points -> points)
        .forEach(p -> assertTrue(picture.contains(new Box(p.x(), p.y(), 0, 0)), p::toString));
    assertFalse(scene.title().isBlank() || scene.alternative().isBlank());
  }

  private static Stream<Shape.Line> lines(Scene scene) {
    return scene.shapes().stream().filter(Shape.Line.class::isInstance).map(Shape.Line.class::cast);
  }

  private static void assertApart(Shape.Line line, Shape.Text text) {
    Box box = text.box();
    Rectangle2D area = new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height());
    Point from = line.from();
    Point to = line.to();
    assertFalse(
        area.intersectsLine(from.x(), from.y(), to.x(), to.y()),
        () -> line + " runs through " + text);
  }
}
