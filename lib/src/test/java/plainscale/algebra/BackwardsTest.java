package plainscale.algebra;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a name that stands once must be: the search over the whole axis is the yardstick. */
class BackwardsTest {
  private static final Map<String, Double> VALUES = Map.of("a", 2.0, "b", 0.3);

  private static OptionalDouble root(String equation) {
    return Backwards.root(Systems.equation(equation), "x", VALUES);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a + x = b",
        "a - x = b",
        "x - a = b",
        "a x = b",
        "x/a = b",
        "a/x = b",
        "-x = b",
        "x^3 = -8*a",
        "x^2 = a",
        "a^x = b",
        "b = x^a/(a + b)",
        "sin(x) = b",
        "cos(x) = b",
        "tan(x) = b",
        "asin(x) = b",
        "acos(x) = b",
        "atan(x) = b",
        "exp(a x) = a",
        "ln(x) = b",
        "log10(x) = b",
        "sqrt(x + a) = a + b",
        "cbrt(x) = -b",
        "abs(x) = b",
        "a = (x + 1)*3"
      })
  void itIsOneOfTheRootsOfTheSearch(String equation) {
    double root = root(equation).orElseThrow();
    Map<String, Double> values = new HashMap<>(VALUES);
    boolean found =
        Numerically.solve(Systems.equation(equation), "x", values).roots().stream()
            .anyMatch(r -> Math.abs(r.value() - root) <= 1e-9 * Math.abs(root));
    assertTrue(found, () -> equation + ": " + root);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "x + x^2 = a",
        "x = x + a",
        "a = b",
        "sin(x) = a",
        "x^2 = -a",
        "sqrt(x) = -a",
        "a/x = 0",
        "exp(x) = -b",
        "a = x*0",
        "sinh(x) = a"
      })
  void itIsSilentWhereItKnowsNone(String equation) {
    assertEquals(OptionalDouble.empty(), root(equation));
  }

  @ParameterizedTest
  @CsvSource({"x^2 = 9, 3", "x^4 = 16, 2", "x^3 = -8, -2", "x^(1/2) = 3, 9"})
  void ofTwoRootsThePositiveOneIsTaken(String equation, double root) {
    assertEquals(root, root(equation).orElseThrow(), 1e-12);
  }
}
