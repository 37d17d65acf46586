package plainscale.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.table.Table;

/** Random data fitted and described by SciPy and NumPy ({@code generate/fits.py}). */
class FitFixtureTest {
  static List<Table.Row> fits() {
    return Table.read(FitFixtureTest.class, "/plainscale/fixtures/fits.tsv");
  }

  static List<Table.Row> samples() {
    return Table.read(FitFixtureTest.class, "/plainscale/fixtures/samples.tsv");
  }

  @Test
  void thereAreEnough() {
    assertTrue(fits().size() >= 100 && samples().size() >= 8);
  }

  private static void near(double expected, double actual, double relative, String what) {
    assertEquals(expected, actual, relative * Math.abs(expected) + 1e-13, what);
  }

  @ParameterizedTest
  @MethodSource("fits")
  void curves(Table.Row row) {
    Model model = Model.valueOf(row.get("model"));
    Weighting weighting = Weighting.valueOf(row.get("weighting"));
    Points points =
        Points.of(
            Tables.column("x", "1", row.get("x"), row.get("ux")),
            Tables.column("y", "1", row.get("y"), row.get("uy")));
    Fit fit = Curves.fit(model, points, weighting);
    // SciPy's own search stops at 1e-8 or so where the sum of squares is flat.
    double close = model == Model.LINE && weighting != Weighting.BOTH ? 1e-9 : 2e-6;
    double[] parameters = Tables.doubles(row.get("parameters"));
    double[] covariance = Tables.doubles(row.get("covariance"));
    int n = parameters.length;
    for (int i = 0; i < n; i++) {
      double u = fit.spread().standard(i);
      assertEquals(parameters[i], fit.parameters().get(i).value(), close * 10 * u, "parameter");
      for (int j = 0; j < n; j++) {
        double both = u * fit.spread().standard(j);
        double tolerance = weighting == Weighting.BOTH ? 1e-4 : 1e-5;
        assertEquals(covariance[n * i + j], fit.spread().covariance(i, j), tolerance * both);
      }
    }
    near(Double.parseDouble(row.get("squares")), squares(fit), 1e-8, "squares");
  }

  private static double squares(Fit fit) {
    return fit.quality()
        .chiSquare()
        .map(ChiSquare::value)
        .orElseGet(
            () -> Math.pow(fit.quality().deviation().orElseThrow(), 2) * fit.quality().freedom());
  }

  @ParameterizedTest
  @MethodSource("samples")
  void samples(Table.Row row) {
    Sample sample = Sample.of(Tables.column("x", "1", row.get("values"), row.get("u")));
    Statistics of = Statistics.of(sample);
    double[] quartiles = Tables.doubles(row.get("quartiles"));
    near(Double.parseDouble(row.get("mean")), of.mean().doubleValue(), 1e-13, "mean");
    near(Double.parseDouble(row.get("deviation")), of.deviation().orElseThrow(), 1e-12, "sd");
    near(quartiles[0], of.lowerQuartile(), 1e-12, "lower quartile");
    near(quartiles[1], of.median(), 1e-12, "median");
    near(quartiles[2], of.upperQuartile(), 1e-12, "upper quartile");
    WeightedMean mean = WeightedMean.of(sample);
    near(Double.parseDouble(row.get("weighted")), mean.mean().doubleValue(), 1e-12, "weighted");
    near(Double.parseDouble(row.get("internal")), mean.internal(), 1e-12, "internal");
    ChiSquare chi = mean.chiSquare();
    near(Double.parseDouble(row.get("squares")), chi.value(), 1e-11, "squares");
    near(
        Double.parseDouble(row.get("probability")),
        chi.probability().orElseThrow(),
        1e-9,
        "probability");
    near(
        mean.internal() * Math.sqrt(chi.reduced().orElseThrow()),
        mean.external().orElseThrow(),
        1e-12,
        "external");
  }
}
