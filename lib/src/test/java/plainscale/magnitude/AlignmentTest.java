package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class AlignmentTest {
  private static Alignment align(DigitStyle style, String... values) {
    return Alignment.of(Stream.of(values).map(v -> Digits.of(new BigDecimal(v), style)).toList());
  }

  private static List<String> texts(Alignment alignment) {
    return alignment.rows().stream().map(Alignment.Row::text).toList();
  }

  @Test
  void padsWithBlanksAsWideAsTheMissingDigits() {
    assertEquals(
        List.of("12\u202f345", "\u2007\u2007\u202f\u2007\u20071"),
        texts(align(DigitStyle.SI, "12345", "1")));
  }

  @Test
  void fourDigitsAreSpacedWhenTheColumnIs() {
    assertEquals(
        List.of("12\u202f345", "\u20071\u202f836"), texts(align(DigitStyle.SI, "12345", "1836")));
    assertEquals(List.of("1234", "\u2007836"), texts(align(DigitStyle.SI, "1234", "836")));
  }

  @Test
  void decimalsAndTheMarkerArePaddedOnTheRight() {
    assertEquals(
        List.of("12\u2008\u2007\u2007", "\u20073.45", "\u20070.05"),
        texts(align(DigitStyle.SI, "12", "3.45", "0.05")));
  }

  @Test
  void aSignTakesAColumn() {
    assertEquals(
        List.of("\u22121\u202f234\u202f567", "\u2007\u2007\u202f\u2007\u2007\u2007\u202f\u200712"),
        texts(align(DigitStyle.SI, "-1234567", "12")));
    assertEquals(
        List.of("\u2007123", "\u2007\u2007\u22125"), texts(align(DigitStyle.SI, "123", "-5")));
  }

  @Test
  void commasAndIndianGroupsAreCountedToo() {
    DigitStyle indian = DigitStyle.of(Locale.forLanguageTag("en-IN"));
    assertEquals(
        List.of("12,34,567", "\u2007\u2007\u2008\u20075,000"),
        texts(align(indian, "1234567", "5000")));
  }

  @Test
  void allRowsOfManyColumnsHaveOneWidthAndOnePlaceForTheMarker() {
    Random random = new Random(30);
    for (int i = 0; i < 2000; i++) {
      List<Digits> numbers =
          random
              .ints(2 + random.nextInt(5), 0, 60)
              .mapToObj(s -> new BigDecimal(new BigInteger(70, random), s - 30))
              .map(v -> Digits.of(random.nextBoolean() ? v : v.negate()))
              .toList();
      Alignment alignment = Alignment.of(numbers);
      assertEquals(1, alignment.rows().stream().map(AlignmentTest::shape).distinct().count());
    }
  }

  /**
   * Widths only: digits, signs and figure spaces are one thing, all narrow characters another. A
   * sign stands right before its number, so its room is put in front, where the blanks are.
   */
  private static String shape(Alignment.Row row) {
    String text = row.text();
    String unsigned = text.contains("\u2212") ? "0" + text.replace("\u2212", "") : text;
    return unsigned.replaceAll("[0-9\u2007]", "0").replaceAll("[.\u2008]", ".");
  }

  @Test
  void aNumberThatIsTooLongLeavesTheColumnUnaligned() {
    Alignment alignment = align(DigitStyle.SI, "1E+1000000000", "12345");
    assertFalse(alignment.aligned());
    assertEquals(List.of("1 × 10¹⁰⁰⁰⁰⁰⁰⁰⁰⁰", "12\u202f345"), texts(alignment));
  }

  @Test
  void refusesOneNumberSevenNumbersAndTwoStyles() {
    Digits one = Digits.of(BigDecimal.ONE);
    assertThrows(IllegalArgumentException.class, () -> Alignment.of(List.of(one)));
    assertThrows(IllegalArgumentException.class, () -> Alignment.of(Collections.nCopies(7, one)));
    Digits comma = Digits.of(BigDecimal.ONE, DigitStyle.SI_COMMA);
    assertThrows(IllegalArgumentException.class, () -> Alignment.of(List.of(one, comma)));
  }
}
