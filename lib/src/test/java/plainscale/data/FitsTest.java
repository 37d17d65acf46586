package plainscale.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.quantity.Quantity;

class FitsTest {

  /** F. J. Anscombe, Graphs in Statistical Analysis, The American Statistician 27 (1973) 17–21. */
  @ParameterizedTest
  @CsvSource({
    "10 8 13 9 11 14 6 4 12 7 5,8.04 6.95 7.58 8.81 8.33 9.96 7.24 4.26 10.84 4.82 5.68",
    "10 8 13 9 11 14 6 4 12 7 5,9.14 8.14 8.74 8.77 9.26 8.10 6.13 3.10 9.13 7.26 4.74",
    "10 8 13 9 11 14 6 4 12 7 5,7.46 6.77 12.74 7.11 7.81 8.84 6.08 5.39 8.15 6.42 5.73",
    "8 8 8 8 8 8 8 19 8 8 8,6.58 5.76 7.71 8.84 8.47 7.04 5.25 12.50 5.56 7.91 6.89",
  })
  void fourSetsWithOneLine(String x, String y) {
    Fit fit = Fits.line(Tables.points(x, y));
    assertEquals(3.0, fit.parameter("b").value(), 0.005);
    assertEquals(0.5, fit.parameter("m").value(), 0.0005);
    assertEquals(0.118, fit.parameter("m").standard().orElseThrow(), 0.0005);
    assertEquals(0.667, fit.quality().rSquared().orElseThrow(), 0.001);
    double squares = 9 * Math.pow(fit.quality().deviation().orElseThrow(), 2);
    assertEquals(13.75, squares, 0.03);
    Statistics ofX = Statistics.of(Sample.of(Tables.plain("x", x)));
    assertEquals(new BigDecimal("9"), ofX.mean());
    assertEquals(Math.sqrt(11), ofX.deviation().orElseThrow(), 1e-14);
  }

  /** Doubles leave 10⁻¹⁷ of 1.2; that is no scatter of a measurement. */
  @Test
  void pointsOnALineLeaveNoDust() {
    Fit fit = Fits.line(Tables.points("20.0 25.0 30.0", "1.0 1.2 1.4"));
    assertEquals(0, fit.quality().deviation().orElseThrow());
    assertEquals(
        0, new BigDecimal("0.04").compareTo(fit.parameter("m").quantity().value()), fit::toString);
    assertEquals(0, fit.parameter("m").quantity().uncertainty().standard());
  }

  private static Points pearson() {
    double[] weightsX = {1000, 1000, 500, 800, 200, 80, 60, 20, 1.8, 1};
    double[] weightsY = {1, 1.8, 4, 8, 20, 20, 70, 70, 100, 500};
    return Points.of(
        Tables.column("x", "1", "0.0 0.9 1.8 2.6 3.3 4.4 5.2 6.1 6.5 7.4", uncertainties(weightsX)),
        Tables.column(
            "y", "1", "5.9 5.4 4.4 4.6 3.5 3.7 2.8 2.8 2.4 1.5", uncertainties(weightsY)));
  }

  private static String uncertainties(double[] weights) {
    StringBuilder text = new StringBuilder();
    for (double weight : weights) {
      text.append(1 / Math.sqrt(weight)).append(' ');
    }
    return text.toString();
  }

  /**
   * Pearson's data (1901) with York's weights (1966). Slope and intercept: G. Neri and others,
   * Journal of Physics E 22 (1989) 215; with their uncertainties and χ²: D. York and others,
   * American Journal of Physics 72 (2004) 367, table II, whose percentages give 0.29497 and
   * 0.05799.
   */
  @Test
  void yorksLine() {
    Fit fit = Fits.line(pearson(), Weighting.BOTH);
    assertEquals(-0.480533407, fit.parameter("m").value(), 5e-10);
    assertEquals(5.47991022, fit.parameter("b").value(), 5e-9);
    assertEquals(0.05799, fit.parameter("m").standard().orElseThrow(), 1e-5);
    assertEquals(0.29497, fit.parameter("b").standard().orElseThrow(), 1e-5);
    ChiSquare chi = fit.quality().chiSquare().orElseThrow();
    assertEquals(1.4833, chi.reduced().orElseThrow(), 5e-5);
    double birge = chi.birge().orElseThrow();
    assertEquals(
        birge * fit.parameter("m").standard().orElseThrow(),
        fit.widened().parameter("m").standard().orElseThrow(),
        1e-12);
  }

  /** With the axes exchanged York's line is the same one (2004, section III). */
  @Test
  void yorksLineHasNoPreferredAxis() {
    Points points = pearson();
    Fit fit = Fits.line(points, Weighting.BOTH);
    NumberColumn x = column(points, true);
    NumberColumn y = column(points, false);
    Fit exchanged = Fits.line(Points.of(y, x), Weighting.BOTH);
    assertEquals(1 / fit.parameter("m").value(), exchanged.parameter("m").value(), 1e-11);
    Quantity zero = fit.parameter("b").quantity().over(fit.parameter("m").quantity()).negate();
    assertEquals(exchanged.parameter("b").value(), zero.value().doubleValue(), 1e-10);
    assertEquals(
        exchanged.parameter("b").standard().orElseThrow(), zero.uncertainty().standard(), 1e-10);
  }

