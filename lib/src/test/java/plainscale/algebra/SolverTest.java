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
import plainscale.notation.Expr;
import plainscale.notation.Printer;

/** Which answer is given, which is not, and why. */
class SolverTest {
  private static final Map<String, Double> NONE = Map.of();

  private static Map<String, Double> names(String... names) {
    Map<String, Double> known = new HashMap<>();
    List.of(names).forEach(name -> known.put(name, Double.NaN));
    return known;
  }

  private static Outcome.Solved solved(Derivation derivation) {
    return assertInstanceOf(
        Outcome.Solved.class, derivation.outcome(), () -> Systems.text(derivation));
  }

  private static double value(Expr expr, Map<String, Double> values) {
    return Approximate.of(expr, values).value();
  }

  private static Derivation hanging() {
    return Systems.solve(
        "q",
        names("m", "g_n", "k_e", "d", "s"),
        "k_e q^2/d^2 = T sin(θ)",
        "m g_n = T cos(θ)",
        "sin(θ) = d/(2*s)");
  }

  @Test
  void twoHangingChargesBeginWithADivision() {
    Derivation derivation = hanging();
    Step first = derivation.steps().get(0);
    assertEquals(4, first.number());
    assertEquals(Rule.DIVIDE_EQUATIONS, first.rule());
    assertEquals(List.of(1, 2), first.from());
    assertEquals("Divide (1) by (2): T cancels.", first.reason());
    assertTrue(derivation.steps().size() <= 7, Systems.text(derivation));
  }

  /** At some random points the exponential is below the smallest double: they say nothing. */
  @Test
  void aLogarithmOfAQuotientIsUndone() {
    Derivation derivation =
        Systems.solve("m_0", names("v", "v_0", "v_e", "m"), "v - v_0 = v_e ln(m_0/m)");
    assertEquals("m exp((v - v_0)/v_e)", Printer.print(solved(derivation).answer()));
  }

  @Test
  void aRootSaysWhichSignWasTakenAndWhichNot() {
    Derivation derivation = hanging();
    Step last = derivation.steps().get(derivation.steps().size() - 1);
    assertEquals(Rule.ROOT, last.rule());
    assertTrue(last.condition().orElse("").contains("q ≥ 0"), last.toString());
    assertEquals(List.of("q is positive."), rejected(derivation));
  }

  private static List<String> rejected(Derivation derivation) {
    return solved(derivation).rejected().stream().map(Outcome.Other::why).toList();
  }

  /** CHECKS E10: OpenStax University Physics 2, m58722 #fs-id1172099736398. */
  @Test
  void theSquareOfTheHangingChargeAgreesWithThePrintedForm() {
    Derivation derivation =
        Systems.solve(
            "q",
            names("m", "g", "π", "ε_0", "θ", "l"),
            "q^2/(4*π ε_0 d^2) = T sin(θ)",
            "m g = T cos(θ)",
            "sin(θ) = d/(2*l)");
    Expr printed = Systems.expression("16*π ε_0 g l^2 m sin(θ)^2 tan(θ)");
    assertSame(new Equation(square(solved(derivation).answer()), printed));
  }

  /** CHECKS E5: OpenStax University Physics 2, example 5.4, m58722 #fs-id1172099604261. */
  @Test
  void theFieldOnTheMidlineAgreesWithThePrintedForm() {
    Derivation derivation =
        Systems.solve(
            "E",
            names("q", "π", "ε_0", "z", "d"),
            "E = 2*q cos(α)/(4*π ε_0 r^2)",
            "cos(α) = z/r",
            "r^2 = z^2 + (d/2)^2");
    Expr printed = Systems.expression("2*q z/(4*π ε_0 (z^2 + (d/2)^2)^(3/2))");
    assertSame(new Equation(solved(derivation).answer(), printed));
  }

  private static Expr square(Expr expr) {
    Expr two = Systems.expression("2");
    return new Expr.Binary(expr.span(), Expr.Operator.POWER, expr, two, expr.span());
  }

  private static void assertSame(Equation equation) {
    Mentions mentions = Mentions.of(List.of(equation));
    Points points = new Points(5, mentions.angles());
    for (int i = 0; i < Check.POINTS; i++) {
      Map<String, Double> values = points.next(mentions.names(), i);
      double right = value(equation.right(), values);
      assertEquals(right, value(equation.left(), values), 1e-12 * right, equation.text());
    }
  }

  @Test
  void ofTwoRootsThePositiveOneIsTaken() {
    Derivation derivation = Systems.solve("t", names("h", "v", "g"), "h = v t + 1/2 g t^2");
    assertEquals("(sqrt(2*h g + v^2) - v)/g", Printer.print(solved(derivation).answer()));
    assertEquals(List.of("t would be negative."), rejected(derivation));
  }

