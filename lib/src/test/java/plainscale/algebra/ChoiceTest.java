package plainscale.algebra;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.notation.Printer;

/** Which of several roots is taken, and what is said of the others. */
class ChoiceTest {
  private static final String MOMENTUM = "m_1 v = m_1 u_1 + m_2 u_2";
  private static final String ENERGY = "1/2 m_1 v^2 = 1/2 m_1 u_1^2 + 1/2 m_2 u_2^2";
  private static final String NOTHING = "u_2 would be zero, as if nothing happened.";

  private static Map<String, Double> names(String... names) {
    Map<String, Double> known = new HashMap<>();
    List.of(names).forEach(name -> known.put(name, Double.NaN));
    return known;
  }

  private static Outcome.Solved solved(Derivation derivation) {
    return assertInstanceOf(
        Outcome.Solved.class, derivation.outcome(), () -> Systems.text(derivation));
  }

  private static String answer(Derivation derivation) {
    return Printer.print(solved(derivation).answer());
  }

  private static List<String> others(Derivation derivation) {
    return solved(derivation).rejected().stream()
        .map(other -> Printer.print(other.root()) + ": " + other.why())
        .toList();
  }

  private static double degrees(Derivation derivation, Map<String, Double> known) {
    return Math.toDegrees(Approximate.of(solved(derivation).answer(), known).value());
  }

  /** Elastic collisions with a body at rest, for masses of which none is special. */
  @ParameterizedTest
  @CsvSource({
    "1, 3, 2",
    "3, 1, 2",
    "1, 1, 2",
    "0.25, 0.25, 1.3",
    "0.1, 0.1, 0.7",
    "1, 3, -2",
    "2e-3, 7, 1e4"
  })
  void theSecondBodyMovesAfterACollision(double first, double second, double speed) {
    Map<String, Double> known = Map.of("m_1", first, "m_2", second, "v", speed);
    Derivation struck = Systems.solve("u_2", known, MOMENTUM, ENERGY);
    assertEquals("2*m_1 v/(m_1 + m_2)", answer(struck));
    assertEquals(List.of("0: u_2 ≠ 0 is looked for."), others(struck));
    Derivation striking = Systems.solve("u_1", known, MOMENTUM, ENERGY);
    double expected = speed * (first - second) / (first + second);
    double found = Approximate.of(solved(striking).answer(), known).value();
    assertEquals(expected, found, 1e-12, Systems.text(striking));
    assertEquals(List.of("v: " + NOTHING), others(striking));
  }

  @Test
  void withoutValuesTooSomethingHappensInACollision() {
    Derivation derivation = Systems.solve("u_1", names("m_1", "m_2", "v"), MOMENTUM, ENERGY);
    assertEquals("v (m_1 - m_2)/(m_1 + m_2)", answer(derivation));
    assertEquals(List.of("v: " + NOTHING), others(derivation));
  }

  @Test
  void bothAnglesOfAThrowAreTold() {
    Map<String, Double> known = Map.of("x_r", 5.0, "v", 10.0, "g_n", 9.81);
    Derivation derivation = Systems.solve("θ", known, "x_r = 2*v^2 sin(θ) cos(θ)/g_n");
    assertEquals("asin(x_r g_n/v^2)/2", answer(derivation));
    assertEquals(4, derivation.steps().size(), Systems.text(derivation));
    String other = "90° - asin(x_r g_n/v^2)/2";
    String why =
        ": the smaller angle is taken; this one fits too, since sin(180° - 2*θ) = sin(2*θ).";
    assertEquals(List.of(other + why), others(derivation));
    double larger = Approximate.of(solved(derivation).rejected().get(0).root(), known).value();
    assertEquals(5.0, 100 * Math.sin(2 * larger) / 9.81, 1e-12);
  }

  @Test
  void aResultantIsPositive() {
    Map<String, Double> known = Map.of("v_x", 3.0, "v_y", 4.0);
    Derivation derivation = Systems.solve("v", known, "v_x = v cos(φ)", "v_y = v sin(φ)");
    assertEquals("sqrt(v_x^2 + v_y^2)", answer(derivation));
    assertEquals(List.of("-sqrt(v_x^2 + v_y^2): v is positive."), others(derivation));
  }

  @Test
  void anAngleOfASumIsChosenByItsSign() {
    Map<String, Double> known = Map.of("a", 3.0, "b", 4.0, "c", 2.0);
    Derivation derivation = Systems.solve("x", known, "a sin(x) + b cos(x) = c");
    double x = Math.toRadians(degrees(derivation, known));
    assertEquals(2, 3 * Math.sin(x) + 4 * Math.cos(x), 1e-12);
    assertTrue(x > 0, Systems.text(derivation));
    String negative = "asin(c/sqrt(a^2 + b^2)) - atan(b/a): x would be negative.";
    assertEquals(List.of(negative), others(derivation));
  }

  @Test
  void anAngleOfASlopeIsAcute() {
    Map<String, Double> known = Map.of("a", 3.0, "μ", 0.2, "g", 9.81);
    Derivation derivation = Systems.solve("θ", known, "a = g sin(θ) - μ g cos(θ)");
    double angle = degrees(derivation, known);
    assertTrue(angle > 0 && angle < 90, Systems.text(derivation));
    assertTrue(others(derivation).get(0).endsWith(": θ would be above 90°."));
  }

  @Test
  void whatNothingDecidesIsGivenTwice() {
    Map<String, Double> known = Map.of("a", 3.0, "b", 4.0, "c", 4.5);
    Derivation derivation = Systems.solve("x", known, "a sin(x) + b cos(x) = c");
    Outcome.Several several = assertInstanceOf(Outcome.Several.class, derivation.outcome());
    assertEquals(2, several.answers().size());
  }

  @Test
  void unequalMassesOnThreadsHaveTwoAngles() {
    Derivation derivation =
        Systems.solve(
            "β",
            Map.of("α", 0.3, "m_1", 0.1, "m_2", 0.2, "g", 9.81),
            "F = T sin(α)",
            "m_1 g = T cos(α)",
            "F = S sin(β)",
            "m_2 g = S cos(β)");
    assertEquals("atan(m_1 tan(α)/m_2)", answer(derivation));
    assertTrue(derivation.steps().size() <= 7, Systems.text(derivation));
  }

  @Test
  void whatHasAValueIsNotSaidToDifferFromZero() {
    Derivation derivation =
        Systems.solve(
            "q",
            Map.of("m", 0.005, "g_n", 9.81, "k_e", 9e9, "d", 0.12, "s", 0.5),
            "k_e q^2/d^2 = T sin(θ)",
            "m g_n = T cos(θ)",
            "sin(θ) = d/(2*s)");
    assertTrue(
        derivation.steps().stream().noneMatch(step -> step.condition().orElse("").contains("≠ 0")),
        Systems.text(derivation));
  }

  @Test
  void aSquareAndANumberAreNeverZeroTogether() {
    Derivation derivation = Systems.solve("θ", names("P", "μ", "F"), "P cos(θ) + μ P sin(θ) = F");
    assertTrue(
        derivation.steps().stream()
            .noneMatch(step -> step.condition().orElse("").contains("μ^2 + 1 ≠ 0")),
        Systems.text(derivation));
  }

  @Test
  void aFalseRootOfTwoSquaringsIsRejected() {
    Derivation derivation = Systems.solve("x", Map.of("b", -1.0), "sqrt(x + 5) + sqrt(x) = b");
    assertInstanceOf(Outcome.NoRealSolution.class, derivation.outcome());
  }
}