  private static NumberColumn column(Points points, boolean x) {
    StringBuilder values = new StringBuilder();
    StringBuilder standards = new StringBuilder();
    double[] of = x ? points.standardsOfX() : points.standardsOfY();
    for (int i = 0; i < points.count(); i++) {
      values.append(x ? points.x(i) : points.y(i)).append(' ');
      standards.append(of[i]).append(' ');
    }
    return Tables.column(x ? "x" : "y", "1", values.toString(), standards.toString());
  }

  /** The band is what the quantities of slope and intercept give together. */
  @ParameterizedTest
  @EnumSource(Weighting.class)
  void slopeAndInterceptKeepTheirCorrelation(Weighting weighting) {
    Fit fit = Fits.line(pearson(), weighting);
    Quantity b = fit.parameter("b").quantity();
    Quantity m = fit.parameter("m").quantity();
    assertEquals(
        fit.spread().correlation(0, 1), b.uncertainty().correlation(m.uncertainty()), 1e-12);
    for (double x : new double[] {-10, 0, 3.8, 5, 100}) {
      Quantity y = b.plus(m.times(Quantity.number(BigDecimal.valueOf(x))));
      assertEquals(fit.at(x), y.value().doubleValue(), 1e-12 * (1 + Math.abs(fit.at(x))));
      assertEquals(fit.standardAt(x), y.uncertainty().standard(), 1e-12 * fit.standardAt(x));
    }
  }

  @Test
  void unitsOfTheParameters() {
    NumberColumn t = Tables.column("t", "s", "1 2 3 4");
    Fit fall = Fits.line(Points.of(t, Tables.column("d", "cm", "5.1 6.9 9.1 10.9")));
    assertEquals("cm", fall.parameter("b").unit().text());
    assertEquals("cm/s", fall.parameter("m").unit().text());
    assertEquals(0.0196, fall.parameter("m").quantity().value().doubleValue(), 1e-12);
    assertEquals(
        fall.parameter("m").standard().orElseThrow() / 100,
        fall.parameter("m").quantity().uncertainty().standard(),
        1e-15);
    NumberColumn d = Tables.column("d", "cm", "1 2 3 4");
    assertEquals("", Fits.line(Points.of(d, d)).parameter("m").unit().text());
    Points decay = Points.of(t, Tables.column("N", "1/min", "800 390 205 99"));
    assertEquals("1/s", Fits.exponential(decay, Weighting.NONE).parameter("b").unit().text());
    assertEquals("1/min", Fits.exponential(decay, Weighting.NONE).parameter("a").unit().text());
    assertEquals("", Fits.power(decay, Weighting.NONE).parameter("p").unit().text());
  }

  @Test
  void temperatureScalesHaveSlopesInKelvins() {
    NumberColumn t = Tables.column("t", "s", "0 1 2");
    Fit warm = Fits.line(Points.of(t, Tables.column("T", "°F", "32.0 50.0 68.0")));
    assertEquals("K/s", warm.parameter("m").unit().text());
    assertEquals(10, warm.parameter("m").value(), 1e-12);
    assertEquals("°F", warm.parameter("b").unit().text());
    assertEquals(273.15, warm.parameter("b").quantity().value().doubleValue(), 1e-10);
    NumberColumn scale = Tables.column("T", "°C", "10 20 30");
    DataException e =
        assertThrows(
            DataException.class, () -> Fits.proportional(Points.of(scale, t), Weighting.NONE));
    assertEquals(List.of("write the column in K"), e.repairs());
    assertThrows(DataException.class, () -> Fits.power(Points.of(scale, t), Weighting.NONE));
  }

  @Test
  void twoPointsLeaveNoUncertaintyToTell() {
    Fit fit = Fits.line(Tables.points("1 3", "2 6"));
    assertEquals(2, fit.parameter("m").value(), 1e-14);
    assertEquals(OptionalDouble.empty(), fit.parameter("m").standard());
    assertEquals(0, fit.parameter("m").quantity().uncertainty().standard());
    assertEquals(0, fit.quality().freedom());
    assertEquals(OptionalDouble.empty(), fit.quality().deviation());
  }

  @Test
  void twoPointsGiveAPowerAndAnExponential() {
    Fit power = Fits.power(Tables.points("1 2", "3 12"), Weighting.NONE);
    assertEquals(3, power.parameter("a").value(), 1e-12);
    assertEquals(2, power.parameter("p").value(), 1e-12);
    assertEquals(OptionalDouble.empty(), power.parameter("p").standard());
    Fit exponential = Fits.exponential(Tables.points("0 1", "3 6"), Weighting.NONE);
    assertEquals(Math.log(2), exponential.parameter("b").value(), 1e-12);
  }

