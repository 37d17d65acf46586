package plainscale.algebra;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;
import plainscale.quantity.Distribution;

/**
 * The examples of JCGM 101:2008, clause 9, with a million trials. The printed numbers are values
 * from memory, computed again; an end of an interval may be off by half of its last printed digit
 * and by three times the scatter that a million trials have.
 */
class TrialsTest {
  private static final Trials.Plan MILLION = new Trials.Plan(1_000_000, 1);
  private static final String FOUR = "a + b + c + d";
  private static final String SQUARES = "x^2 + y^2";

  private static Trials run(Model model, String formula) {
    return Trials.run(model.compiled(formula), MILLION, Model.cost());
  }

  private static void assertEnd(double printed, double end, double digit, Trials trials) {
    assertEquals(printed, end, digit / 2 + 3 * trials.scatter());
  }

  private static Model four(String doubt, String last, Distribution distribution) {
    return new Model()
        .with("a", "0", doubt, distribution)
        .with("b", "0", doubt, distribution)
        .with("c", "0", doubt, distribution)
        .with("d", "0", last, distribution);
  }

  /** 9.2.2: u 2.00, interval ±3.92, as the linear result. */
  @Test
  void theSumOfFourNormalInputs() {
    Trials trials = run(four("1", "1", Distribution.NORMAL), FOUR);
    assertEquals(2.00, trials.standard(), 0.005);
    assertEnd(-3.92, trials.symmetric().low(), 0.01, trials);
    assertEnd(3.92, trials.symmetric().high(), 0.01, trials);
  }

  /** 9.2.3: rectangular inputs of standard deviation 1, half-width √3: ±3.88 where it is ±3.92. */
  @Test
  void theSumOfFourRectangularInputsIsALittleNarrower() {
    Model model = four("1.7320508075688772", "1.7320508075688772", Distribution.RECTANGULAR);
    Trials trials = run(model, FOUR);
    assertEquals(2.00, trials.standard(), 0.005);
    assertEnd(-3.88, trials.symmetric().low(), 0.01, trials);
    assertEnd(3.88, trials.symmetric().high(), 0.01, trials);
    assertTrue(trials.symmetric().high() + 3 * trials.scatter() < 3.92);
  }

  /** 9.2.4: one rectangular input of standard deviation 10 rules: ±17.0 where it is ±19.9. */
  @Test
  void aLargeRectangularInputCutsTheInterval() {
    Model model = four("1.7320508075688772", "17.320508075688775", Distribution.RECTANGULAR);
    Trials trials = run(model, FOUR);
    double linear = model.linear(FOUR).uncertainty().standard();
    assertEquals(10.1, linear, 0.05);
    assertEquals(linear, trials.standard(), 3 * linear / Math.sqrt(2e6));
    assertEnd(-17.0, trials.symmetric().low(), 0.1, trials);
    assertEnd(17.0, trials.symmetric().high(), 0.1, trials);
  }

  /** 9.4: δY = x₁² + x₂², u = 0.005 each, in units of 10⁻⁶; the intervals are the shortest. */
  @ParameterizedTest
  @CsvSource({"0, 50, 50, 0, 150", "0.010, 150, 112, 0, 367", "0.050, 2551, 502, , "})
  void theSumOfTwoSquares(String x, double mean, double standard, String low, String high) {
    Model model = new Model().with("x", x, "0.005").with("y", "0", "0.005");
    Trials trials = run(model, SQUARES);
    double tolerance = 0.5 + 3 * standard / 1000; // a mean of a million scatters by u/1000
    assertEquals(mean, trials.mean() * 1e6, tolerance);
    assertEquals(standard, trials.standard() * 1e6, tolerance);
    if (low != null) {
      assertEquals(Double.parseDouble(low), trials.shortest().low() * 1e6, 1);
      assertEquals(Double.parseDouble(high), trials.shortest().high() * 1e6, 2);
    }
  }

