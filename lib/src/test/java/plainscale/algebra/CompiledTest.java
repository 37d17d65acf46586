package plainscale.algebra;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.table.Table;

/**
 * Compiled functions beside the other program whose results are in {@code uncertainties.tsv}: the
 * value, and the uncertainty by central differences instead of derivatives.
 */
class CompiledTest {
  private static final double STEP = 1e-3;

  static List<Table.Row> rows() {
    return Table.read(CompiledTest.class, "/plainscale/fixtures/uncertainties.tsv");
  }

  private static Compiled function(Table.Row row) {
    Model model = new Model();
    for (String variable : row.get("variables").split("; ", -1)) {
      String[] parts = variable.replace(" rad", "").split("[=±]", -1);
      String name = variable.endsWith(" rad") ? parts[0] + "_plain" : parts[0];
      model.with(name, parts[1], parts.length > 2 ? parts[2] : "0");
      if (variable.endsWith(" rad")) {
        model.defining(parts[0], name + " [rad]");
      }
    }
    return model.compiled(row.get("expression"));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void theValueIsThatOfTheRow(Table.Row row) {
    Compiled function = function(row);
    double value = Double.parseDouble(row.get("value"));
    double dust = 1e-10 * Math.abs(value) + 1e-14;
    assertEquals(value, function.at(new double[function.sources().size()]), dust);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void itsDifferencesGiveTheUncertaintyOfTheRow(Table.Row row) {
    Compiled function = function(row);
    double[] at = new double[function.sources().size()];
    double[] slopes = new double[at.length];
    for (int i = 0; i < at.length; i++) {
      at[i] = STEP;
      double above = function.at(at);
      at[i] = -STEP;
      slopes[i] = (above - function.at(at)) / (2 * STEP);
      at[i] = 0;
    }
    double u = Math.sqrt(Arrays.stream(slopes).map(slope -> slope * slope).sum());
    double value = Math.abs(Double.parseDouble(row.get("value")));
    double expected = Double.parseDouble(row.get("u"));
    assertEquals(expected, u, 1e-4 * expected + 1e-11 * value + 1e-12);
  }

  @Test
  void aNameThatIsMetTwiceIsOneSource() {
    Model model = new Model().with("x", "3", "0.1").defining("y", "x^2").defining("z", "y - x*x");
    Compiled function = model.compiled("z + 0*y");
    assertEquals(1, function.sources().size());
    assertEquals(0, function.at(new double[] {2.5}));
  }

  @Test
  void whatDoesNotExistIsNotANumber() {
    Model model = new Model().with("x", "0", "1");
    for (String formula : List.of("1/x", "ln(x)", "asin(x + 2)", "x^-1", "x^0", "exp(1000 + x)")) {
      assertTrue(Double.isNaN(model.compiled(formula).at(new double[1])), formula);
    }
  }
}
