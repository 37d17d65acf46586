package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.sheet.Cells.marked;
import static plainscale.sheet.Cells.onlyProblem;
import static plainscale.sheet.Cells.run;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.magnitude.Perspective;
import plainscale.notation.Problem;

/** Contrasts, landmarks, steps to digits, pictures: what they hold, and what they refuse. */
class ComparisonsTest {
  private final Sheet sheet = new Sheet();

  private Result result(String... lines) {
    List<Result> results = run(sheet, "cell", lines).results();
    return results.get(results.size() - 1);
  }

  @Test
  void theRatioOfSixIsThatOfTheLargestToTheSmallest() {
    Result.Contrasted contrast =
        (Result.Contrasted)
            result("contrast 3 [m] with -40 [m] with 5 [cm] with 1 [km] with 2 [m]");
    assertEquals(5, contrast.sides().size());
    assertEquals(0, contrast.ratio().value().compareTo(new BigDecimal("20000")));
  }

  @Test
  void theRatioKeepsTheUncertaintyOfItsParts() {
    Result.Contrasted contrast =
        (Result.Contrasted)
            result("given a = 4.0 ± 0.4 m", "given b = 2.00 ± 0.01 km", "contrast a with b");
    // 500 with a relative uncertainty of √(0.1² + 0.005²) = 0.100
    assertEquals(new BigDecimal("50"), contrast.times().uncertainty().orElseThrow().setScale(0));
  }