  /** 9.4.2.2: at x₁ = 0 the linear uncertainty is 0, which is no answer. */
  @Test
  void theLinearUncertaintyVanishesWhereTheSlopeDoes() {
    Model model = new Model().with("x", "0", "0.005").with("y", "0", "0.005");
    assertEquals(0, model.linear(SQUARES).uncertainty().standard());
    double second = SecondOrder.standard(model.compiled(SQUARES), Model.cost()).orElseThrow();
    assertEquals(50, second * 1e6, 1e-6); // u(x²) = √2 u², and there are two
  }

  private static String ofStudent(double s, int degrees) {
    return Double.toString(s * Math.sqrt(degrees / (degrees - 2.0)));
  }

  /**
   * 9.5: the end gauge of GUM H.1 with the distributions of table 9: u 36 nm, where H.1 has 32 nm.
   * Inputs with t distributions are normal ones of the same standard deviation here, which is
   * √(ν/(ν − 2)) s (6.4.9.4); an arc sine distribution is the sine of a rectangular phase (6.4.6),
   * and limits that are not known well are a rectangular half-width times a rectangular number
   * (6.4.3).
   */
  @Test
  void theEndGaugeIsLessCertainThanTheLinearResultSays() {
    String length = "l_S + d + d_1 + d_2 - l_S*(da*th + a_S*dth)";
    Model model =
        new Model()
            .with("l_S", "50000623", ofStudent(25, 18))
            .with("d", "215", ofStudent(6, 24))
            .with("d_1", "0", ofStudent(4, 5))
            .with("d_2", "0", ofStudent(7, 8))
            .with("a_S", "11.5e-6", "2e-6", Distribution.RECTANGULAR)
            .with("th_0", "-0.1", "0.2")
            .with("phase", "0", "3.141592653589793", Distribution.RECTANGULAR)
            .with("unit_1", "0", "1", Distribution.RECTANGULAR)
            .with("unit_2", "0", "1", Distribution.RECTANGULAR)
            .with("half_1", "1e-6", "0.1e-6", Distribution.RECTANGULAR)
            .with("half_2", "0.050", "0.025", Distribution.RECTANGULAR)
            .defining("th", "th_0 + 0.5*sin(phase [rad])")
            .defining("da", "half_1*unit_1")
            .defining("dth", "half_2*unit_2");
    Trials trials = run(model, length);
    assertEquals(36, trials.standard(), 0.5);
    assertEquals(50_000_838, trials.mean(), 0.5);
  }

  @Test
  void theSameSeedGivesTheSameTrialsAndAnotherSeedOthers() {
    Compiled function = new Model().with("x", "1", "0.1").compiled("x^2");
    Trials first = Trials.run(function, new Trials.Plan(1000, 7), Model.cost());
    Trials again = Trials.run(function, new Trials.Plan(1000, 7), Model.cost());
    Trials other = Trials.run(function, new Trials.Plan(1000, 8), Model.cost());
    assertEquals(first.mean(), again.mean());
    assertTrue(first.mean() != other.mean());
  }

  /** Below zero, one normal trial in two has no root. */
  @Test
  void trialsWithoutAValueAreCountedAndLeftOut() {
    Model model = new Model().with("x", "1", "0.1").defining("y", "sqrt(x - 1)");
    Trials trials = Trials.run(model.compiled("y"), new Trials.Plan(10_000, 1), Model.cost());
    assertEquals(10_000, trials.count() + trials.without());
    assertEquals(5000, trials.without(), 150); // three times √(10 000 · ½ · ½)
    assertTrue(trials.symmetric().low() >= 0);
  }

  @Test
  void theCellsBudgetEndsTheTrials() {
    Compiled function = new Model().with("x", "1", "0.1").compiled("x^2");
    Budget small = new Budget(100, Duration.ofSeconds(60), () -> false);
    Cost cost = new Cost(small, "x", new Span(0, 1));
    ProblemException stopped =
        assertThrows(ProblemException.class, () -> Trials.run(function, MILLION, cost));
    assertEquals(Problem.Kind.LIMIT, stopped.problems().get(0).kind());
  }
}
