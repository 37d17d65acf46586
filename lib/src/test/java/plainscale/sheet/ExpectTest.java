package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.sheet.Cells.marked;
import static plainscale.sheet.Cells.onlyProblem;
import static plainscale.sheet.Cells.run;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.notation.Problem;
import plainscale.render.Renderers;

/** Between what a value should lie, and from which given it comes if it does not. */
class ExpectTest {
  private final Sheet sheet = new Sheet();

  @BeforeEach
  void twoBalls() {
    run(
        sheet,
        "givens",
        "given m = 2.70 g \"mass of one ball\"",
        "given s = 0.900 m \"thread\"",
        "given x = 102 ± 3 g",
        "given y = 10.4 cm",
        "given n = 12",
        "given T = 20 °C",
        "given z = -3 m",
        "z_2 = 2.0 y");
    charge("14.0 cm");
  }

  private Run charge(String distance) {
    run(sheet, "distance", "given d = " + distance + " \"centre to centre\"");
    return run(
        sheet,
        "charge",
        "relation sideways: k_e q^2/d^2 = m g_n d/(2*s)",
        "solve sideways for q with answer");
  }

  private String shown(String line) {
    return Renderers.text(run(sheet, "look", line).results());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "q between 1 nC and 100 nC \"by hand\" | q = 67.0 nC lies between 1 nC and 100 nC, as expected (by hand).",
        "q below 1 µC                          | q = 67.0 nC lies below 1 µC, as expected.",
        "q above 1e-9 C                        | q = 67.0 nC lies above 1 × 10⁻⁹ C, as expected.",
        "q about 70 nC within 20 %             | q = 67.0 nC lies within 20 % of 70 nC, as expected.",
        "q about 70 nC within 5 nC             | q = 67.0 nC lies within 5 nC of 70 nC, as expected.",
        "n about 10 within 20 %                | n = 12 lies within 20 % of 10, as expected.",
        "n about 10 within 3                   | n = 12 lies within 3 of 10, as expected.",
        "T between 15 °C and 30 °C             | T = 20 °C lies between 15 °C and 30 °C, as expected.",
        "T about 25 °C within 6 K              | T = 20 °C lies within 6 K of 25 °C, as expected.",
        "T about 25 °C within 6 °C             | T = 20 °C lies within 6 °C of 25 °C, as expected.",
        "q below 2*q                           | q = 67.0 nC lies below 134 nC, as expected.",
        "m g_n in mN below 1 N                 | ''",
        "2*y below 1 m                         | 2*y = 20.8 cm lies below 1 m, as expected."
      })
  void aValueInsideIsOneQuietLine(String expected, String line) {
    if (line.isEmpty()) {
      assertTrue(shownProblem(expected).sentence().startsWith("Here there is “in”"));
    } else {
      assertEquals(line, shown("expect " + expected));
    }
  }

  private Problem shownProblem(String expected) {
    return onlyProblem(sheet.run("look", "expect " + expected));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "x below 100 g                | x = (102 ± 3) g is outside by less than twice its uncertainty, so it may lie below 100 g.",
        "x below 96.1 g               | x = (102 ± 3) g is outside by less than twice its uncertainty, so it may lie below 96.1 g.",
        "y below 10.35 cm             | y = 10.4 cm is outside by less than half of its last digit, so it may lie below 10.35 cm.",
        "z_2 between 1 cm and 20.75 cm | z_2 = 20.8 cm is outside by less than half of its last digit, so it may lie between 1 cm and 20.75 cm."
      })
  void whatItsUncertaintyLeavesOpenCountsAsInside(String expected, String line) {
    assertEquals(line, shown("expect " + expected));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "x below 95.9 g              | x = (102 ± 3) g should lie below 95.9 g; it is 6.4 % above that.",
        "y below 10.34 cm            | y = 10.4 cm should lie below 10.34 cm; it is 0.58 % above that.",
        "n below 5 \"few\"           | n = 12 should lie below 5 (few); it is 2.4 times that.",
        "n above 100                 | n = 12 should lie above 100; that is 8.3 times as much.",
        "n between 100 and 200       | n = 12 should lie between 100 and 200; the lower limit is 8.3 times as much.",
        "n between 1 and 5           | n = 12 should lie between 1 and 5; it is 2.4 times the upper limit.",
        "n about 20 within 10 %      | n = 12 should lie within 10 % of 20; it is 33 % below the lower limit.",
        "T above 300 K               | T = 20 °C should lie above 300 K; it is 6.8 K below that.",
        "T below 15 °C               | T = 20 °C should lie below 15 °C; it is 5.0 K above that.",
        "z above 1 m                 | z = −3 m should lie above 1 m; it is 4 m below that.",
        "z above 0 m                 | z = −3 m should lie above 0 m; it is negative.",
        "z between -2 m and 0 m      | z = −3 m should lie between −2 m and 0 m; it is 50 % below the lower limit."
      })
  void byHowMuchItIsOutsideIsTold(String expected, String line) {
    assertEquals("Unexpected: " + line, shown("expect " + expected).lines().findFirst().orElse(""));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "14.0 m  | With d = 14.0 cm instead of 14.0 m it would be 67.0 nC: is the unit of d right?",
        "14.0 mm | Or with d = 14.0 cm instead of 14.0 mm it would be 67.0 nC: is the unit of d right?",
      })
  void theSlipThatExplainsItIsNamed(String distance, String suspicion) {
    charge(distance);
    String told = shown("expect q between 60 nC and 70 nC");
    assertTrue(told.contains(suspicion), told);
  }

  @Test
  void theMostUsualSlipComesFirstAndEachGivenOnce() {
    charge("14.0 m");
    List<String> lines = shown("expect q between 1 nC and 100 µC").lines().toList();
    assertEquals(List.of("q = 67.0 µC lies between 1 nC and 100 µC, as expected."), lines);
    List<String> outside = shown("expect q above 1 mC").lines().skip(1).toList();
    assertTrue(
        outside.get(0).startsWith("  With m = 2.70 kg instead of 2.70 g"), outside::toString);
    assertTrue(outside.get(1).startsWith("  Or with s = 0.900 mm"), outside::toString);
    String names =
        outside.stream()
            .map(line -> line.replaceAll(".*ith (\\S+) =.*", "$1"))
            .collect(Collectors.joining());
    assertEquals("msd", names);
  }

  @Test
  void withoutASlipTheGivenWithTheLargestLeverIsNamed() {
    String told = shown("expect q about 90 nC within 5 %");
    assertTrue(
        told.contains(
            "No usual slip explains it. q hangs most on d = 14.0 cm: it would have to be 16 cm, 1.2 times as much."),
        told);
  }

  @Test
  void aRadiusForADiameterIsFound() {
    run(sheet, "wire", "given r = 0.40 mm \"radius of the wire\"", "A = π r^2 \"cross section\"");
    String told = shown("expect A about 0.126 mm^2 within 5 %");
    assertTrue(
        told.contains(
            "With r = 0.20 mm instead of 0.40 mm it would be 0.13 mm²: is that the diameter, or the radius?"),
        told);
  }

  @Test
  void degreesForRadiansAreFoundAndReadingsForKelvins() {
    run(sheet, "angle", "given β = 0.52°", "b = sin(β)", "given T_k = 293 °C", "given T_m = 20 K");
    assertTrue(
        shown("expect b about 0.5 within 1 %").contains("With β = 0.52 rad instead of 0.52°"));
    assertTrue(
        shown("expect T_k about 20 °C within 2 K")
            .contains("With T_k = 293 K instead of 293 °C it could be"));
    assertTrue(
        shown("expect T_m about 20 °C within 2 K")
            .contains("With T_m = 20 °C instead of 20 K it could be"));
  }

  @Test
  void anUnknownFoundByNumbersIsSuspectedToo() {
    run(
        sheet,
        "numbers",
        "given a = 20.0 m",
        "given b = 0.500 m",
        "relation bow: tan(φ) = φ a/b/(1 [rad])".replace("a/b/(1 [rad])", "(a/b)/(1 [rad])"),
        "solve bow for φ with φ > 80°");
    String told = shown("expect φ below 60°");
    assertTrue(told.startsWith("Unexpected: φ = "), told);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "q below 1 µF          | 1 µF           | q is an electric charge, and 1 µF is a capacitance: they cannot be compared.",
        "q below 5             | 5              | Here belongs an electric charge; 5 is a plain number.",
        "q between 1 nC and 2 s | 2 s           | q is an electric charge, and 2 s is a time: they cannot be compared.",
        "q between 9 nC and 3 nC | 3 nC         | The smaller of the two limits comes first.",
        "q about 50 nC within 2 s | 2 s         | q is an electric charge, and 2 s is a time: they cannot be compared.",
        "q about 50 nC within 0 % | 0 %         | How far it may be off is more than zero.",
        "T about 20 °C within 5 % | 5 %         | A share of a reading of a temperature scale has no meaning.",
        "w below 3 N           | w              | I do not know “w” in this sheet.",
        "q below w             | w              | I do not know “w” in this sheet."
      })
  void kindsAreCheckedBeforeNumbers(String expected, String place, String sentence) {
    Problem problem = shownProblem(expected);
    assertEquals(sentence, problem.sentence());
    assertEquals(place, marked(problem));
  }

  @Test
  void theVerdictFollowsTheGivens() {
    run(sheet, "plausible", "expect q between 1 nC and 100 nC");
    Run changed = run(sheet, "distance", "given d = 14.0 m \"centre to centre\"");
    List<String> told =
        changed.updates().stream()
            .filter(update -> update.cellId().equals("plausible"))
            .map(update -> Renderers.text(update.results()))
            .toList();
    assertEquals(1, told.size());
    assertTrue(told.get(0).startsWith("Unexpected: q = 67.0 µC should lie"), told.get(0));
  }

  @Test
  void limitsMayBeQuantitiesOfTheSheetAndTheVerdictFollowsThemToo() {
    run(sheet, "limit", "given q_most = 50 nC");
    run(sheet, "plausible", "expect q below q_most");
    Run changed = run(sheet, "limit", "given q_most = 80 nC");
    assertEquals(
        "q = 67.0 nC lies below 80 nC, as expected.",
        Renderers.text(changed.updates().get(0).results()));
  }

  @Test
  void whatBooksExpectOfTheseBallsIsInside() {
    assertEquals(
        "q = 67.0 nC lies below 1 µC, as expected (what is rubbed by hand).",
        shown("expect q below 1 µC \"what is rubbed by hand\""));
  }
}
