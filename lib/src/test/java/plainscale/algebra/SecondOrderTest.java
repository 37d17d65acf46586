package plainscale.algebra;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SecondOrderTest {
  private static double of(Model model, String formula) {
    return SecondOrder.standard(model.compiled(formula), Model.cost()).orElseThrow();
  }

  @Test
  void ofALinearFormulaItIsTheFirstOrder() {
    Model model = new Model().with("x", "3", "0.4").with("y", "7", "0.3");
    assertEquals(0.5, of(model, "x - y + 2"), 1e-9);
  }

  /** u²(x y) = x² u²(y) + y² u²(x) + u²(x) u²(y), exactly. */
  @Test
  void ofAProductItIsExact() {
    Model model = new Model().with("x", "3", "0.4").with("y", "2", "0.5");
    double expected = Math.sqrt(9 * 0.25 + 4 * 0.16 + 0.25 * 0.16);
    assertEquals(expected, of(model, "x*y"), 1e-9);
  }

  /** u²(x²) = 4 x² u² + 2 u⁴, exactly for a normal x. */
  @Test
  void ofASquareItIsExact() {
    Model model = new Model().with("x", "3", "0.4");
    assertEquals(Math.sqrt(36 * 0.16 + 2 * 0.0256), of(model, "x^2"), 1e-9);
  }

  /** To the order of u⁴: u² + (½ f″² + f′ f‴) u⁴ with f = sin, at 0: cos²·u² − u⁴. */
  @Test
  void theThirdDerivativeCountsToo() {
    Model model = new Model().with("x", "0", "0.1");
    double expected = Math.sqrt(0.01 - 0.0001);
    assertEquals(expected, of(model, "sin(x [rad])"), 1e-5);
  }

  @Test
  void aSquareThatIsWrittenTwiceIsOneSource() {
    Model model = new Model().with("x", "3", "0.4").defining("y", "x");
    assertEquals(of(model, "x^2"), of(model, "x*y"), 1e-12);
  }

  @Test
  void whereTheFormulaEndsNearbyThereIsNone() {
    Model model = new Model().with("x", "0.1", "0.1");
    assertTrue(SecondOrder.standard(model.compiled("sqrt(x)"), Model.cost()).isEmpty());
    assertTrue(SecondOrder.standard(model.compiled("ln(x)"), Model.cost()).isEmpty());
  }
}
