package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Numbers whose full digits would fill the memory: every form answers with a short text. */
class HostileNumbersTest {
  private static final int SHORT = 60;

  static List<BigDecimal> numbers() {
    return Stream.of(
            new BigDecimal(BigInteger.valueOf(87), -1_000_000_000),
            new BigDecimal(BigInteger.valueOf(87), 1_000_000_000),
            new BigDecimal(BigInteger.valueOf(-87), Integer.MIN_VALUE),
            new BigDecimal(BigInteger.valueOf(-87), Integer.MAX_VALUE),
            new BigDecimal(BigInteger.ZERO, 1_000_000_000),
            new BigDecimal(BigInteger.ZERO, Integer.MIN_VALUE),
            new BigDecimal(BigInteger.ONE.shiftLeft(100_000), 7))
        .toList();
  }

  // The usual name of a case would write the number out.
  @ParameterizedTest(name = "number {index}")
  @MethodSource("numbers")
  void everyFormIsShort(BigDecimal number) {
    Magnitude magnitude = new Magnitude(number);
    for (String text :
        List.of(
            magnitude.digits().text(),
            magnitude.words().text(),
            magnitude.spelled().text(),
            magnitude.powerOfTen().text())) {
      assertTrue(text.length() <= SHORT, text);
    }
    assertEquals(number.signum() == 0, magnitude.digits().full());
    assertEquals(Prefix.NONE, magnitude.prefix());
    assertTrue(magnitude.perspective().isEmpty());
  }

  @Test
  void theFallbackNamesThePower() {
    Magnitude magnitude = new Magnitude(new BigDecimal(BigInteger.valueOf(87), -1_000_000_000));
    assertEquals("8.7 × 10¹⁰⁰⁰⁰⁰⁰⁰⁰¹", magnitude.digits().text());
    assertEquals("8.7E+1000000001", magnitude.digits().plain());
    assertEquals("8.7 × 10¹⁰⁰⁰⁰⁰⁰⁰⁰¹", magnitude.words().text());
  }

  @Test
  void theRatioOfTheVeryLargeAndTheVerySmallIsAPowerOfTen() {
    Magnitude large = new Magnitude(new BigDecimal("8.7E+1000000000"));
    Ratio ratio = large.ratio(new Magnitude(new BigDecimal("3E-1000000000")));
    assertEquals("3 × 10²⁰⁰⁰⁰⁰⁰⁰⁰⁰", ratio.words(Words.ENGLISH).text());
    assertEquals("about 2,000,000,000 orders of magnitude", ratio.ordersText());
  }

  @Test
  void aMonstrousMantissaIsCutVisibly() {
    BigDecimal value = new BigDecimal("1." + "3".repeat(100_000));
    assertEquals("1.333\u202f333\u202f333\u202f33…", PowerOfTen.of(value).text());
    assertEquals("1.333\u202f333\u202f333\u202f33…", Digits.of(value).text());
  }
}
