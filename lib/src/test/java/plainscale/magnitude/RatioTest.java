package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RatioTest {
  static List<Fixture> rows() {
    return Fixture.rows("ratios.tsv", 6);
  }

  private static BigDecimal number(String text) {
    return new BigDecimal(text);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void hasTheFiguresAskedForInEitherOrder(Fixture row) {
    BigDecimal one = row.number("one");
    BigDecimal other = row.number("other");
    assertEquals(row.number("value"), Ratio.of(one, other, row.count("figures")).value());
    assertEquals(row.number("value"), Ratio.of(other, one, row.count("figures")).value());
  }

  static List<Fixture> roundings() {
    return Fixture.rows("rounding.tsv", 6);
  }

  @ParameterizedTest
  @MethodSource("roundings")
  void tiesGoToTheEvenDigit(Fixture row) {
    assertEquals(
        row.number("rounded"),
        Figures.quotient(row.number("value"), BigDecimal.ONE, row.count("figures")));
  }

  @Test
  void keepsTheFiguresOfTheLessPreciseNumber() {
    assertEquals(number("2.9E+28"), Ratio.of(number("8.7E+12"), number("3.05E-16")).value());
  }

  @Test
  void isWrittenInEveryForm() {
    Ratio ratio = Ratio.of(number("8.7E+12"), number("3.05E-16"));
    assertEquals("29 octillion", ratio.words(Words.ENGLISH).text());
    assertEquals("2.9 × 10²⁸", ratio.powerOfTen().text());
    assertEquals(29, ratio.digits(DigitStyle.SI).integerPlaces());
    assertEquals("about 28 orders of magnitude", ratio.ordersText());
    assertEquals(number("8.7E+12"), ratio.larger());
  }

  @ParameterizedTest
  @CsvSource({
    "3.1, less than one order of magnitude",
    "9.99, about 1 order of magnitude",
    "10, about 1 order of magnitude",
    "999, about 3 orders of magnitude"
  })
  void ordersAreCountedToTheNearest(String value, String text) {
    assertEquals(text, Ratio.of(number(value), BigDecimal.ONE, 3).ordersText());
  }

  @Test
  void zeroAndNumbersTooFarApartAreRefusedWithASentence() {
    assertThrows(IllegalArgumentException.class, () -> Ratio.of(BigDecimal.ZERO, BigDecimal.ONE));
    BigDecimal huge = new BigDecimal(java.math.BigInteger.ONE, Integer.MIN_VALUE);
    BigDecimal tiny = new BigDecimal(java.math.BigInteger.ONE, Integer.MAX_VALUE);
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> Ratio.of(huge, tiny));
    assertEquals("The two numbers are too far apart for a ratio.", refusal.getMessage());
  }
}
