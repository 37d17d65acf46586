package plainscale.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.picture.Scenes.texts;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.magnitude.Writing;

class DotsTest {
  private static final Pattern COUNT = Pattern.compile("(\\d+) dots?\\b");

  private static Scene dots(String... numbers) {
    List<Mark> marks = Arrays.stream(numbers).map(n -> Scenes.mark("number", n, "")).toList();
    return Dots.of("", marks, Writing.USUAL);
  }

  /** The dots of each number that has any, without the one of the legend. */
  private static List<Integer> drawn(Scene scene) {
    return Scenes.all(scene, Shape.Discs.class).stream()
        .skip(1)
        .map(d -> d.centres().size())
        .toList();
  }

  private static List<Integer> said(String text) {
    return COUNT
        .matcher(text)
        .results()
        .map((MatchResult r) -> Integer.valueOf(r.group(1)))
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "412 | Each dot stands for 1. | 412",
        "1000 | Each dot stands for 1. | 1000",
        "1001 | Each dot stands for 10. | 100",
        "8.13E+23 | Each dot stands for 1\u00a0sextillion (10²¹). | 813",
        "9.996E+5 | Each dot stands for 1000. | 1000",
        "2.75 | Each dot stands for 0.01. | 275",
        "12.5 | Each dot stands for 0.1. | 125",
        "3.05E-16 | Each dot stands for 1\u00a0quintillionth (10⁻¹⁸). | 305",
        "1E+400 | Each dot stands for 1\u00a0×\u00a010³⁹⁸. | 100",
        "-7 | Each dot stands for 1. | 7"
      })
  void aDotStandsForAPowerOfTen(String number, String legend, int count) {
    Scene scene = dots(number);
    Scenes.assertReadable(scene);
    assertTrue(texts(scene).contains(legend), texts(scene).toString());
    assertEquals(List.of(count), drawn(scene));
  }

  @Test
  void thePictureHasAThousandDotsAtMostAndSaysHowMany() {
    Random random = new Random(63);
    for (int i = 0; i < 500; i++) {
      List<Mark> some = Scenes.random(random, 1 + random.nextInt(30));
      List<Mark> marks = some.subList(0, Math.min(some.size(), 1 + random.nextInt(3)));
      Scene scene = Dots.of("Dots " + i, marks, Writing.USUAL);
      Scenes.assertReadable(scene);
      List<Integer> drawn = drawn(scene);
      int all = drawn.stream().mapToInt(Integer::intValue).sum();
      assertTrue(all <= 1000 && all >= 1, () -> all + " dots");
      assertEquals(drawn, said(scene.alternative()));
      assertEquals(drawn, said(String.join(" ", texts(scene))));
    }
  }

  @Test
  void dotsAreInBlocksOfTenByTenApart() {
    List<Point> centres = Scenes.all(dots("345"), Shape.Discs.class).get(1).centres();
    assertEquals(345, centres.stream().distinct().count());
    double pitch = centres.get(1).x() - centres.get(0).x();
    double between = centres.get(100).x() - centres.get(9).x();
    assertEquals(pitch, centres.get(10).y() - centres.get(0).y(), 1e-9);
    assertTrue(between > 2 * pitch);
    assertEquals(10, centres.stream().limit(100).map(Point::x).distinct().count());
    assertEquals(10, centres.stream().limit(100).map(Point::y).distinct().count());
  }

  @Test
  void whatIsLessThanOneDotSaysSo() {
    String alternative = dots("4.2E+11", "8.1E+23").alternative();
    // 10²¹ / 4.2E+11 = 2.4E+9
    assertTrue(
        alternative.contains(
            "Less than one dot: it would take about 2.4 billion times as many for one."),
        alternative);
    assertTrue(texts(dots("0", "5")).contains("No dot: it is zero."));
  }

  @Test
  void roundingToWholeDotsIsSaidOnlyWhereThereIsAny() {
    assertTrue(texts(dots("1234", "5000")).contains("123 dots, rounded to whole dots."));
    assertTrue(texts(dots("1230", "5000")).contains("123 dots."));
    assertTrue(texts(dots("1")).contains("1 dot."));
  }

  @Test
  void threeLargeNumbersShareTheThousandDots() {
    assertEquals(List.of(90, 80, 70), drawn(dots("900", "800", "700")));
  }

  @Test
  void numbersKeepTheirOrderAndANegativeOneIsDrawnByItsSize() {
    Scene scene = dots("-20", "10");
    assertEquals(List.of(20, 10), drawn(scene));
    assertTrue(scene.alternative().contains("drawn by its size"));
  }

  @Test
  void refusesZeroAloneAndAnUnfitNumberOfMarks() {
    assertThrows(IllegalArgumentException.class, () -> dots("0", "0"));
    assertThrows(IllegalArgumentException.class, () -> dots());
    List<Mark> four = Collections.nCopies(4, Scenes.mark("a", "1", ""));
    assertThrows(IllegalArgumentException.class, () -> Dots.of("", four, Writing.USUAL));
  }
}
