package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.sheet.Cells.marked;
import static plainscale.sheet.Cells.onlyProblem;
import static plainscale.sheet.Cells.run;
import static plainscale.sheet.Cells.value;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.notation.Problem;
import plainscale.render.Renderers;

/** Units in relations: a zero, readings in °C, named exponents, letters that are constants. */
class RelationUnitsTest {
  private final Sheet sheet = new Sheet();

  private String text(String... lines) {
    return Renderers.text(run(sheet, "cell", lines).results());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "N - m g_n cos(φ) = 0       | N | 18.43047",
        "0 = m g_n cos(φ) - N       | N | 18.43047",
        "0 = v_0 sin(φ) t - 1/2 g_n t^2 | t | 1.39505",
      })
  void aZeroHasAnyUnit(String relation, String unknown, double expected) {
    text("given m = 2.0 kg", "given φ = 20.0°", "given v_0 = 20.0 m/s");
    run(sheet, "solve", "relation bal: " + relation, "solve bal for " + unknown);
    assertEquals(expected, value(sheet, unknown).value().doubleValue(), 1e-4);
  }

  /**
   * An eighth of a turn; ω t is a number for the units, and the relation says that it is an angle.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "x = A cos(360 [°] t/T) | given T = 8.0 s",
        "x = A cos(ω t*1 [rad]) | given ω = 0.785398163397448 rad/s"
      })
  void anAngleThatIsWrittenOutMakesAProductOne(String relation, String given) {
    run(sheet, "cell", "given A = 2.0 cm", "given t = 1.0 s", given);
    run(sheet, "solve", "relation swing: " + relation, "solve swing for x");
    assertEquals(0.02 * Math.sqrt(0.5), value(sheet, "x").value().doubleValue(), 1e-12);
  }

  @Test
  void withoutAWrittenAngleAProductIsRefusedAsAnAngle() {
    run(sheet, "cell", "given A = 2.0 cm", "given t = 1.0 s", "given f = 2.0 Hz");
    Problem problem =
        onlyProblem(sheet.run("solve", "relation swing: x = A cos(f t)\nsolve swing for x"));
    assertEquals(Problem.Kind.UNIT, problem.kind());
  }

  @Test
  void anotherNumberThanZeroStillNeedsItsUnit() {
    Problem problem =
        onlyProblem(sheet.run("c", "given m = 2 kg\nrelation b: N - m g_n = 1\nsolve b for N"));
    assertEquals(Problem.Kind.UNIT, problem.kind());
  }

  /** Root by numbers: x + ln(x/1 m) m = 0 has no closed form; x is the omega constant, 0.567143. */
  @Test
  void aRootByNumbersMayBeOneOfAZero() {
    text("given l = 1 m", "relation om: x + l ln(x/l) = 0", "solve om for x");
    assertEquals(0.567143, value(sheet, "x").value().doubleValue(), 1e-6);
    assertEquals("m", value(sheet, "x").displayUnit().text());
  }

  private static final String[] TWO_RODS = {
    "given T_1 = 100.0 °C",
    "given T_2 = 20.0 °C",
    "given k_1 = 80.0 W/(m K)",
    "given k_2 = 220 W/(m K)",
    "relation one: P = k_1 b (T_1 - T)",
    "relation two: P = k_2 b (T - T_2)",
    "relation three: b = s^2",
    "given s = 2.0 m"
  };

  /**
   * The joint of two rods: their breadth b has no value, but drops out. University Physics 2, 1.11.
   */
  @Test
  void whatDropsOutNeedsNoValueForReadingsToBeKelvins() {
    text(TWO_RODS);
    run(sheet, "solve", "solve one, two for T in °C");
    assertEquals(293.15 + 80 * 80 / 300.0, value(sheet, "T").value().doubleValue(), 1e-9);
  }

  @Test
  void aCircleIsToldAtTheStatement() {
    text(TWO_RODS);
    Problem problem =
        onlyProblem(sheet.run("solve", "solve one, two for T in °C\nsolve two, three for P"));
    assertTrue(problem.sentence().contains("is defined by itself"), problem::sentence);
    assertEquals("solve two, three for P", marked(problem));
  }

  /** One part at 20 °C and two at 80 °C: 60 °C, by differences alone. */
  @Test
  void readingsInCelsiusAreKelvinsInWhatFollows() {
    String text =
        text(
            "given m_1 = 1.00 kg",
            "given m_2 = 2.00 kg",
            "given T_1 = 20.0 °C",
            "given T_2 = 80.0 °C",
            "relation mix: m_1 (T - T_1) = m_2 (T_2 - T)",
            "solve mix for T in °C");
    assertEquals(333.15, value(sheet, "T").value().doubleValue(), 1e-9);
    assertTrue(text.contains("the readings of T_1, T_2 in °C or °F are put in as kelvins"), text);
    assertTrue(text.contains("1.00 kg*293.15 K + 2.00 kg*353.15 K"), text);
    assertTrue(text.contains("= 60 °C"), text);
  }

  /** exp(−M g z/(R T)) with T = 288.15 K: 0.029 × 9.80665 × 1000/(8.314463 × 288.15) = 0.118703. */
  @Test
  void aTemperatureInKelvinsStaysOneOnTheWay() {
    text(
        "given p_0 = 1013 hPa",
        "given M = 0.029 kg/mol",
        "given z = 1000 m",
        "given T = 15 °C",
        "relation baro: p = p_0 exp(-M g_n z/(R (T in K)))",
        "solve baro for p");
    double expected = 101300 * Math.exp(-0.118703);
    assertEquals(expected, value(sheet, "p").value().doubleValue(), 1);
    assertEquals("Pa", value(sheet, "p").displayUnit().text());
  }

  @Test
  void aProductThatIsWrittenStaysRefused() {
    Problem problem = onlyProblem(sheet.run("c", "given T = 15 °C\nshow 2*T"));
    assertTrue(problem.sentence().contains("point on a scale"), problem::sentence);
  }

  @Test
  void aDifferenceNeedsNoKelvins() {
    String text = text("given T_1 = 20 °C", "relation d: T_2 - T_1 = 5 [K]", "solve d for T_2");
    assertTrue(text.contains("T_2 = 5 K + T_1"), text);
    assertTrue(text.contains("= 25 °C"), text);
  }

  /** 2.0 bar × 4^1.40 = 13.93 bar. */
  @Test
  void aGivenPlainNumberMayBeAnExponentOfAVolume() {
    text(
        "given κ = 1.40",
        "given V_1 = 2.0 L",
        "given V_2 = 0.50 L",
        "given p_1 = 2.0 bar",
        "relation ad: p_1 V_1^κ = p_2 V_2^κ",
        "solve ad for p_2");
    assertEquals(2e5 * Math.pow(4, 1.40), value(sheet, "p_2").value().doubleValue(), 1e-3);
    assertEquals("Pa", value(sheet, "p_2").displayUnit().text());
  }

  @Test
  void anExponentWithAUnitIsNone() {
    Problem problem =
        onlyProblem(
            sheet.run(
                "c",
                "given κ = 1.40 s\ngiven V = 2 L\nrelation ad: p = 1 [Pa]*V^κ/V^κ\nsolve ad for p"));
    assertEquals(Problem.Kind.UNIT, problem.kind());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1/2 (m + M) u^2 = 1/2 k x^2 | v_1 | u is the atomic mass unit",
        "m g_n sin(φ) - R = m a      | F_1 | R is the molar gas constant",
        "w^2 = 2*g_n h               | w   | h is the Planck constant",
      })
  void aLetterThatIsAConstantIsToldWhereUnitsDisagree(
      String relation, String unknown, String told) {
    text(
        "given m = 2 kg",
        "given M = 3 kg",
        "given k = 50 N/m",
        "given x = 1 m",
        "given φ = 20°",
        "given a = 1 m/s²");
    Problem problem =
        onlyProblem(sheet.run("s", "relation r: %s\nsolve r for %s".formatted(relation, unknown)));
    assertTrue(problem.repairs().get(0).startsWith(told), problem.repairs()::toString);
    assertTrue(problem.repairs().get(0).endsWith("_1"), problem.repairs()::toString);
  }

  @Test
  void aNameThatDoesNotOccurIsTold() {
    Problem problem = onlyProblem(sheet.run("c", "relation ohm: U = R_1 I\nsolve ohm for q"));
    assertEquals("“q” does not occur in ohm.", problem.sentence());
    assertEquals(List.of("what occurs there: I, R_1, U"), problem.repairs());
  }

  @Test
  void severalFreeNamesAre() {
    Problem problem = onlyProblem(sheet.run("c", "relation ohm: U = R_1 I\nsolve ohm for U"));
    assertTrue(problem.sentence().endsWith("still free are I, R_1."), problem::sentence);
  }

  /** 2.5 cm/50 cm = 0.05 rad = 2.86°. */
  @Test
  void aSmallAngleIsAnAngle() {
    String text =
        text(
            "given L = 50 cm",
            "given x = 2.5 cm",
            "relation pend: x = L sin(θ)",
            "solve pend for θ with small θ");
    assertTrue(value(sheet, "θ").kind().angle());
    assertTrue(text.contains("= 2.9°"), text);
  }

  @Test
  void uncertainConstantsAloneAreNothingToMeasure() {
    String text = text("relation em: E_e = m_e c^2 α_fs", "solve em for E_e");
    assertTrue(!text.contains("measure"), text);
  }
}
