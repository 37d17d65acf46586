package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.sheet.Cells.marked;
import static plainscale.sheet.Cells.onlyProblem;
import static plainscale.sheet.Cells.run;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.fraction.Fraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.notation.Problem;

/** What changes with what, in a sheet. */
class WhatIfsTest {
  private final Sheet sheet = new Sheet();

  @BeforeEach
  void aFallingStone() {
    run(sheet, "givens", "given h = 20.0 m", "given m_1 = 2.0 kg", "given v_0 = 3.0 m/s");
    run(
        sheet,
        "results",
        "t = sqrt(2*h/g_n)",
        "w = m_1 g_n",
        "a = w/m_1",
        "E = m_1 g_n h + 1/2 m_1 v_0^2",
        "relation range: L = v_0 sqrt(2*h/g_n)",
        "solve range for L");
  }

  private Result result(String line) {
    return run(sheet, "cell", line).results().get(0);
  }

  private static Result.Row row(Result result, String name) {
    return ((Result.Compared) result)
        .rows().stream()
            .filter(row -> row.label().name().equals(Optional.of(name)))
            .findFirst()
            .orElseThrow();
  }

  @Test
  void whatFollowsChangesByItsFactorAndWhatDoesNotSaysWhy() {
    Result result = result("what if m_1 = 2*m_1");
    assertEquals(Result.Row.Why.CHANGED, row(result, "m_1").why());
    assertEquals(0, row(result, "w").factor().orElseThrow().compareTo(new BigDecimal("2")));
    assertEquals(Result.Row.Why.FOLLOWS, row(result, "w").why());
    assertEquals(Result.Row.Why.CANCELS, row(result, "a").why());
    assertEquals(Result.Row.Why.NOT_CONTAINED, row(result, "t").why());
  }

  @Test
  void onlyWhatIsAskedForIsShown() {
    Result.Compared compared = (Result.Compared) result("what if h = 4*h, v_0 = 2*v_0 show L");
    assertEquals(3, compared.rows().size());
    assertEquals(0, row(compared, "L").factor().orElseThrow().compareTo(new BigDecimal("4")));
  }

  @Test
  void aChangedUnknownTurnsItsRelationsRound() {
    // L goes as the root of h, so three times L needs nine times h.
    Result result = result("what if L = 3*L show h");
    assertEquals(0, row(result, "h").factor().orElseThrow().compareTo(new BigDecimal("9")));
  }

  @Test
  void theSheetItselfStaysAsItWas() {
    result("what if m_1 = 2*m_1");
    assertEquals(2.0, sheet.value("m_1").orElseThrow().value().doubleValue());
  }

  @ParameterizedTest
  @CsvSource({
    "t, h, 1, 2",
    "w, m_1, 1, 1",
    "L, h, 1, 2",
    "L, v_0, 1, 1",
    "t, m_1, 0, 1",
    "a, m_1, 0, 1"
  })
  void aPowerLawIsFoundWithItsExponent(String value, String on, int numerator, int denominator) {
    Result.Dependence dependence = (Result.Dependence) result("depends " + value + " on " + on);
    assertEquals(Optional.of(new Fraction(numerator, denominator)), dependence.exponent());
  }

  @Test
  void whatIsNoPowerLawHasALocalExponent() {
    Result.Dependence dependence = (Result.Dependence) result("depends E on v_0");
    assertEquals(Optional.empty(), dependence.exponent());
    // E = m g h + m v²/2: d ln E/d ln v = m v²/E
    double e = 2 * 9.80665 * 20 + 9;
    assertEquals(18 / e, dependence.local(), 1e-4);
    assertEquals((e + 27) / e, dependence.twice(), 1e-9);
  }

  @Test
  void aTableGoesInStepsToItsEnd() {
    Result.Varied varied = (Result.Varied) result("vary h from 5 m to 20 m by 5 m show t in ms, L");
    assertEquals(4, varied.rows().size());
    assertEquals(3, varied.head().size());
    List<String> first =
        varied.rows().stream().map(r -> r.get(0).orElseThrow().value().toPlainString()).toList();
    assertEquals(List.of("5", "10", "15", "20"), first);
    // sqrt(2 × 5 m/g) = 1.0098 s
    assertEquals(
        new BigDecimal("1010"), varied.rows().get(0).get(1).orElseThrow().value().setScale(0));
  }

  @Test
  void aPlaceWithoutAValueStaysEmpty() {
    Result.Varied varied = (Result.Varied) result("vary h from -5 m to 5 m by 5 m show t");
    assertTrue(varied.rows().get(0).get(1).isEmpty());
    assertTrue(varied.rows().get(2).get(1).isPresent());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "what if m_1 = 3 m/s show w  | 3 m/s | “m_1” is a mass; it cannot become a speed.",
        "what m_1 = 3 kg             | m_1   | Here there is “m_1”; “if” belongs here, as in: what if m = 2*m show q.",
        "what if m_1                 | ''    | Here the line ends; “=” and the other value belong here.",
        "what if x_9 = 3             | x_9   | I do not know “x_9” in this sheet.",
        "depends w                   | ''    | Here the line ends; “on” and a name belong here, as in: depends q on d.",
        "depends w on x_9            | x_9   | I do not know “x_9” in this sheet.",
        "vary h from 1 m to 2 m      | ''    | Here the line ends; “show” and what is to be shown belong here.",
        "vary h from 2 m to 1 m by 1 m show t | vary h from 2 m to 1 m by 1 m show t | From row to row it must go towards the end, in at most 100 rows.",
        "vary h from 1 m to 2 s show t | 2 s | “h” is a length; it cannot become a time."
      })
  void whatIsWrongIsTold(String cell, String place, String sentence) {
    Problem problem = onlyProblem(sheet.run("cell", cell));
    assertEquals(sentence, problem.sentence());
    assertEquals(place, marked(problem));
  }
}
