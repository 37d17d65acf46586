package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rule is the project's own (common practice, no source); the numbers are worked by hand. */
class ApproximationTest {
  @ParameterizedTest
  @CsvSource({
    "8.68E+12, nearly 9 trillion", // 3.6 % below
    "8.3E+12, just over 8 trillion", // 3.75 % above
    "9.03E+12, about 9 trillion", // 0.3 % above
    "1.4E+9, about 1.4 billion", // one figure would be off by 40 %
    "1.449E+9, just over 1.4 billion", // 3.5 % above two figures
    "9.96E+9, about 10 billion",
    "6.71E-8, nearly 70 billionths",
    "-8.68E+12, about −9 trillion",
    "0, about 0"
  })
  void aRoundNumberIsNamedByHowFarItIsOff(String value, String text) {
    assertEquals(text, Approximation.of(new BigDecimal(value)).text(Words.ENGLISH));
  }

  @ParameterizedTest
  @CsvSource({
    "1.4E+9, 1, between 1 billion and 2 billion",
    "8.68E+12, 2, about 8.7 trillion",
    "8.68E+12, 3, about 8.68 trillion"
  })
  void theFiguresCanBeAskedFor(String value, int figures, String text) {
    assertEquals(text, Approximation.of(new BigDecimal(value), figures).text(Words.ENGLISH));
  }

  @Test
  void theNumberIsAlwaysWhereItsWordSays() {
    Random random = new Random(7);
    for (int i = 0; i < 5000; i++) {
      BigDecimal value =
          new BigDecimal(new BigInteger(50, random).add(BigInteger.ONE), random.nextInt(60) - 30);
      Approximation near = Approximation.of(value, 1 + random.nextInt(2));
      double off = value.doubleValue() / near.round().doubleValue() - 1;
      assertTrue(
          switch (near.kind()) {
            case ABOUT -> Math.abs(off) <= 0.0101;
            case NEARLY -> off < 0 && off >= -0.1001;
            case JUST_OVER -> off > 0 && off <= 0.1001;
            case BETWEEN ->
                value.compareTo(near.round()) >= 0 && value.compareTo(near.upper()) <= 0;
          },
          value + " " + near);
    }
  }
}
