package plainscale.algebra;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Why there is no answer: a division by zero, or relations that contradict each other. */
class ZeroDivisorTest {

  private static Map<String, Double> values(String text) {
    Map<String, Double> values = new TreeMap<>();
    Arrays.stream(text.split(" "))
        .map(pair -> pair.split("="))
        .forEach(pair -> values.put(pair[0], Double.parseDouble(pair[1])));
    return values;
  }

  @ParameterizedTest
  @CsvSource({
    "b, 1/f = 1/g + 1/b, g=0.1 f=0.1, g - f, 3",
    "a, F = m a, m=0 F=1, m, 2",
    "s, h = s tan(φ), h=1 φ=0, tan(φ), 2",
    "s, h = s cos(φ), h=1 φ=1.5707963267948966, cos(φ), 2",
    "F, F (a - b - d) = d, a=0.3 b=0.2 d=0.1, b + d - a, 2"
  })
  void aDivisionByZeroIsNamed(
      String unknown, String relation, String values, String divisor, int step) {
    Derivation derivation = Systems.solve(unknown, values(values), relation);
    String why = divisor + " is zero with these values: you would divide by zero.";
    assertEquals(new Outcome.NoRealSolution(step, why), derivation.outcome());
  }

  @ParameterizedTest
  @CsvSource({
    "x + y = 5 [m]; x + y = 7 [m], 7 m = 5 m",
    "x + 1 [m] = x + 2 [m], 1 m = 2 m",
    "x + y = A; x + y = B, B = A"
  })
  void valuesThatDifferAreAContradiction(String relations, String equation) {
    Derivation derivation = Systems.solve("x", values("A=5 B=7"), relations.split("; "));
    Outcome.Contradiction contradiction =
        assertInstanceOf(Outcome.Contradiction.class, derivation.outcome());
    assertEquals(equation, contradiction.equation().text());
  }

  @Test
  void valuesThatAgreeToMeasuredFiguresAreNone() {
    Derivation derivation = Systems.solve("x", values("A=5 B=5.01"), "x + y = A", "x + y = B");
    assertEquals(new Outcome.Cancelled("x"), derivation.outcome());
  }
}