  @Test
  void twoPositiveRootsAreBothGiven() {
    Map<String, Double> known = Map.of("h", 3.0, "v", 10.0, "g", 9.81);
    Derivation derivation = Systems.solve("t", known, "h = v t - 1/2 g t^2");
    Outcome.Several several = assertInstanceOf(Outcome.Several.class, derivation.outcome());
    assertEquals(2, several.answers().size());
  }

  @Test
  void valuesRuleOutANegativeRoot() {
    Map<String, Double> known = Map.of("h", -3.0, "v", 10.0, "g", 9.81);
    Derivation derivation = Systems.solve("t", known, "h = v t - 1/2 g t^2");
    assertTrue(value(solved(derivation).answer(), known) > 0, Systems.text(derivation));
    assertEquals(List.of("t would be negative."), rejected(derivation));
  }

  @Test
  void aFalseRootOfSquaringIsRejected() {
    Derivation derivation = Systems.solve("x", NONE, "sqrt(x + 2) = x");
    assertEquals(2, value(solved(derivation).answer(), NONE), 1e-15, Systems.text(derivation));
  }

  @Test
  void aThrowThatNeverGetsSoHighHasNoTime() {
    Map<String, Double> known = Map.of("h", 30.0, "v", 10.0, "g", 9.81);
    Derivation derivation = Systems.solve("t", known, "h = v t - 1/2 g t^2");
    Outcome.NoRealSolution none =
        assertInstanceOf(Outcome.NoRealSolution.class, derivation.outcome());
    assertEquals(1, none.step());
  }

  @Test
  void anAngleWhoseSineIsAboveOneIsRefusedAtItsStep() {
    Map<String, Double> known = Map.of("n_1", 1.5, "n_2", 1.0, "α", 1.0);
    Derivation derivation = Systems.solve("β", known, "n_1 sin(α) = n_2 sin(β)");
    Outcome.NoRealSolution none =
        assertInstanceOf(Outcome.NoRealSolution.class, derivation.outcome());
    assertEquals(2, none.step());
    assertTrue(none.why().contains("sin(β) would be 1.26"), none.why());
  }

  @ParameterizedTest
  @CsvSource({
    "x^2 + 4 = 0, 2",
    "x^2 + x + 1 = 0, 1",
    "sin(x) = 2, 1",
    "exp(x) + 1 = 0, 2",
    "1/x = 0, 1"
  })
  void whatNoRealNumberSatisfiesNamesTheStep(String relation, int step) {
    Derivation derivation = Systems.solve("x", NONE, relation);
    Outcome.NoRealSolution none =
        assertInstanceOf(
            Outcome.NoRealSolution.class, derivation.outcome(), Systems.text(derivation));
    assertEquals(step, none.step(), Systems.text(derivation));
  }

  @Test
  void aZeroRootThatDivisionLosesIsTold() {
    Derivation derivation = Systems.solve("t", names("a", "v"), "v t = 1/2 a t^2");
    assertEquals("2*v/a", Printer.print(solved(derivation).answer()));
    Outcome.Other other = solved(derivation).rejected().get(0);
    assertEquals("0", Printer.print(other.root()));
  }

  @Test
  void tooFewRelationsSayWhatIsFree() {
    Derivation derivation = Systems.solve("v", names("u"), "v = u + a t", "w = 2*u");
    assertEquals(new Outcome.Free(List.of("a", "t")), derivation.outcome());
  }

  @Test
  void anUnknownThatNoRelationHasIsFree() {
    Derivation derivation = Systems.solve("x", names("u"), "v = 2*u");
    assertEquals(new Outcome.Free(List.of("x")), derivation.outcome());
  }

  @Test
  void relationsThatContradictEachOtherEndInAFalseEquation() {
    Derivation derivation = Systems.solve("x", NONE, "x + y = 2", "x + y = 3");
    Outcome.Contradiction contradiction =
        assertInstanceOf(Outcome.Contradiction.class, derivation.outcome());
    assertEquals("3 = 2", contradiction.equation().text());
  }

  @Test
  void anUnknownThatDropsOutIsSaidToBeCancelled() {
    Derivation derivation = Systems.solve("m", names("g", "a"), "m g = m a");
    assertEquals(new Outcome.Cancelled("m"), derivation.outcome());
  }

  @Test
  void unknownsThatCancelNeedNoRelationOfTheirOwn() {
    Derivation derivation =
        Systems.solve("C", names("ε_0", "A", "d"), "C = Q/U", "U = E d", "E = Q/(ε_0 A)");
    assertEquals("ε_0 A/d", Printer.print(solved(derivation).answer()));
  }

