package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PowerOfTenTest {
  @ParameterizedTest
  @CsvSource({
    "8.7E+12, 8.7 × 10¹², 12",
    "602214076E+15, 6.022\u202f140\u202f76 × 10²³, 23",
    "-3.61E-47, \u22123.61 × 10⁻⁴⁷, -47",
    "999, 9.99 × 10², 2",
    "1000, 1.000 × 10³, 3",
    "1E+3, 1 × 10³, 3",
    "999.5, 9.995 × 10², 2",
    "0.02, 2 × 10⁻², -2",
    "1, 1, 0",
    "-5.0, \u22125.0, 0"
  })
  void hasAllFiguresAndTheFloorOfTheLogarithm(String value, String text, long order) {
    PowerOfTen form = PowerOfTen.of(new BigDecimal(value));
    assertEquals(text, form.text());
    assertEquals(order, form.exponent());
  }

  @Test
  void zeroHasNoOrderOfMagnitude() {
    PowerOfTen zero = PowerOfTen.of(new BigDecimal("0E+5"));
    assertEquals("0", zero.text());
    assertEquals(Double.NEGATIVE_INFINITY, zero.log10());
  }

  @Test
  void theLogarithmIsThatOfTheSize() {
    assertEquals(Math.log10(8.7e12), PowerOfTen.of(new BigDecimal("-8.7E+12")).log10(), 1e-12);
  }
}
