package plainscale.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.api.Plainscale.constant;
import static plainscale.api.Plainscale.contrast;
import static plainscale.api.Plainscale.data;
import static plainscale.api.Plainscale.exact;
import static plainscale.api.Plainscale.forces;
import static plainscale.api.Plainscale.given;
import static plainscale.api.Plainscale.law;
import static plainscale.api.Plainscale.measured;
import static plainscale.api.Plainscale.quantity;
import static plainscale.api.Plainscale.readings;
import static plainscale.api.Plainscale.relation;
import static plainscale.api.Plainscale.situation;
import static plainscale.api.Plainscale.table;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.picture.Scene;
import plainscale.quantity.Quantity;
import plainscale.sheet.Result;

/** Values keep what they know on their way between a program and the sheet; mistakes are told. */
class SituationTest {
  private static final Quantity MASS = quantity("2.70(5) g");

  private static void assertCertain(Quantity value) {
    assertEquals(0, value.uncertainty().standard());
  }

  @Test
  void aMeasurementIsItselfWhereverItHasBeen() {
    Quantity fromRelation = relation("2*m = y").solveFor("y").with("m", MASS).value().dividedBy(2);
    Quantity difference = fromRelation.minus(MASS);
    assertEquals(0, difference.value().signum());
    assertCertain(difference);
    assertCertain(given("a", MASS).given("b", MASS).define("x", "a - b").value("x"));
  }

  @Test
  void whatWasReadOnceIsTheSameMeasurementInEverySituation() {
    Situation ball = given("m", "2.70 ± 0.05 g").given("t", "1.21, 1.25, 1.19 s");
    Quantity before = ball.value("m*t");
    Quantity after = ball.define("w", "m g_n").given("v", "3.0 m/s").value("m*t");
    assertCertain(before.minus(after));
    assertTrue(before.uncertainty().standard() > 0);
  }

  @Test
  void twoMeasurementsOfOneTextAreTwo() {
    Quantity difference = quantity("5.0(5) cm").minus(quantity("5.0(5) cm"));
    assertEquals("(0.0 ± 0.7) cm", difference.toString());
  }

  @Test
  void aFitsParametersStayCorrelated() {
    FitThrough fit =
        data(table("t", "x (s),y (m)\n1,2.1\n2,3.9\n3,6.1\n4,7.9\n"))
            .fitLine("y", "x")
            .as("a", "b");
    Quantity together = fit.situation().value("a*2.5 [s] + b");
    Quantity apart = fit.value("a").times(exact(2.5, "s")).plus(fit.value("b"));
    assertEquals(together.uncertainty().standard(), apart.uncertainty().standard(), 1e-12);
    assertTrue(apart.uncertainty().standard() < fit.value("b").uncertainty().standard());
  }

  @Test
  void constantsShareTheirSources() {
    Quantity one = constant("k_e").times(constant("ε_0")).times(4 * Math.PI);
    assertTrue(one.uncertainty().standard() < 1e-20, one.toString());
  }

  @Test
  void aGivenThatIsReplacedIsReplacedForAllThatFollows() {
    Situation falling = given("y", "1.25 m").define("t", "sqrt(2*y/g_n)");
    assertEquals("0.505 s", falling.value("t").toString());
    assertEquals("1.01 s", falling.given("y", quantity("5.00 m")).value("t").toString());
    assertEquals("0.505 s", falling.value("t").toString());
    assertEquals("y = 5.00 m\nt = sqrt(2*y/g_n) = 1.01 s", falling.given("y", "5.00 m").text());
    assertEquals(
        "y = 2.50 m\nt = sqrt(2*y/g_n) = 0.714 s",
        falling.given("y", exact(2.5, "m")).define("y", "2.50 [m]").text());
  }

  @Test
  void figuresThatAreNotTextStay() {
    Quantity third = quantity("1.0 m").dividedBy(quantity("3.0"));
    assertEquals(third.value(), given("y", third).value("y").value());
    assertEquals("0.33 m", third.toString());
    assertEquals("(14.0 ± 0.5) cm", measured(14.0, 0.5, "cm").toString());
    assertEquals("(1.220 ± 0.010) s", readings("s", 1.21, 1.25, 1.19, 1.22, 1.23).toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2.70 ± 0.05 g",
        "14.0 cm ± 2 %",
        "4.19e11",
        "12",
        "25.0 °C",
        "-3.0e-9 C",
        "30°",
        "6.674e-11 m³/(kg·s²)",
        "8.9e9 N·m²/C²",
        "0 m",
        "77 °F",
        "1.0e-30 kg",
        "3.0 1/s"
      })
  void whateverIsAQuantityCanBeGiven(String text) {
    Quantity value = quantity(text);
    Quantity computed = value.isReading() ? value : value.times(1.5).times(MASS).dividedBy(MASS);
    assertEquals(value.value(), given("x", value).value("x").value());
    assertEquals(value.toString(), given("x", value).value("x").toString());
    assertEquals(computed.value(), given("x", computed).value("x").value());
  }

