package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.sheet.Cells.marked;
import static plainscale.sheet.Cells.onlyProblem;
import static plainscale.sheet.Cells.run;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.fraction.Fraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.algebra.Budget;
import plainscale.notation.Problem;
import plainscale.quantity.Shown;

/** What becomes of a sheet's quantities near a limit. */
class LimitsTest {
  private final Sheet sheet = new Sheet();

  @BeforeEach
  void hangingBallsAndFields() {
    run(
        sheet,
        "givens",
        "given m = 2.70 g",
        "given d = 14.0 cm",
        "given s = 0.900 m",
        "θ = 30°",
        "T = m g_n/cos(θ)",
        "relation level: k_e q^2/d^2 = m g_n d/(2*s)",
        "solve level for q in nC",
        "given t = 0.7 s",
        "given τ = 0.2 s",
        "given U_0 = 5.00 ± 0.05 V");
  }

  private Result.Limited limit(String line) {
    return (Result.Limited) run(sheet, "cell", line).results().get(0);
  }

  private Ending ending(String line) {
    return limit(line).endings().get(0);
  }

  private static Optional<Fraction> power(Ending ending) {
    return ending.fraction();
  }

  @Test
  void theTensionGrowsAsTheThreadsComeToLieFlat() {
    Result.Limited limited = limit("limit θ to 90° show T in mN");
    Ending ending = limited.endings().get(0);
    assertEquals(Trend.Kind.GROWS, ending.kind());
    assertEquals(Optional.of(new Fraction(-1)), power(ending));
    assertEquals(10, ending.times(), 1e-9);
    List<String> angles =
        limited.table().rows().stream()
            .map(row -> row.get(0).orElseThrow().value().toPlainString())
            .toList();
    assertEquals(List.of("30", "84", "89.4", "89.94", "89.994", "89.9994", "89.99994"), angles);
  }

  @Test
  void fromTheOtherSideItComesFromThere() {
    Result.Limited limited = limit("limit θ to 0° show T in mN, sin(θ)/θ");
    assertTrue(limited.above());
    assertEquals("26.5", limited.endings().get(0).shown().orElseThrow().value().toPlainString());
    assertEquals("1.00", limited.endings().get(1).shown().orElseThrow().value().toPlainString());
  }

  /** OpenStax University Physics Volume 2, example 5.4: two charges, on the line between them. */
  @Test
  void farAwayTwoLikeChargesAreOneAndADipoleFallsFaster() {
    run(
        sheet,
        "field",
        "given z = 1.0 m",
        "given a = 2.0 cm",
        "given Q = 3.0 nC",
        "E_like = 2*k_e Q z/(z^2 + (a/2)^2)^(3/2)",
        "E_unlike = k_e Q a/(z^2 + (a/2)^2)^(3/2)",
        "E_axis = k_e Q (1/(z - a/2)^2 - 1/(z + a/2)^2)");
    Result.Limited far =
        limit("limit z to infinity show E_like, E_unlike, E_axis, E_unlike z^3/(k_e Q a)");
    assertEquals(Trend.Kind.ZERO, far.endings().get(0).kind());
    assertEquals(Optional.of(new Fraction(2)), power(far.endings().get(0)));
    assertEquals(Optional.of(new Fraction(3)), power(far.endings().get(1)));
    assertEquals(Optional.of(new Fraction(3)), power(far.endings().get(2)));
    Shown one = far.endings().get(3).shown().orElseThrow(); // E → k_e Q a/z³
    assertEquals("1.00", one.value().toPlainString());
    assertEquals(far.endings().get(0), ending("limit z to ∞ show E_like"));
  }

  @Test
  void aDerivedUnknownTurnsItsRelationsRound() {
    Ending ending = ending("limit q to 0 C show d"); // q goes as d^(3/2)
    assertEquals(Trend.Kind.ZERO, ending.kind());
    assertEquals(Optional.of(new Fraction(2, 3)), power(ending));
    assertEquals(Optional.of(new Fraction(3, 2)), power(ending("limit d to 0 cm show q")));
  }

