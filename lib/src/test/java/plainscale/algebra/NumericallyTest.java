package plainscale.algebra;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Roots by numbers. */
class NumericallyTest {
  private static Numerically.Roots solve(String equation, Map<String, Double> known) {
    return Numerically.solve(Systems.equation(equation), "x", Systems.known(known));
  }

  private static List<Double> roots(String equation) {
    return solve(equation, Map.of()).roots().stream().map(Numerically.Root::value).toList();
  }

  /** The fixed point of the cosine, 0.739085133215160641655… (OEIS A003957, value from memory). */
  @Test
  void theCosineHasOneFixedPoint() {
    assertEquals(List.of(0.7390851332151607), roots("x = cos(x)").stream().toList());
  }

  @ParameterizedTest
  @CsvSource({
    "x^2 = 2, 2",
    "x^2 = 0, 1",
    "x^3 - x = 0, 3",
    "1/x = 0, 0",
    "exp(x) = 1e10, 1",
    "x = 3e-9, 1",
    "x^2 = 4e20, 2",
    "1/(x - 2) = 1, 1",
    "x^2 + 1 = 0, 0",
    "ln(x) = -20, 1"
  })
  void allRootsOfTheScanAreListed(String equation, int count) {
    assertEquals(count, roots(equation).size(), () -> roots(equation).toString());
  }

  /** Domains that end between two values of the scan. */
  @ParameterizedTest
  @CsvSource({
    "acos(x/0.37) = 0.1*x, 1, 0.3697471099013218",
    "acos(x/0.7) = 0.01, 1, 0.699965000291665",
    "asin(x/2.2) = 1.5707, 1, 2.199999989793264",
    "sqrt(x - 0.37) = 0, 1, 0.37",
    "sqrt(0.37 - x) = x, 1, 0.2874007874011811",
    "sqrt(x - 1.1) = 0.01, 1, 1.1001",
    "sqrt(x - 0.37) + 1 = 0, 0, 0",
    "sqrt(x) = 0, 1, 0",
    "ln(x) = -50, 1, 1.928749847963918e-22"
  })
  void aRootNearTheEdgeOfTheDomainIsFound(String equation, int count, double root) {
    List<Double> found = roots(equation);
    assertEquals(count, found.size(), found.toString());
    assertEquals(root, found.stream().findFirst().orElse(0.0), 1e-13 * root + 1e-300);
  }

  @Test
  void aRootLiesInItsBracketAndHasASmallResidual() {
    Numerically.Roots roots = solve("k x = cos(x)", Map.of("k", 0.2));
    assertTrue(roots.roots().size() >= 3, roots.toString());
    for (Numerically.Root root : roots.roots()) {
      assertTrue(root.low() <= root.value() && root.value() <= root.high(), root.toString());
      assertEquals(0, root.residual(), 1e-12);
      assertEquals(Math.cos(root.value()), 0.2 * root.value(), 1e-12);
    }
    assertTrue(roots.evaluations() > 1000);
  }

  @Test
  void anAngleIsLookedForByDegrees() {
    double expected = Math.toRadians(30);
    List<Double> roots = roots("sin(x) = 0.5");
    assertTrue(
        roots.stream().anyMatch(root -> Math.abs(root - expected) < 1e-12), roots.toString());
    assertTrue(
        roots.stream().anyMatch(root -> Math.abs(root - 5 * expected) < 1e-12), roots.toString());
  }

  private static List<Double> known(String equation, String unknown) {
    Known known = Systems.known(Map.of("L", 10.0, "w", 9.0));
    return Numerically.solve(Systems.equation(equation), unknown, known).roots().stream()
        .map(Numerically.Root::value)
        .toList();
  }

  /** 2 q sinh(w/(2 q)) is beyond every number for small q. */
  @Test
  void whereASideIsTooLargeThereIsNoRoot() {
    List<Double> roots = known("L = 2*q sinh(w/(2*q))", "q");
    assertEquals(2, roots.size(), roots.toString());
    assertEquals(10, 2 * roots.get(1) * Math.sinh(9 / (2 * roots.get(1))), 1e-9);
  }

  @Test
  void anAngleLiesWithinOneTurn() {
    List<Double> roots = known("1 = 2*sin(x) + 0.1*x", "x");
    assertEquals(4, roots.size(), roots.toString());
    assertTrue(roots.stream().allMatch(x -> Math.abs(x) <= 2 * Math.PI), roots.toString());
  }

  @Test
  void aTimeInAnAngleIsNotBoundToATurn() {
    List<Double> roots = known("0.1*t = 2 + sin(w t)", "t");
    assertTrue(roots.stream().anyMatch(t -> t > 2 * Math.PI), roots.toString());
  }
}
