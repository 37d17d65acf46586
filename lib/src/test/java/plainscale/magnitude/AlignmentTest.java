package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AlignmentTest {
  private static Alignment align(DigitStyle style, String... values) {
    return Alignment.of(Stream.of(values).map(v -> Digits.of(new BigDecimal(v), style)).toList());
  }

  /** Each number's lines, the two sides of the decimal marker parted by a bar, gaps as spaces. */
  private static List<List<String>> texts(Alignment alignment) {
    return alignment.rows().stream()
        .map(row -> row.lines().stream().map(AlignmentTest::text).toList())
        .toList();
  }

  private static String text(Alignment.Line line) {
    return (Run.text(line.whole()) + "|" + Run.text(line.part())).replace('\u202f', ' ');
  }

  @Test
  void theSidesOfTheMarkerArePartedAndTheirWidthsKnown() {
    Alignment alignment = align(DigitStyle.SI, "12", "3.45", "0.05");
    assertEquals(List.of(List.of("12|"), List.of("3|.45"), List.of("0|.05")), texts(alignment));
    assertEquals(2, alignment.wholeWidth());
    assertEquals(3, alignment.partWidth());
  }

  @Test
  void fourDigitsAreSpacedWhenTheColumnIs() {
    assertEquals(
        List.of(List.of("12 345|"), List.of("1 836|")),
        texts(align(DigitStyle.SI, "12345", "1836")));
    assertEquals(
        List.of(List.of("1234|"), List.of("836|")), texts(align(DigitStyle.SI, "1234", "836")));
  }

  @Test
  void commasAndIndianGroupsAreKept() {
    DigitStyle indian = DigitStyle.of(Locale.forLanguageTag("en-IN"));
    assertEquals(
        List.of(List.of("12,34,567|"), List.of("5,000|")), texts(align(indian, "1234567", "5000")));
  }

  @Test
  void aLongNumberIsBrokenAtTheSamePowerOfTenAsTheOthers() {
    String group = " 000".repeat(9);
    assertEquals(
        List.of(List.of("2 270 000 000|", "000" + group + "|"), List.of("999" + group + "|")),
        texts(align(DigitStyle.SI, "2.27E+39", "9.99E+29")));
  }

  @Test
  void aSmallNumberGoesOnBelowItsDecimals() {
    String group = " 000".repeat(9);
    assertEquals(
        List.of(List.of("0|.000" + group, "|000 000 000 000 000 036 1")),
        texts(align(DigitStyle.SI, "3.61E-47")));
  }

  @Test
  void whereBothSidesAreLongALineHasFifteenDigitsOnEach() {
    assertEquals(
        List.of(
            List.of("123 000|", "000 000 000 000 000|"),
            List.of("0|.000 000 000 000 000", "|000 045 6")),
        texts(align(DigitStyle.SI, "1.23E+20", "4.56E-20")));
  }

  @Test
  void indianGroupsAreNotTornApart() {
    DigitStyle indian = DigitStyle.of(Locale.forLanguageTag("en-IN"));
    List<String> lines = texts(align(indian, "1E+31")).get(0);
    assertEquals(2, lines.size());
    assertEquals("1,00|", lines.get(0));
    assertTrue(lines.get(1).startsWith("00,00,") && lines.get(1).endsWith(",000|"), lines.get(1));
  }

  @ParameterizedTest
  @ValueSource(strings = {"SI", "en-US", "en-IN", "de", "fr", "es"})
  void noDigitIsLostAndEveryLineIsShortForManyColumns(String tag) {
    DigitStyle style = tag.equals("SI") ? DigitStyle.SI : DigitStyle.of(Locale.forLanguageTag(tag));
    Random random = new Random(30);
    for (int i = 0; i < 500; i++) {
      List<Digits> numbers =
          random
              .ints(1 + random.nextInt(6), -60, 60)
              .mapToObj(s -> new BigDecimal(new BigInteger(70, random), s))
              .map(v -> Digits.of(random.nextBoolean() ? v : v.negate(), style))
              .toList();
      Alignment alignment = Alignment.of(numbers);
      for (int k = 0; k < numbers.size(); k++) {
        List<String> lines = texts(alignment).get(k);
        assertEquals(digits(numbers.get(k).text()), digits(String.join("", lines)));
        assertTrue(lines.stream().allMatch(l -> digits(l).length() <= 34), lines::toString);
      }
    }
  }

  private static String digits(String text) {
    return text.replaceAll("[^0-9]", "");
  }

  @Test
  void aNumberThatIsTooLongLeavesTheColumnUnaligned() {
    Alignment alignment = align(DigitStyle.SI, "1E+1000000000", "12345");
    assertFalse(alignment.aligned());
    assertEquals(List.of("1 × 10¹⁰⁰⁰⁰⁰⁰⁰⁰⁰|"), texts(alignment).get(0));
  }

  @Test
  void refusesNoNumberSevenNumbersAndTwoStyles() {
    Digits one = Digits.of(BigDecimal.ONE);
    assertThrows(IllegalArgumentException.class, () -> Alignment.of(List.of()));
    assertThrows(IllegalArgumentException.class, () -> Alignment.of(Collections.nCopies(7, one)));
    Digits comma = Digits.of(BigDecimal.ONE, DigitStyle.SI_COMMA);
    assertThrows(IllegalArgumentException.class, () -> Alignment.of(List.of(one, comma)));
  }
}