  @Test
  void stepsInLettersStandBeforeTheValues() {
    Solution free = relation("k_e q^2/d^2 = m g_n tan(theta)").solveFor("q");
    assertTrue(free.text().contains("q = d sqrt(m g_n tan(θ)/k_e)"), free.text());
    assertThrows(PhysicsException.class, free::value);
    Solution known = free.with("m", MASS).with("d", "14.0 cm").with("theta", "4.5°");
    assertEquals(Optional.of("d sqrt(m g_n tan(θ)/k_e)"), free.formula());
    assertEquals(free.formula(), known.formula());
    assertEquals("(67 ± 1) nC", known.in("nC").value().toString());
  }

  private static String refused(Executable wrong) {
    PhysicsException e = assertThrows(PhysicsException.class, wrong);
    String message = String.valueOf(e.getMessage());
    assertFalse(message.contains("Exception"), message);
    return message;
  }

  @Test
  void mistakesAreToldAsTheNotationTellsThem() {
    assertEquals(
        """
        You are adding grams to seconds: a mass and a time do not go together.
          line 1: x = m + t
                        ^""",
        refused(() -> given("m", MASS).given("t", "3.0 s").define("x", "m + t")));
    assertEquals(
        """
        I know no law “coulmb”.
          line 1: use coulmb
                      ^^^^^^
        Try:  use coulomb""",
        refused(() -> law("coulmb")));
    assertEquals(
        """
        “relation” is a word of the notation.
          line 1: given relation = 2.70 ± 0.05 g
                        ^^^^^^^^
        Try:  relation_1""",
        refused(() -> given("relation", MASS)));
    assertEquals(
        "There is no relation to solve for “q”.\n"
            + "Try:  relation(\"m g_n = T cos(θ)\").solveFor(\"T\")",
        refused(() -> situation().solveFor("q")));
  }

  @Test
  void whatIsWrongIsToldByASentence() {
    assertTrue(refused(() -> quantity("2.70 gg")).contains("Try:"));
    assertTrue(refused(() -> quantity("")).contains("line 1"));
    assertTrue(refused(() -> situation().value("3 in words")).contains("formula alone"));
    assertTrue(refused(() -> given("m", "? g").value("m")).contains("blank"));
    assertTrue(refused(() -> contrast(MASS, quantity("1 s")).text()).contains("mass"));
    assertTrue(refused(() -> exact(Double.NaN, "m")).contains("finite"));
    assertTrue(refused(() -> exact(1, "zorks")).contains("zorks"));
    assertTrue(refused(() -> readings("s", 1)).contains("two"));
    assertTrue(refused(() -> constant("k_x")).contains("k_x"));
    assertTrue(refused(() -> forces("ball").by("Earth")).contains("by"));
    assertTrue(refused(() -> table("t", "")).endsWith("."));
    assertTrue(refused(() -> situation().value("a\nb = 2")).contains("line"));
  }

  @Test
  void aTextThatIsAskedForAnywhereIsGivenAlways() {
    assertTrue(contrast(MASS, quantity("1 s")).toString().contains("mass"));
    assertTrue(situation().expect("q").toString().contains("still to be said"));
    assertTrue(forces("ball").force("push", MASS).toString().contains("direction"));
  }

  @Test
  void computingWithQuantitiesTellsWhatToTry() {
    String said = assertThrows(RuntimeException.class, () -> quantity("30").sin()).getMessage();
    assertEquals(
        "sin takes an angle, and this is a plain number: degrees or radians?\n"
            + "Try:  sin(… [°])   or   sin(… [rad])",
        said);
  }

  @Test
  void everythingThatIsShownHasResults() {
    Scene scene = forces("ball").weight(MASS).pictures().get(0);
    for (Object value : List.of(MASS, scene, law("pendulum").law(), table("t", "x (m)\n1\n2\n"))) {
      assertFalse(Displays.of(value).orElseThrow().isEmpty());
    }
    List<Result> results = given("m", MASS).results();
    assertEquals(results, Displays.of(results).orElseThrow());
    assertTrue(Displays.of(null).isEmpty());
    assertTrue(Displays.of(List.of("a")).isEmpty());
    assertTrue(Displays.of(3.5).isEmpty());
  }
}