  @Test
  void aFlatLineHasNoRSquared() {
    Fit fit = Fits.line(Tables.points("1 2 3", "5 5 5"));
    assertEquals(0, fit.parameter("m").value());
    assertEquals(OptionalDouble.empty(), fit.quality().rSquared());
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-30, 1e-10, 1, 1e10, 1e30})
  void sizesDoNotMatter(double size) {
    String x = scaled(size, 1.0, 2.0, 3.0, 4.0, 5.0);
    String y = scaled(1 / size, 2.1, 3.9, 6.2, 7.8, 10.1);
    Fit fit = Fits.line(Tables.points(x, y));
    Fit plain = Fits.line(Tables.points("1 2 3 4 5", "2.1 3.9 6.2 7.8 10.1"));
    double slope = plain.parameter("m").value() / size / size;
    assertEquals(slope, fit.parameter("m").value(), 1e-13 * slope);
    double u = plain.parameter("m").standard().orElseThrow() / size / size;
    assertEquals(u, fit.parameter("m").standard().orElseThrow(), 1e-12 * u);
    double rSquared = plain.quality().rSquared().orElseThrow();
    assertEquals(rSquared, fit.quality().rSquared().orElseThrow(), 1e-14);
    Fit power = Fits.power(Tables.points(x, y), Weighting.NONE);
    Fit plainPower = Fits.power(Tables.points("1 2 3 4 5", "2.1 3.9 6.2 7.8 10.1"), Weighting.NONE);
    assertEquals(plainPower.parameter("p").value(), power.parameter("p").value(), 1e-9);
  }

  private static String scaled(double size, double... values) {
    StringBuilder text = new StringBuilder();
    for (double value : values) {
      BigDecimal scaled = BigDecimal.valueOf(value).multiply(BigDecimal.valueOf(size));
      text.append(scaled).append(' ');
    }
    return text.toString();
  }

  /** A common part of 10¹² costs no digits: the differences are taken in decimals. */
  @Test
  void aLargeCommonPartCostsNothing() {
    Fit fit =
        Fits.line(
            Tables.points(
                "1000000000000.1 1000000000000.2 1000000000000.3 1000000000000.4",
                "5000000000000.01 5000000000000.02 5000000000000.03 5000000000000.05"));
    assertEquals(0.13, fit.parameter("m").value(), 1e-13);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1|2|LINE|This curve needs 2 points, and here is one.",
        "3 3 3|1 2 3|LINE|All values of “x” are equal, so they give no slope.",
        "3 3 3|1 2 3|EXPONENTIAL|All values of “x” are equal, so they give no slope.",
        "0 0|1 2|PROPORTIONAL|All values of “x” are zero, so they give no slope.",
        "1 -2 3|1 2 3|POWER|A power law needs positive values of “x”; in row 2 stands −2.",
        "1 2 0|1 2 3|POWER|A power law needs positive values of “x”; in row 3 stands 0.",
        "1 2 3|1 2 -3|POWER|This curve needs values of “y” of one sign, none of them zero; in row 3"
            + " stands −3.",
        "1 2 3|1 0 3|EXPONENTIAL|This curve needs values of “y” of one sign, none of them zero; in"
            + " row 2 stands 0.",
      })
  void pointsThatGiveNoCurve(String x, String y, Model model, String sentence) {
    Points points = Tables.points(x, y);
    DataException e =
        assertThrows(DataException.class, () -> Curves.fit(model, points, Weighting.NONE));
    assertEquals(sentence, e.sentence());
  }

  @Test
  void weightsNeedAnUncertaintyInEachRow() {
    Points points = Tables.points("1 2 3", "1 2 3");
    DataException e = assertThrows(DataException.class, () -> Fits.line(points, Weighting.Y));
    assertEquals("Row 1 of “y” has no uncertainty to weight it by.", e.sentence());
    assertTrue(e.repairs().contains("a column u(y)"));
    assertThrows(DataException.class, () -> Fits.power(points, Weighting.BOTH));
  }

  @Test
  void curvesOfNegativeValuesAndSteepOnes() {
    Fit negative = Fits.exponential(Tables.points("0 1 2 3", "-1 -2 -4.1 -7.9"), Weighting.NONE);
    assertTrue(negative.parameter("a").value() < 0);
    assertEquals(Math.log(2), negative.parameter("b").value(), 0.02);
    Fit steep = Fits.power(Tables.points("1 10 100", "1e-40 1e0 1e40"), Weighting.NONE);
    assertEquals(40, steep.parameter("p").value(), 1e-6);
    DataException e =
        assertThrows(
            DataException.class,
            () ->
                Fits.exponential(
                    Tables.points("100000 100001 100002", "1 1000 1000000"), Weighting.NONE));
    assertTrue(e.sentence().endsWith("."), e.sentence());
  }
}
