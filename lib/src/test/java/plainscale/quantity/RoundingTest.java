package plainscale.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static plainscale.quantity.Quantities.exact;
import static plainscale.quantity.Quantities.q;
import static plainscale.quantity.Quantities.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.units.UnitOfMeasure;

class RoundingTest {

  /**
   * Particle Data Group, Review of Particle Physics, introduction 5.3, and two examples as its rule
   * is applied in the tests of the Python package uncertainties.
   */
  @ParameterizedTest
  @CsvSource({
    "1.2345, 0.100, 1.23±0.10",
    "1.2345, 0.354, 1.23±0.35",
    "1.2345, 0.355, 1.2±0.4",
    "1.2345, 0.09499, 1.23±0.09",
    "1.2345, 0.095, 1.23±0.10",
    "1.2345, 0.949, 1.2±0.9",
    "1.2345, 0.950, 1.2±1.0",
    "1.2345, 0.999, 1.2±1.0",
    "12.2135, 0.03215, 12.214±0.032",
    "12.2135, 0.06515, 12.21±0.07",
    "827, 119, 830±120",
    "827, 367, 800±400",
    "0.827, 0.119, 0.83±0.12",
    "0.827, 0.367, 0.8±0.4",
    "0, 0.0123, 0.000±0.012",
    "-5, 1, -5.0±1.0",
    "3.1e20, 4e18, 310000000000000000000±4000000000000000000"
  })
  void theUncertaintyDecidesByItsFirstThreeDigits(String value, String u, String shown) {
    BigDecimal number = new BigDecimal(value);
    Quantity measured = Quantity.measured("x", number, new BigDecimal(u), UnitOfMeasure.ONE);
    assertEquals(shown, text(measured.times(Quantity.number(BigDecimal.ONE))));
  }

  /** JCGM 100:2008, 7.2.6: an output estimate of 10.057 62 Ω with u = 27 mΩ. */
  @Test
  void anEstimateIsRoundedToItsUncertainty() {
    assertEquals("10.058±0.027 Ω", text(q("10.05762±0.027 Ω")));
  }

  /** JCGM 100:2008, 7.2.2, value from memory: 100.021 47 g with u = 0.35 mg. */
  @Test
  void whatWasWrittenToOnePlaceStaysAsWritten() {
    assertEquals("100.02147±0.00035 g", text(q("100.02147±0.00035 g")));
    assertEquals("2.700±0.500 g", text(q("2.700±0.500 g")));
  }

  /** ISO 80000-1:2009, B.2 and B.3 (rule A); values from memory. */
  @ParameterizedTest
  @CsvSource({
    "12.223, 3, 12.2",
    "12.251, 3, 12.3",
    "12.275, 3, 12.3",
    "12.25, 3, 12.2",
    "12.35, 3, 12.4",
    "1225.0, 3, 1220",
    "1235.0, 3, 1240",
    "-12.25, 3, -12.2",
    "0.5, 1, 0.5",
    "2.5, 1, 2",
    "3.5, 1, 4",
    "9.96, 2, 10",
    "99.95, 3, 100",
    "0.000995, 2, 0.0010",
    "26.55, 3, 26.6",
    "735.49875, 7, 735.4988",
    "7, 3, 7.00",
    "0, 3, 0.00"
  })
  void tiesGoToTheEvenDigit(String value, int figures, String shown) {
    assertEquals(shown, exact(value, "m").shown(figures).value().toPlainString());
  }

  @Test
  void roundingAgreesWithDecimalArithmetic() {
    Random random = new Random(3);
    for (int i = 0; i < 2000; i++) {
      BigDecimal value = BigDecimal.valueOf(1 + random.nextInt(999_999), random.nextInt(12));
      int figures = 1 + random.nextInt(8);
      BigDecimal expected = value.round(new MathContext(figures, RoundingMode.HALF_EVEN));
      Shown shown = Quantity.number(value).shown(figures);
      assertEquals(0, expected.compareTo(shown.value()), value + " to " + figures);
      assertEquals(figures, shown.value().precision(), value + " to " + figures);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "2.70±0.05 g, 2, 2.7 g",
    "2.70±0.05 g, 4, 2.700±0.050 g",
    "14.00±0.28 cm, 3, 14.0±0.3 cm",
    "123.4 m, 2, 120 m",
    "123.4 m, 6, 123.400 m"
  })
  void askingForFiguresOverrides(String quantity, int figures, String shown) {
    String text = text(q(quantity).shown(figures));
    assertEquals(shown, text);
  }

  @Test
  void whatAFunctionGivesIsShownToSixFiguresUnlessItIsShort() {
    assertEquals("0.342020", text(exact("20", "°").apply(ElementaryFunction.SIN)));
    assertEquals("0.693147", text(q("2").apply(ElementaryFunction.LN)));
    assertEquals("0.5", text(exact("30", "°").apply(ElementaryFunction.SIN)));
    assertEquals("1.41421", text(q("2").apply(ElementaryFunction.SQRT)));
    assertEquals("1.12", text(q("1.2544").apply(ElementaryFunction.SQRT)));
  }

  @ParameterizedTest
  @CsvSource({
    "1, 3, 0.333333",
    "1, 4, 0.25",
    "2, 3, 0.666667",
    "1, 7, 0.142857",
    "10, 1, 10",
    "123456, 1, 123456",
    "1, 1024, 0.0009765625",
    "8, 2, 4"
  })
  void anExactNumberIsShownWholeOrToSixFigures(String x, String y, String shown) {
    assertEquals(shown, text(q(x).over(q(y))));
  }
}
