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
import plainscale.quantity.Quantity;
import plainscale.quantity.QuantityException;
import plainscale.units.UnitParser;

class StatisticsTest {
  private static Statistics of(String values) {
    return Statistics.of(Sample.of(Tables.column("d", "cm", values)));
  }

  @Test
  void theMeanIsAQuantity() {
    Statistics statistics = of("5.007 4.994 5.005 4.990 4.999");
    // JCGM 100:2008, H.2, table H.2: mean 4.9990, s of the mean 0.0032 (there in volts).
    assertEquals(new BigDecimal("4.999"), statistics.mean().stripTrailingZeros());
    assertEquals(0.0032, statistics.standard().orElseThrow(), 5e-5);
    assertEquals(0.04999, statistics.quantity().value().doubleValue(), 1e-12);
    assertEquals(0.000032, statistics.quantity().uncertainty().standard(), 5e-7);
    assertEquals(new BigDecimal("4.990"), statistics.smallest());
    assertEquals(new BigDecimal("5.007"), statistics.largest());
  }

  @Test
  void oneValueHasNoScatter() {
    Statistics one = of("14.0");
    assertEquals(OptionalDouble.empty(), one.deviation());
    assertEquals(OptionalDouble.empty(), one.standard());
    assertEquals(14.0, one.median());
    assertEquals(3, one.quantity().figures().count());
  }

  @Test
  void tinyValuesKeepTheirScatter() {
    assertEquals(1e-290, of("1e-290 2e-290 3e-290").deviation().orElseThrow(), 1e-302);
    assertEquals(1e290, of("1e290 2e290 3e290").deviation().orElseThrow(), 1e278);
  }

  @Test
  void outliersAreToldByTheirRow() {
    Statistics statistics = of("10 11 12 12 13 14 30");
    Outliers tukey = Outliers.tukey(statistics);
    // Quartiles 11.5 and 13.5, so the fences are 8.5 and 16.5.
    assertEquals(8.5, tukey.low());
    assertEquals(16.5, tukey.high());
    assertEquals(List.of(new Outliers.Outlier(7, new BigDecimal("30"))), tukey.found());
    assertEquals(List.of(), Outliers.tukey(of("10 11 12 13")).found());
  }

  /**
   * J. R. Taylor, An Introduction to Error Analysis, section 6.2 (from memory): of 3.8, 3.5, 3.9,
   * 3.9, 3.4, 1.8 the last is 2.1 standard deviations from the mean 3.4 and is rejected.
   */
  @Test
  void chauvenetsCriterion() {
    Outliers found = Outliers.chauvenet(of("3.8 3.5 3.9 3.9 3.4 1.8"));
    assertEquals(List.of(new Outliers.Outlier(6, new BigDecimal("1.8"))), found.found());
    // For ten values the limit is 1.96 standard deviations (Taylor, the same place).
    Statistics ten = of("1 2 3 4 5 6 7 8 9 10");
    double limit = Outliers.chauvenet(ten).high() - ten.mean().doubleValue();
    assertEquals(1.96, limit / ten.deviation().orElseThrow(), 0.005);
    assertEquals(List.of(), Outliers.chauvenet(of("1 100")).found());
  }

  @Test
  void weightsNeedUncertainties() {
    Sample sample = Sample.of(Tables.column("d", "cm", "1 2", "0.1 0"));
    DataException e = assertThrows(DataException.class, () -> WeightedMean.of(sample));
    assertEquals("Row 2 of “d” has no uncertainty to weight it by.", e.sentence());
    WeightedMean one = WeightedMean.of(Sample.of(Tables.column("d", "cm", "14.0", "0.5")));
    assertEquals(0.5, one.internal());
    assertEquals(OptionalDouble.empty(), one.external());
    assertEquals(0.005, one.widened().uncertainty().standard(), 1e-15);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 2 3 4 5 6 7 8|FREEDMAN_DIACONIS|5|0:4 5:4",
        "14.1 14.2 14.2 14.3 14.8|FREEDMAN_DIACONIS|0.2|14.0:1 14.2:3 14.4:0 14.6:0 14.8:1",
        "1 5 5 5 5 5 5 9|STURGES|2|0:1 2:0 4:6 6:0 8:1",
        "14.0 14.0|ONE_VALUE|0.1|14.0:2",
        "-3 -1 1 3|FREEDMAN_DIACONIS|5|-5:2 0:2",
      })
  void histograms(String values, Histogram.Rule rule, BigDecimal width, String bins) {
    Histogram histogram = Histogram.of(of(values));
    assertEquals(rule, histogram.rule());
    assertEquals(0, width.compareTo(histogram.width()), histogram.width().toString());
    String[] expected = bins.split(" ", -1);
    assertEquals(expected.length, histogram.bins().size(), histogram.toString());
    for (int i = 0; i < expected.length; i++) {
      String[] parts = expected[i].split(":", -1);
      assertEquals(0, new BigDecimal(parts[0]).compareTo(histogram.bins().get(i).from()));
      assertEquals(Integer.parseInt(parts[1]), histogram.bins().get(i).count());
    }
  }

  @Test
  void anOutlierDoesNotMakeAMillionBins() {
    Histogram histogram = Histogram.of(of("1 2 3 4 5 6 7 8 1e9"));
    assertTrue(histogram.bins().size() <= 201, histogram.bins().size() + " bins");
    assertEquals(9, histogram.bins().stream().mapToInt(Histogram.Bin::count).sum());
  }

  private static Quantity cm(String value, String uncertainty) {
    return Quantity.measured(
        "d", new BigDecimal(value), new BigDecimal(uncertainty), UnitParser.parse("cm"));
  }

  @ParameterizedTest
  @CsvSource({
    "14.0,0.3,14.5,0.4,-1,AGREES",
    "14.0,0.3,12.75,0.4,2.5,DOUBTFUL",
    "14.0,0.3,12.5,0.4,3,DISAGREES"
  })
  void againstTheTeachersValue(
      String x, String u, String y, String v, double zeta, Agreement.Verdict verdict) {
    Agreement agreement = Agreement.of(cm(x, u), cm(y, v));
    assertEquals(zeta, agreement.zeta().orElseThrow(), 1e-12);
    assertEquals(zeta / 2, agreement.normalizedError().orElseThrow(), 1e-12);
    assertEquals(verdict, agreement.verdict());
  }

  @Test
  void whatIsOneMeasurementDoesNotDiffer() {
    Quantity d = cm("14.0", "0.3");
    assertEquals(Agreement.Verdict.UNKNOWN, Agreement.of(d, d).verdict());
    Quantity second = Quantity.exact(BigDecimal.ONE, UnitParser.parse("s"));
    assertThrows(QuantityException.class, () -> Agreement.of(d, second));
  }

  @Test
  void scoresOfAClass() {
    Statistics statistics = of("12 14 16");
    ClassScores scores = ClassScores.of(statistics, new BigDecimal("11"));
    assertEquals(0.5, scores.scores().get(0).z().orElseThrow(), 1e-12);
    assertEquals(2.5, scores.scores().get(2).z().orElseThrow(), 1e-12);
    assertEquals(Agreement.Verdict.DOUBTFUL, scores.scores().get(2).verdict());
    assertEquals(new BigDecimal("5"), scores.scores().get(2).difference());
    ClassScores none = ClassScores.of(of("12"), new BigDecimal("11"));
    assertEquals(Agreement.Verdict.UNKNOWN, none.scores().get(0).verdict());
  }
}