  @Test
  void whatHasNoClosedFormIsLeftAsOneEquation() {
    Derivation derivation = Systems.solve("x", names("c"), "x = c y", "y = cos(x)");
    Outcome.Numeric numeric = assertInstanceOf(Outcome.Numeric.class, derivation.outcome());
    assertEquals("x = c cos(x)", numeric.equation().text());
  }

  @Test
  void whatCannotBeReducedIsLeftAsASystem() {
    Derivation derivation =
        Systems.solve("x", NONE, "x + sin(x) = y cos(y)", "x cos(x) = y + sin(y)");
    Outcome.NumericSystem system =
        assertInstanceOf(Outcome.NumericSystem.class, derivation.outcome());
    assertEquals(List.of("x", "y"), system.unknowns());
    assertEquals(2, system.equations().size());
  }

  @Test
  void relationsThatSayTheSameTwiceLeaveSomethingFree() {
    Derivation derivation = Systems.solve("x", NONE, "x + y = z", "2*x + 2*y = 2*z", "z = 3");
    assertEquals(new Outcome.Free(List.of("y")), derivation.outcome());
  }

  /** The law of cosines for an angle between two forces (textbook form, from memory). */
  @Test
  void twoForcesAtAnAngleGiveTheLawOfCosines() {
    Derivation derivation =
        Systems.solve(
            "R", names("F_1", "F_2", "α"), "R cos(δ) = F_1 + F_2 cos(α)", "R sin(δ) = F_2 sin(α)");
    Expr expected = Systems.expression("sqrt(F_1^2 + F_2^2 + 2*F_1 F_2 cos(α))");
    assertSame(new Equation(solved(derivation).answer(), expected));
    assertEquals(4, derivation.steps().size(), Systems.text(derivation));
  }

  @Test
  void twoComponentsGiveTheirResultant() {
    Derivation derivation =
        Systems.solve("F", names("F_x", "F_y"), "F cos(θ) = F_x", "F sin(θ) = F_y");
    assertEquals("sqrt(F_x^2 + F_y^2)", Printer.print(solved(derivation).answer()));
  }

  @Test
  void theAngleOfAThrowFollowsFromAQuadraticEquationForItsTangent() {
    Map<String, Double> known = Map.of("v", 20.0, "g", 9.81, "x", 15.0, "y", 3.0);
    Derivation derivation =
        Systems.solve("θ", known, "x = v t cos(θ)", "y = v t sin(θ) - 1/2 g t^2");
    Outcome.Several several =
        assertInstanceOf(Outcome.Several.class, derivation.outcome(), Systems.text(derivation));
    for (Expr answer : several.answers()) {
      double angle = value(answer, known);
      double time = 15 / (20 * Math.cos(angle));
      assertEquals(3, 20 * time * Math.sin(angle) - 9.81 / 2 * time * time, 1e-9);
    }
  }

  @Test
  void aRelationThatTheValuesContradictIsNotPassedOver() {
    Map<String, Double> known = Map.of("a", 2.0, "b", 3.0);
    Derivation derivation = Systems.solve("x", known, "a x = b", "x = 1");
    assertInstanceOf(Outcome.Contradiction.class, derivation.outcome(), Systems.text(derivation));
  }

  @Test
  void aRelationThatSaysTheSameToMeasuredFiguresIsNoContradiction() {
    Map<String, Double> known = Map.of("a", 2.0, "b", 2.01);
    Derivation derivation = Systems.solve("x", known, "a x = b", "x = 1");
    assertEquals("1", Printer.print(solved(derivation).answer()));
  }

  @Test
  void anOtherUnknownMayBeZero() {
    Map<String, Double> known = Map.of("m", 2.0, "v", 3.0);
    Derivation derivation =
        Systems.solve("v_1", known, "m v = m v_1 + m v_2", "1/2 m v^2 = 1/2 m v_1^2 + 1/2 m v_2^2");
    assertEquals("v", Printer.print(solved(derivation).answer()));
    assertEquals(List.of("v_1 ≠ 0 is looked for."), rejected(derivation));
  }

  @Test
  void aCosineThatMayBeZeroGivesAnotherAnswer() {
    Derivation derivation = Systems.solve("x", names("a", "b"), "a sin(x)^2 + b cos(x) = a");
    Outcome.Several several = assertInstanceOf(Outcome.Several.class, derivation.outcome());
    assertEquals(
        List.of("acos(b/a)", "acos(0)"), several.answers().stream().map(Printer::print).toList());
  }

  @Test
  void fourLinearEquationsAreSolved() {
    Derivation derivation =
        Systems.solve(
            "x",
            NONE,
            "x + y + z + w = 10",
            "x - y + 2*z = 5",
            "2*x + y - w = 0",
            "x + 3*y - z + 2*w = 12");
    assertEquals(1, value(solved(derivation).answer(), NONE), 1e-12, Systems.text(derivation));
  }
}