  @Test
  void whatTheNameDoesNotReachIsSaid() {
    assertEquals(Trend.Kind.NOT_CONTAINED, ending("limit θ to 90° show q").kind());
    assertEquals(Trend.Kind.SAME, ending("limit θ to 90° show T cos(θ)/m").kind());
  }

  @Test
  void aLimitKeepsItsUncertaintyAndTheFiguresAskedFor() {
    Shown shown =
        ending("limit t to infinity show U_0 (1 - exp(-t/τ)) in mV to 2 figures")
            .shown()
            .orElseThrow();
    assertEquals("5.0E+3", shown.value().toString());
    assertEquals("5.00", limitOf("limit t to infinity show U_0 (1 - exp(-t/τ))"));
  }

  private String limitOf(String line) {
    Shown shown = ending(line).shown().orElseThrow();
    assertTrue(shown.uncertainty().isPresent());
    return shown.value().toPlainString();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "limit t to infinity show U_0 exp(-t/τ)      | QUICKLY_ZERO",
        "limit t to infinity show exp(t/τ)           | QUICKLY_GROWS",
        "limit t to infinity show ln(t/τ)            | SLOWLY",
        "limit t to infinity show sin((t/τ) [rad])   | UNCLEAR",
        "limit t to 0 s show exp(-τ/t)               | QUICKLY_ZERO",
        "limit t to 0 s show sqrt(t/τ - 0.01)        | UNCLEAR",
        "limit t to 0 s show sin((τ/t) [rad])        | UNCLEAR",
        "limit t to 0 s show 2 - 1e-9*τ/t            | GROWS",
        "limit t to 0 s show 3 + sqrt(t/τ)           | LIMIT"
      })
  void otherEndings(String line, Trend.Kind kind) {
    assertEquals(kind, ending(line).kind());
  }

  /** By their Taylor series 1/2 and 1/24; to a tenth of a millionth the digits are long gone. */
  @Test
  void whereDigitsAreLostNoLimitIsReadFromThem() {
    Result.Limited limited =
        limit(
            "limit t to 0 s show (exp(t/τ) - 1 - t/τ)/(t/τ)^2,"
                + " (cosh(t/τ) - 1 - (t/τ)^2/2)/(t/τ)^4, (1 - cos(((t/τ)^3) [rad]))/(t/τ)^6");
    Ending half = limited.endings().get(0);
    assertEquals(Ending.Stop.SCATTER, half.stop());
    assertEquals("0.500", half.shown().orElseThrow().value().toPlainString());
    for (Ending lost : limited.endings().subList(1, 3)) {
      assertEquals(Ending.Stop.SCATTER, lost.stop());
      assertEquals(Trend.Kind.UNCLEAR, lost.kind());
    }
    assertTrue(limited.table().rows().get(6).get(1).isEmpty());
    assertTrue(limited.table().rows().get(0).get(1).isPresent());
  }

  /** Where the value ends, nothing is said of what would come. */
  @Test
  void whereThereIsNoValueThereIsNoLimit() {
    Ending ending = ending("limit t to 0 s show 1 + 0*sqrt(t/τ - 0.01)");
    assertEquals(Trend.Kind.UNCLEAR, ending.kind());
    assertEquals(Ending.Stop.NO_VALUE, ending.stop());
    assertEquals("0.007", ending.lastGood().orElseThrow().value().toPlainString());
  }

  @Test
  void aTemperatureGoesToTheZeroOfItsScale() {
    run(sheet, "warm", "given T_1 = 25 °C");
    assertEquals(Trend.Kind.ZERO, ending("limit T_1 to 0 °C show T_1").kind());
    Shown kelvins = ending("limit T_1 to 0 °C show (T_1 in K) to 4 figures").shown().orElseThrow();
    assertEquals("273.2", kelvins.value().toPlainString());
  }

  @Test
  void theSheetItselfStaysAndTheTableFollowsIt() {
    limit("limit θ to 90° show T");
    assertEquals(30, Math.toDegrees(Cells.value(sheet, "θ").value().doubleValue()), 1e-9);
    assertTrue(Cells.updated(run(sheet, "more", "given m = 3.00 g")).contains("cell"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "limit θ to 5 cm show T   | 5 cm | “θ” is an angle; it cannot come near to a length.",
        "limit d to 0 show q      | 0    | “d” is a length; it cannot come near to a plain number.",
        "limit θ to 30° show T    | θ    | “θ” has that value already, and a limit is approached from another one.",
        "limit x_9 to 3 show T    | x_9  | I do not know “x_9” in this sheet.",
        "limit θ to 90° show x_9  | x_9  | I do not know “x_9” in this sheet.",
        "limit θ to 90° show d + m | +   | You are adding centimetres to grams: a length and a mass do not go together.",
        "limit t to 1 s show sqrt(t) | sqrt(t) | This would have the root of a unit (such as √m) as its unit.",
        "limit θ to 90°           | ''   | Here the line ends; “show” and what is to be shown belong here.",
        "limit θ to infinity T    | T    | Here there is “T”; “show” and what is to be shown belong here.",
        "limit θ from 90° show T  | from | Here there is “from”; “to” and the limit belong here, as in: limit θ to 90° show T.",
        "limit 3 to 4 show T      | 3    | Here there is “3”; a name belongs here, as in: limit θ to 90° show T.",
        "1 + ∞                    | ∞    | Here there is “∞”; a number, a name or a bracket belongs here."
      })
  void whatIsWrongIsTold(String cell, String place, String sentence) {
    Problem problem = onlyProblem(sheet.run("cell", cell));
    assertEquals(sentence, problem.sentence());
    assertEquals(place, marked(problem));
  }

  @Test
  void fromBelowZeroNothingLeadsToInfinity() {
    run(sheet, "negative", "given q_0 = -3 nC");
    Problem problem = onlyProblem(sheet.run("cell", "limit q_0 to infinity show 1/q_0"));
    assertEquals(
        "“q_0” is not above zero, so that ten times as much of it leads to no infinity.",
        problem.sentence());
    Ending ending = ending("limit q_0 to 0 C show 1/q_0");
    assertTrue(ending.negative());
    assertEquals(Trend.Kind.GROWS, ending.kind());
  }

  @Test
  void rowsThatWereNotComputedAreNotTakenForMissingValues() {
    for (String line : List.of("limit θ to 90° show T", "vary θ from 0° to 80° by 1° show T")) {
      Budget little = new Budget(100, Duration.ofMinutes(1), () -> false);
      String sentence = onlyProblem(sheet.run("cell", line, little)).sentence();
      assertTrue(sentence.endsWith("This cell takes too long; it was stopped."), sentence);
    }
  }

  /**
   * Little charge: q² = m g d³/(2 k_e s), so d goes as q^(2/3). Much: the threads lie flat, d = 2
   * s. Near that, tan θ goes as (1 − sin θ)^(−1/2), and q as its root.
   */
  @Test
  void rootsByNumbersHaveLimitsToo() {
    run(
        sheet,
        "balls",
        "given Q = 60 nC",
        "relation push: k_e Q^2/D^2 = T_2 sin(α)",
        "relation upright: m g_n = T_2 cos(α)",
        "relation shape: D = 2*s sin(α)",
        "solve push, upright, shape for D");
    Ending small = ending("limit Q to 0 C show D");
    assertEquals(Trend.Kind.ZERO, small.kind());
    assertEquals(Optional.of(new Fraction(2, 3)), power(small));
    Shown flat = ending("limit Q to infinity show D in m").shown().orElseThrow();
    assertEquals("1.80", flat.value().toPlainString());
    Ending large = ending("limit D to 1.8 m show Q");
    assertEquals(Trend.Kind.GROWS, large.kind());
    assertEquals(Optional.of(new Fraction(-1, 4)), power(large));
  }
}