  @Test
  void countsGetTheirLineOnTheLargestOtherQuantitiesOnTheRatio() {
    Result.Contrasted counts = (Result.Contrasted) result("contrast 2e3 with 8.7e12");
    assertEquals(
        Perspective.of(new BigDecimal("8.7E+12")).orElseThrow(),
        counts.perspective().orElseThrow());
    Result.Contrasted masses =
        (Result.Contrasted) result("contrast 2.0e3 [kg] with 8.7e12 [kg] to 2 figures");
    assertEquals(
        Perspective.of(new BigDecimal("4.4E+9")).orElseThrow(), // 4.35E+9: half to even
        masses.perspective().orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(strings = {"counting", "length", "sharing", "pages"})
  void eachRuleOfPerspectiveCanBeAskedFor(String rule) {
    Result.Contrasted contrast =
        (Result.Contrasted) result("contrast 12 with 8.7e12 by " + rule + " \"t\"");
    assertEquals(
        rule,
        contrast.perspective().orElseThrow().rule().name().toLowerCase(java.util.Locale.ROOT));
  }

  @Test
  void aRuleThatDoesNotFitIsRemarkedUponAndTheRestIsShown() {
    Result.Contrasted contrast = (Result.Contrasted) result("contrast 1 with 5 by pages");
    assertTrue(contrast.perspective().isEmpty());
    assertEquals(Set.of(Result.Contrasted.Remark.RULE), contrast.remarks());
  }

  @Test
  void signsAndDoubtAreRemarkedUpon() {
    assertEquals(
        Set.of(Result.Contrasted.Remark.SIZES),
        ((Result.Contrasted) result("contrast -3 with 5")).remarks());
    assertEquals(
        Set.of(Result.Contrasted.Remark.EQUAL),
        ((Result.Contrasted)
                result("given a = 5.0 ± 0.5 kg", "given b = 5.2 ± 0.5 kg", "contrast a with b"))
            .remarks());
    assertEquals(
        Set.of(Result.Contrasted.Remark.UNCERTAIN),
        ((Result.Contrasted)
                result("given a = 3 ± 5 kg", "given b = 100 ± 1 kg", "contrast a with b"))
            .remarks());
  }

  @Test
  void perspectiveIsRoundedOnce() {
    // 3.0 C / 1.6E-19 C = 1.875E+19; / 4.3508E+17 s = 43.1, and not 44 from the rounded 1.9E+19
    Result.Contrasted contrast =
        (Result.Contrasted)
            result("given a = 1.6e-19 C", "given b = 3.0 C", "contrast a with b by counting");
    assertEquals(new BigDecimal("43"), contrast.perspective().orElseThrow().times());
  }

  @Test
  void sharesAreOfOneAndTemperaturesInKelvins() {
    Result.Written share = (Result.Written) result("given p = 3.0 % \"salt\"", "show p in parts");
    assertEquals(new BigDecimal("0.030"), share.numeral().shown().value());
    Result.Placed placed = (Result.Placed) result("given T = 25 °C", "near T");
    assertEquals("K", placed.side().shown().unit().text());
    assertEquals("", ((Result.Placed) result("near 3 [%]")).side().shown().unit().text());
  }

  @Test
  void writtenFiguresOfABareNumberAreKeptAndThoseWithinTheDoubt() {
    assertEquals(3, figures("show 4.70e13 in digits"));
    assertEquals(2, figures("show 0.50 in digits"));
    assertEquals(2, figures("show 3.1e4 in digits"));
    assertEquals(3, figures("given a = 96400 ± 1300 m", "show a in digits"));
  }

  private int figures(String... lines) {
    return ((Result.Written) result(lines)).numeral().shown().value().precision();
  }

  @Test
  void neighboursStandOnBothSidesNearestFirst() {
    Result.Placed placed = (Result.Placed) result("near 67 [nC]");
    assertEquals("nC", placed.side().shown().unit().text());
    BigDecimal value = placed.side().shown().value();
    assertTrue(placed.below().stream().allMatch(n -> size(n).compareTo(value) <= 0));
    assertTrue(placed.above().stream().allMatch(n -> size(n).compareTo(value) > 0));
    assertTrue(
        placed.above().stream()
            .map(ComparisonsTest::size)
            .toList()
            .equals(placed.above().stream().map(ComparisonsTest::size).sorted().toList()));
    assertTrue(
        placed.below().stream()
            .map(ComparisonsTest::size)
            .toList()
            .equals(
                placed.below().stream()
                    .map(ComparisonsTest::size)
                    .sorted(Comparator.reverseOrder())
                    .toList()));
  }

  private static BigDecimal size(Result.Neighbour neighbour) {
    return neighbour.side().shown().value();
  }

  @Test
  void aRulerBringsLandmarksInItsOwnUnit() {
    Result.Pictured ruler = (Result.Pictured) result("ruler 3 [mm] with 40 [km] in mm");
    assertFalse(ruler.landmarks().isEmpty());
    assertTrue(ruler.landmarks().stream().allMatch(l -> l.shown().unit().text().equals("mm")));
  }

  @Test
  void exactWholeNumbersHaveNoPlaceHolders() {
    Result.Written written = (Result.Written) result("show 10^6 in digits");
    assertTrue(written.numeral().exact());
    assertEquals(7, written.numeral().shown().value().precision());
    assertFalse(((Result.Written) result("show 4.19e11 in digits")).numeral().exact());
    assertFalse(((Result.Written) result("show 5.00 [m] in digits")).numeral().exact());
    assertFalse(((Result.Written) result("show 0.25 in digits")).numeral().exact());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "contrast 3 [kg] with 2 [s] | 2 [s] | Only quantities of one kind can be set beside each other; here are a mass and a time.",
        "contrast 3 with 0          | 0     | This is zero; nothing can be so many times zero.",
        "ruler 0                    | 0     | This is zero; nothing can be so many times zero.",
        "contrast 1 with 2 with 3 with 4 with 5 with 6 with 7 | 7 | At most six quantities go together.",
        "contrast 3                 | ''    | Here the line ends; “with” and a second quantity belong here.",
        "contrast 1 with 5e9 by     | ''    | a rule of perspective belongs here, such as counting.",
        "contrast 1 with 5e9 by age | age   | I know no rule of perspective “age”.",
        "squares 1 with 2 with 3    | squares 1 with 2 with 3 | “squares” shows 2 quantities.",
        "squares 1                  | squares 1 | “squares” shows 2 quantities.",
        "squares 1 with 1e70        | squares 1 with 1e70 | The two are too far apart for squares within squares.",
        "dots 1 with 2 with 3 with 4 | dots 1 with 2 with 3 with 4 | “dots” shows from 1 to 3 quantities.",
        "near 0                     | 0     | Nothing is near zero by a factor.",
        "near 3 [mol]               | 3 [mol] | I have no landmarks for an amount of substance.",
        "expand 1e200               | 1e200 | This number has more than 100 digits; nobody fills in so many.",
        "expand 5 with ink          | ink   | “boxes” belongs here.",
        "show 3 [kg] in parts       | show 3 [kg] in parts | Only a plain number above zero can be said as a share.",
        "show -0.1 in parts         | show -0.1 in parts | Only a plain number above zero can be said as a share.",
        "show 0 in orders           | show 0 in orders | Zero has no order of magnitude.",
        "locale                     | ''    | Here a choice is missing.",
        "show 1e400 in words        | 1e400 | A sheet computes with numbers from 10⁻³⁰⁰ to 10³⁰⁰."
      })
  void whatCanNotBeComparedIsToldAtItsPlace(String cell, String place, String sentence) {
    Problem problem = onlyProblem(sheet.run("cell", cell));
    assertTrue(problem.sentence().endsWith(sentence), problem.sentence());
    assertEquals(place, marked(problem));
  }
}
