package plainscale.picture.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.magnitude.Writing;
import plainscale.picture.Box;
import plainscale.picture.Point;
import plainscale.picture.Scene;
import plainscale.picture.Scenes;
import plainscale.picture.Shade;
import plainscale.picture.Shape;
import plainscale.picture.Stroke;
import plainscale.picture.SvgWriter;
import plainscale.picture.Symbol;

/** Axes, ticks and series. */
class PlotTest {
  private static List<String> labels(Axis axis, Writing writing) {
    return axis.ticks(6, writing).stream().map(Axis.Tick::label).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "1, 10, 10",
    "6, 10, 2",
    "5, 10, 2",
    "3, 10, 5",
    "6, 0.0031, 0.001",
    "10, 1, 0.1",
    "7, 7E+20, 1E+20"
  })
  void stepsAreOneTwoOrFiveTimesAPowerOfTen(int pieces, double length, String step) {
    assertEquals(0, Steps.atMost(pieces, length).compareTo(new BigDecimal(step)));
  }

  @Test
  void thereAreNeverMoreTicksThanAreAskedForAndThree() {
    Random random = new Random(7);
    for (int i = 0; i < 2000; i++) {
      double low = random.nextGaussian() * Math.pow(10, random.nextInt(20) - 10);
      double length = Math.pow(10, 20 * random.nextDouble() - 10) + Math.abs(low) * 1e-6;
      Axis axis = new Axis("x", low, low + length, false);
      int ticks = axis.ticks(6, Writing.USUAL).size();
      assertTrue(ticks >= 2 && ticks <= 7, axis + ": " + ticks);
    }
  }

  @Test
  void numbersAreWrittenInTheLocale() {
    Axis axis = new Axis("x", 0, 2500, false);
    assertEquals(List.of("0", "500", "1000", "1500", "2000", "2500"), labels(axis, Writing.USUAL));
    Axis small = new Axis("x", 0, 1, false);
    assertEquals("0,2", labels(small, Writing.of(Locale.GERMANY).orElseThrow()).get(1));
  }

  @Test
  void manyDigitsBecomeAPowerOfTen() {
    Axis axis = new Axis("x", 0, 5e9, false);
    assertEquals("2\u00a0×\u00a010⁹", labels(axis, Writing.USUAL).get(2));
  }

  @Test
  void onALogarithmicAxisEqualRatiosAreEqualDistances() {
    Axis axis = Axis.logarithmic("x", DoubleStream.of(3, 3000));
    assertEquals(axis.at(100) - axis.at(10), axis.at(1000) - axis.at(100), 1e-12);
    assertTrue(axis.at(3) > 0 && axis.at(3000) < 1);
    assertTrue(labels(axis, Writing.USUAL).containsAll(List.of("5", "100", "2000")));
  }

  @Test
  void anAxisOfOneNumberOrOfZeroStillHasALength() {
    for (double only : new double[] {0, 5, -3e-20, 1e30}) {
      Axis axis = Axis.linear("x", DoubleStream.of(only));
      assertTrue(axis.low() < only && only < axis.high(), axis::toString);
      assertTrue(axis.ticks(6, Writing.USUAL).size() >= 2, axis::toString);
    }
  }

  private static List<Series> random(Random random) {
    double size = Math.pow(10, 30 * random.nextDouble() - 15);
    List<Series.Spot> spots =
        IntStream.range(0, 1 + random.nextInt(30))
            .mapToObj(
                i ->
                    new Series.Spot(
                        random.nextGaussian() * size,
                        random.nextGaussian() / size,
                        random.nextDouble() * size / 9,
                        random.nextDouble() / size))
            .toList();
    List<Series.Mark> marks = List.of(Series.Mark.values());
    Series.Mark mark = marks.get(random.nextInt(marks.size()));
    return List.of(
        new Series.Points("measured", spots, mark),
        new Series.Curve("model", spots, Stroke.dashed(Shade.INK, 2)),
        new Series.Level("mean", spots.get(0).y(), false, Stroke.dotted(Shade.INK, 2)));
  }

  static List<List<Series>> many() {
    Random random = new Random(3);
    return IntStream.range(0, 60).mapToObj(i -> random(random)).toList();
  }

  private static Axis across(List<Series> series) {
    return Axis.linear(Symbol.of("d_1") + "/cm", series.stream().flatMapToDouble(Series::across));
  }

  private static Axis up(List<Series> series) {
    return Axis.linear(Symbol.of("q") + "/nC", series.stream().flatMapToDouble(Series::up));
  }

  private static Scene scene(List<Series> series) {
    List<Plot.Panel> panels = List.of(new Plot.Panel(up(series), 200, series));
    return Plot.of("", across(series), panels, List.of("A note."), "Told.", Writing.USUAL);
  }

  @ParameterizedTest
  @MethodSource("many")
  void plotsAreReadable(List<Series> series) {
    Scenes.assertReadable(scene(series));
  }

  @Test
  void pointsStandWhereTheirNumbersSay() {
    List<Series.Spot> spots = List.of(new Series.Spot(0, 0), new Series.Spot(10, 4));
    List<Series> series = List.of(new Series.Points("", spots, Series.Mark.DISC));
    Axis across = new Axis("x", 0, 10, false);
    Axis up = new Axis("y", 0, 8, false);
    Scene scene =
        Plot.of("", across, List.of(new Plot.Panel(up, 100, series)), List.of(), "", Writing.USUAL);
    List<Point> places = Scenes.all(scene, Shape.Discs.class).get(0).centres();
    assertEquals(50, places.get(0).y() - places.get(1).y(), 1e-9);
    List<Shape.Line> axes =
        Scenes.all(scene, Shape.Line.class).stream()
            .filter(line -> line.stroke().shade() == Shade.INK)
            .toList();
    assertEquals(axes.get(0).from().x(), places.get(0).x(), 1e-9);
    assertEquals(axes.get(1).to().x(), places.get(1).x(), 1e-9);
  }

  @Test
  void aCurveIsCutWhereItLeavesTheArea() {
    List<Series.Spot> spots =
        IntStream.rangeClosed(-50, 50)
            .mapToObj(i -> new Series.Spot(i / 10.0, Math.pow(i / 10.0, 3)))
            .toList();
    Series curve = new Series.Curve("", spots, Stroke.solid(Shade.INK, 2));
    Area area =
        new Area(new Axis("x", -5, 5, false), new Axis("y", -8, 8, false), new Box(0, 0, 100, 160));
    List<Shape> pieces = curve.accept(new SeriesShapes(area));
    assertEquals(1, pieces.size());
    List<Point> points = ((Shape.Curve) pieces.get(0)).points();
    assertEquals(160, points.get(0).y(), 1e-6);
    assertEquals(30, points.get(0).x(), 0.2);
    assertEquals(0, points.get(points.size() - 1).y(), 1e-6);
  }

  @Test
  void aSymbolIsItalicAndItsIndexLowered() {
    String svg = SvgWriter.write(scene(many().get(0)));
    assertTrue(
        svg.contains("<tspan font-style=\"italic\">d</tspan><tspan baseline-shift=\"sub\""), svg);
    assertFalse(svg.chars().anyMatch(c -> c >= '\uE000' && c <= '\uF8FF'));
    assertEquals("d 1/cm", Symbol.spoken(Symbol.of("d_1") + "/cm"));
  }

  @Test
  void barsNeedOneEdgeMore() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new Series.Bars("", List.of(1.0, 2.0), List.of(3.0, 4.0)));
  }

  @Test
  void seriesDifferWithoutColour() {
    long kinds =
        List.of(Series.Mark.values()).stream()
            .map(mark -> SeriesShapes.marks(List.of(new Point(0, 0)), mark).toString())
            .distinct()
            .count();
    assertEquals(Series.Mark.values().length, kinds);
  }
}
