package plainscale.algebra;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.notation.Printer;

/** Unknowns without a relation of their own that cancel, and those that do not. */
class CancellingTest {
  private static final Map<String, Double> KNOWN =
      Map.of("g_n", 9.81, "h", 2.0, "r", 0.5, "μ", 0.4, "φ", 0.5, "G", 1.0, "M", 3.0);

  private static String answer(Derivation derivation) {
    Outcome.Solved solved =
        assertInstanceOf(
            Outcome.Solved.class, derivation.outcome(), () -> Systems.text(derivation));
    return Printer.print(solved.answer());
  }

  /** Textbook forms, from memory. */
  @ParameterizedTest
  @CsvSource({
    "v, m g_n h = 1/2 m v^2, sqrt(2*g_n h)",
    "v, 1/2 m v^2 = G M m/r, sqrt(2*G M/r)",
    "v, m v^2/r = m g_n, sqrt(r g_n)",
    "a, m g_n sin(φ) - μ m g_n cos(φ) = m a, g_n sin(φ) - μ g_n cos(φ)",
    "β, m g_n sin(β) = μ N; N = m g_n cos(β), atan(μ)",
    "a, m g_n sin(φ) - F = m a; N = m g_n cos(φ); F = μ N, g_n sin(φ) - g_n μ cos(φ)",
    "H, m v^2/r = m g_n; m g_n H = 1/2 m v^2 + 2*m g_n r, 5*r/2",
    "v, m g_n h = 1/2 m v^2 + 1/2 J ω^2; J = 2/5 m s^2; v = ω s, sqrt(10*g_n h/7)"
  })
  void aMassThatCancelsNeedsNoValue(String unknown, String relations, String answer) {
    Derivation derivation = Systems.solve(unknown, KNOWN, relations.split("; "));
    assertEquals(answer, answer(derivation), () -> Systems.text(derivation));
    assertTrue(Check.of(derivation, KNOWN::containsKey).passes());
  }

  @Test
  void theStepSaysByWhatItDividesAndThatItMustNotBeZero() {
    Step first = Systems.solve("v", KNOWN, "m g_n h = 1/2 m v^2").steps().get(0);
    assertEquals("Divide both sides of (1) by m.", first.reason());
    assertEquals("m ≠ 0", first.condition().orElse(""));
    assertEquals("g_n h = v^2/2", first.after().text());
  }

  @Test
  void whatIsLeftAfterwardsIsStillFree() {
    Derivation derivation = Systems.solve("v", KNOWN, "m g_n h = 1/2 m v^2 + m Q/c");
    assertEquals(new Outcome.Free(List.of("Q", "c")), derivation.outcome());
  }

  @Test
  void theUnknownItselfIsNotDividedAway() {
    Derivation derivation = Systems.solve("m", KNOWN, "m a = m g_n");
    assertEquals(new Outcome.Free(List.of("a")), derivation.outcome());
  }

  /** A lens with two images at one distance of screen and object: f = (D² − s²)/(4 D). */
  @Test
  void twoPlacesOfALensGiveItsFocalLength() {
    Map<String, Double> known = Map.of("s", 0.3, "D", 1.0);
    Derivation derivation = Systems.solve("f", known, "b - a = s", "a + b = D", "1/f = 1/a + 1/b");
    Outcome.Solved solved = assertInstanceOf(Outcome.Solved.class, derivation.outcome());
    assertEquals(0.2275, Approximate.of(solved.answer(), known).value(), 1e-15);
  }

  @Test
  void aDifferenceMayBeNegative() {
    Map<String, Double> known = Map.of("M", 2.0, "d", 10.0);
    Derivation derivation = Systems.solve("X", known, "a + b = M", "a - b = d", "X = a b");
    Outcome.Solved solved = assertInstanceOf(Outcome.Solved.class, derivation.outcome());
    assertEquals(-24, Approximate.of(solved.answer(), known).value(), 1e-12);
  }

  @Test
  void aZeroWithAUnitIsZero() {
    Map<String, Double> known = Map.of("v", 20.0, "θ", 0.5, "g_n", 9.81);
    Derivation derivation = Systems.solve("t", known, "0 [m] = v sin(θ) t - 1/2 g_n t^2");
    assertEquals("2*v sin(θ)/g_n", answer(derivation));
  }

  @Test
  void aZeroThatIsTheAnswerKeepsItsUnit() {
    assertEquals("0 [m/s]", answer(Systems.solve("v", KNOWN, "v = 0 [m/s]")));
  }

  /** Brackets cancel, and sums go over one denominator where that is shorter. */
  @ParameterizedTest
  @CsvSource({
    "Q, Q = Q_h + Q_h*(T_c - T_h)/T_h, Q_h T_c/T_h",
    "k, k = c (r_1 - r_2)/(r_1^2 - r_2^2), c/(r_1 + r_2)",
    "k, k = c (a - b)/(a^3 - b^3), c/(a b + a^2 + b^2)",
    "k, k = c (a - b)/(a^2 + b^2), c (a - b)/(a^2 + b^2)",
    "k, k = a (c - b), a (c - b)"
  })
  void anAnswerIsMadeShorter(String unknown, String relation, String answer) {
    Map<String, Double> known = new TreeMap<>();
    Mentions.of(List.of(Systems.equation(relation)))
        .names()
        .forEach(name -> known.put(name, Double.NaN));
    assertEquals(answer, answer(Systems.solve(unknown, known, relation)));
  }

  /** A bridge with a current through its middle: six linear relations. */
  @Test
  void aBridgeIsSolvedInClosedForm() {
    Map<String, Double> known =
        Map.of("R_1", 10.0, "R_2", 20.0, "R_3", 30.0, "R_4", 40.0, "R_5", 50.0, "U", 12.0);
    Derivation derivation =
        Systems.solve(
            "I",
            known,
            "I = I_1 + I_2",
            "I_1 = I_3 + I_5",
            "I_4 = I_2 + I_5",
            "R_1 I_1 + R_5 I_5 = R_2 I_2",
            "R_3 I_3 = R_4 I_4 + R_5 I_5",
            "U = R_1 I_1 + R_3 I_3");
    Outcome.Solved solved = assertInstanceOf(Outcome.Solved.class, derivation.outcome());
    double current = Approximate.of(solved.answer(), known).value();
    assertEquals(0.5011764705882353, current, 1e-12); // by node potentials, in fractions
  }
}
