package plainscale.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static plainscale.quantity.Quantities.q;
import static plainscale.quantity.Quantities.text;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.units.UnitParser;

/** The school rules of significant figures: OpenStax College Physics 2e, section 1.3 (m42120). */
class FiguresTest {

  @ParameterizedTest
  @CsvSource({
    "2.0 m, 3.00 m, 6.0 m²",
    "2.00 m, 3.00 m, 6.00 m²",
    "50 m, 2.000 m, 100 m²",
    "0.050 m, 2.000 m, 0.10 m²",
    "3.0 m, 3.4 m, 10 m²",
    "9.9 m, 1.01 m, 10 m²",
    "0 m, 3.0 m, 0 m²"
  })
  void aProductHasAsManyFiguresAsTheFactorWithTheFewest(String x, String y, String product) {
    assertEquals(product, text(q(x).times(q(y))));
    assertEquals(product, text(q(y).times(q(x))));
  }

  @ParameterizedTest
  @CsvSource({
    "6.0 m, 3.00 s, 2.0 m/s",
    "1.000 m, 7.0 s, 0.14 m/s",
    "100 m, 8 s, 10 m/s",
    "2 m, 3 s, 0.7 m/s"
  })
  void aQuotientToo(String x, String y, String quotient) {
    assertEquals(quotient, text(q(x).over(q(y))));
  }

  @ParameterizedTest
  @CsvSource({
    "1.0 m, 0.25 m, 1.2 m",
    "12.3 m, 0.001 m, 12.3 m",
    "100.0 m, 0.4 m, 100.4 m",
    "1.00 m, 25 cm, 1.25 m",
    "1.000 m, 5 mm, 1.005 m",
    "9.9 m, 0.1 m, 10.0 m"
  })
  void aSumEndsWhereTheCoarserTermEnds(String x, String y, String sum) {
    assertEquals(sum, text(q(x).plus(q(y))));
  }

  @ParameterizedTest
  @CsvSource({
    "5.00 m, 4.98 m, 0.02 m",
    "2.96 eV, 2.71 eV, 0.25 eV",
    "5.0 m, 5.0 m, 0.0 m",
    "1.000 m, 0.9 m, 0.1 m",
    "1.0 m, 0.99 m, 0.0 m"
  })
  void aDifferenceMayKeepFewOrNone(String x, String y, String difference) {
    assertEquals(difference, text(q(x).minus(q(y))));
  }

  /** CP section 1.3: 7.56 kg − 6.052 kg + 13.7 kg = 15.2 kg, value from memory. */
  @Test
  void theBagOfPotatoes() {
    assertEquals("15.2 kg", text(q("7.56 kg").minus(q("6.052 kg")).plus(q("13.7 kg"))));
  }

  /** CP section 1.3: the area of a circle of radius 1.2 m is 4.5 m², value from memory. */
  @Test
  void exactNumbersDoNotLimit() {
    Quantity pi = q("3.14159265358979");
    assertEquals("4.5 m²", text(pi.times(q("1.2 m").power(q("2")))));
    assertEquals("1.35 m", text(q("0.5").times(q("2.70 m"))));
    assertEquals("3.70 m", text(q("2.70 m").plus(Quantities.exact("1", "m"))));
  }

  @ParameterizedTest
  @CsvSource({
    "30.0 °, SIN, 0.500",
    "30 °, SIN, 0.50",
    "5.0 °, TAN, 0.087",
    "5.0 °, COS, 0.9962",
    "89.0 °, TAN, 57"
  })
  void aFunctionKeepsWhatTheLastDigitOfItsArgumentMoves(
      String x, ElementaryFunction f, String value) {
    assertEquals(value, text(q(x).apply(f)));
  }

  @ParameterizedTest
  @CsvSource({"2.0 m^2, 1.4 m", "2.000 m^2, 1.414 m", "0.25 m^2, 0.50 m"})
  void aRootKeepsTheNumberOfFigures(String x, String root) {
    assertEquals(root, text(q(x).apply(ElementaryFunction.SQRT)));
    assertEquals(root, text(q(x).power(q("0.5"))));
  }

  @ParameterizedTest
  @CsvSource({"1.50 m, cm, 150 cm", "25 mm, m, 0.025 m", "90 km/h, m/s, 25 m/s"})
  void anotherUnitKeepsTheFigures(String x, String unit, String shown) {
    assertEquals(shown, text(q(x).in(UnitParser.parse(unit))));
  }

  @ParameterizedTest
  @CsvSource({
    "2.70±0.05 g, 3.0 m/s, 8.1±0.2 g",
    "2.70±0.05 g, 3 m/s, 8 g",
    "2.7000±0.0005 g, 3.00 m/s, 8.10 g"
  })
  void writtenFiguresLimitAnUncertainResultToo(String x, String y, String product) {
    Quantity momentum = q(x).times(q(y));
    Quantity inGrams = momentum.over(Quantities.exact("1", "m/s"));
    assertEquals(product, text(inGrams.in(UnitParser.parse("g"))));
  }
}
