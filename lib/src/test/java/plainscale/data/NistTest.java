package plainscale.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.fixtures.Block;

/** The Statistical Reference Datasets of NIST, to the digits that are certified. */
class NistTest {
  private static final double NON_LINEAR = 2e-10;
  private static final double LINEAR = 1e-12;
  private static final double UNIVARIATE = 1e-14;

  static List<Block> fits() {
    return blocks().stream().filter(b -> !b.all("fit").isEmpty()).toList();
  }

  static List<Block> samples() {
    return blocks().stream().filter(b -> b.all("fit").isEmpty()).toList();
  }

  private static List<Block> blocks() {
    List<Block> blocks = Block.read("nist-strd.txt");
    assertEquals(8, blocks.size());
    return blocks;
  }

  private static void near(double expected, double actual, double relative) {
    assertEquals(expected, actual, relative * Math.abs(expected));
  }

  @ParameterizedTest
  @MethodSource("fits")
  void curves(Block block) {
    Model model = Model.valueOf(block.one("fit"));
    Points points = Tables.points(block.one("x"), block.one("y"));
    Fit fit = Curves.fit(model, points, Weighting.NONE);
    double close = model == Model.POWER ? NON_LINEAR : LINEAR;
    double[] parameters = Tables.doubles(block.one("parameters"));
    double[] standards = Tables.doubles(block.one("standards"));
    for (int i = 0; i < parameters.length; i++) {
      near(parameters[i], fit.parameters().get(i).value(), close);
      near(standards[i], fit.parameters().get(i).standard().orElseThrow(), close);
    }
    near(
        Double.parseDouble(block.one("deviation")), fit.quality().deviation().orElseThrow(), close);
    for (String rSquared : block.all("rSquared")) {
      near(Double.parseDouble(rSquared), fit.quality().rSquared().orElseThrow(), close);
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void samples(Block block) {
    Statistics statistics = Statistics.of(Sample.of(Tables.plain("y", block.one("y"))));
    near(Double.parseDouble(block.one("mean")), statistics.mean().doubleValue(), UNIVARIATE);
    near(
        Double.parseDouble(block.one("deviation")),
        statistics.deviation().orElseThrow(),
        UNIVARIATE);
    assertTrue(statistics.count() >= 50);
  }
}
