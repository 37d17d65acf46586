package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.notation.Problem;
import plainscale.quantity.Distribution;
import plainscale.quantity.Shown;

/** The statement {@code budget}: sources, second order, trials. */
class BudgetTest {
  private static Result.Budgeted budget(String... lines) {
    return budget(Cells.run(new Sheet(), "cell", lines));
  }

  private static Result.Budgeted budget(Run run) {
    return (Result.Budgeted) run.results().get(run.results().size() - 1);
  }

  private static String text(Shown shown) {
    String unit = shown.unit().text();
    return shown.value().toPlainString() + (unit.isEmpty() ? "" : " " + unit);
  }

  /** F = m a: u/F by hand is √(0.02² + 0.03²) of 10 N. */
  @Test
  void eachSourceHasItsValueItsSensitivityAndItsShare() {
    Result.Budgeted budget =
        budget("given m = 5.00 ± 0.10 kg", "given a = 2.00 ± 0.06 m/s²", "budget m a in N");
    assertEquals("10.0 N", text(budget.shown()));
    Account.Share first = budget.account().shares().get(0);
    assertEquals("a", first.source());
    assertEquals("0.30 N", text(first.contribution()));
    assertEquals(9.0 / 13, first.share(), 1e-12);
    assertEquals("5.00 N·s²/m", text(first.own().orElseThrow().sensitivity()));
    assertEquals("2.00 m/s²", text(first.own().orElseThrow().value()));
    Account.Share second = budget.account().shares().get(1);
    assertEquals("m", second.source());
    assertEquals("0.20 N", text(second.contribution()));
    assertEquals("2.00 N/kg", text(second.own().orElseThrow().sensitivity()));
  }

  /** √(0.15² + 0.20²) = 0.25. */
  @Test
  void halvingTheLargestContributionIsWorkedOut() {
    Result.Budgeted budget =
        budget("given m = 5.00 ± 0.10 kg", "given a = 2.00 ± 0.06 m/s²", "budget m a in N");
    Account.Improvement best = budget.account().improvement().orElseThrow();
    assertEquals("a", best.source());
    assertEquals("0.36 N", text(best.now()));
    assertEquals("0.25 N", text(best.halved()));
  }

  @Test
  void definitionsAndSolutionsAreFollowedToTheirGivens() {
    Result.Budgeted budget =
        budget(
            "given s = 1.25 ± 0.01 m",
            "relation fall: s = 1/2 g_n t^2",
            "solve fall for t with answer",
            "v = g_n t",
            "budget v with 100000 trials");
    assertEquals(List.of("s"), budget.account().shares().stream().map(s -> s.source()).toList());
    Account.Drawn drawn = budget.account().drawn().orElseThrow();
    // v = √(2 g s): u/v is half of u/s
    assertEquals(4.951, drawn.mean().value().doubleValue(), 0.002);
    assertEquals(0.0198, drawn.mean().uncertainty().orElseThrow().doubleValue(), 0.0006);
    assertEquals(Account.Verdict.AGREE, drawn.verdict());
  }

  @Test
  void constantsAreSourcesToo() {
    Result.Budgeted budget = budget("given m = 5.000 ± 0.001 kg", "budget G m");
    assertEquals(false, budget.account().improvement().orElseThrow().constant());
    assertEquals("m", budget.account().shares().get(0).source());
    assertEquals("G", budget.account().shares().get(1).source());
  }

  @Test
  void aConstantIsNotSomethingToMeasureBetter() {
    Account.Improvement best =
        budget("given m = 5.0 ± 0.000001 kg", "budget G m").account().improvement().orElseThrow();
    assertEquals("G", best.source());
    assertEquals(true, best.constant());
  }

  /** JCGM 100:2008, H.1: 32 nm to first order, 34 nm to second. */
  @Test
  void theSecondOrderOfTheEndGaugeIsTold() {
    Result.Budgeted budget = budget(GumExamplesTest.gauge().run("budget", "budget l in nm"));
    assertEquals("32 nm", text(budget.account().improvement().orElseThrow().now()));
    assertEquals("34 nm", text(budget.account().secondOrder().orElseThrow()));
  }

  @Test
  void aSecondOrderThatDoesNotShowIsNotTold() {
    Result.Budgeted budget = budget("given x = 10.0 ± 0.1", "budget x^2");
    assertTrue(budget.account().secondOrder().isEmpty());
  }

  /** JCGM 100:2008, 4.3.7 and 4.3.9: a/√3 and a/√6. */
  @ParameterizedTest
  @CsvSource({"rectangular, 0.288675", "triangular, 0.204124"})
  void limitsGiveAStandardUncertainty(String word, double standard) {
    Sheet sheet = new Sheet();
    Run run = Cells.run(sheet, "cell", "given x = 10.0 ± 0.5 " + word + "\nbudget x");
    assertEquals(standard, Cells.value(sheet, "x").uncertainty().standard(), 1e-6);
    Account.Input own = budget(run).account().shares().get(0).own().orElseThrow();
    assertEquals(word, own.distribution().name().toLowerCase(java.util.Locale.ROOT));
  }

  @Test
  void noTrialOfARectangularInputLiesBeyondItsLimits() {
    Result.Budgeted budget =
        budget("given x = 10.0 ± 0.5 cm rectangular", "budget x with 100000 trials");
    Account.Drawn drawn = budget.account().drawn().orElseThrow();
    // 95 % of the width of 1.0 cm
    assertEquals(9.525, drawn.symmetric().low().value().doubleValue(), 0.006);
    assertEquals(Account.Verdict.DISAGREE, drawn.verdict());
    assertEquals(
        Distribution.RECTANGULAR,
        budget.account().shares().get(0).own().orElseThrow().distribution());
  }

  @Test
  void theSeedIsOneUnlessItIsWritten() {
    String[] given = {"given x = 1.0 ± 0.1", "budget x^3 with 1000 trials"};
    Account.Drawn one = budget(given).account().drawn().orElseThrow();
    assertEquals(1, one.seed());
    assertEquals(one, budget(given).account().drawn().orElseThrow());
    given[1] += " seed 1";
    assertEquals(one, budget(given).account().drawn().orElseThrow());
    given[1] = "budget x^3 with 1e3 trials seed 2";
    assertTrue(!one.mean().equals(budget(given).account().drawn().orElseThrow().mean()));
  }

  @Test
  void fewTrialsCannotTell() {
    Account.Drawn drawn =
        budget("given x = 1.0 ± 0.1", "budget x with 100 trials").account().drawn().orElseThrow();
    assertEquals(Account.Verdict.UNDECIDED, drawn.verdict());
  }

  /** Φ(−1) of a normal distribution, 15.9 %, lies below the estimate minus u. */
  @Test
  void trialsWithoutAValueAreTold() {
    Account.Drawn drawn =
        budget("given x = 0.1 ± 0.1", "budget sqrt(x) with 100000 trials")
            .account()
            .drawn()
            .orElseThrow();
    assertEquals(15_866, drawn.without(), 350);
  }

  @Test
  void aTemperatureKeepsItsScaleAndItsDoubtIsInKelvins() {
    Result.Budgeted budget = budget("given T = 20.0 ± 0.5 °C", "budget T with 10000 trials");
    assertEquals("0.50 K", text(budget.account().shares().get(0).contribution()));
    Account.Drawn drawn = budget.account().drawn().orElseThrow();
    assertEquals(20, drawn.mean().value().doubleValue(), 0.02);
    assertEquals("°C", drawn.mean().unit().text());
  }

  @Test
  void aBudgetFollowsItsGivens() {
    Sheet sheet = new Sheet();
    Cells.run(sheet, "givens", "given x = 1.0 ± 0.1", "given y = 1.0 ± 0.1");
    Cells.run(sheet, "budget", "budget x y");
    Run run = Cells.run(sheet, "givens", "given x = 1.0 ± 0.3", "given y = 1.0 ± 0.1");
    assertEquals(List.of("budget"), Cells.updated(run));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "budget x with 0 trials    | 0",
        "budget x with 1e9 trials  | 1e9",
        "budget x with 1.5 trials  | 1.5",
        "budget x with 99 trials   | 99",
        "budget x with 1000001 trials | 1000001"
      })
  void anImpossibleNumberOfTrialsIsRefusedWithWhatIsPossible(String line, String marked) {
    Problem problem = Cells.onlyProblem(new Sheet().run("cell", "given x = 1.0 ± 0.1\n" + line));
    assertEquals(
        "A number of trials is a whole number from 100 to 1\u202f000\u202f000.",
        problem.sentence());
    assertEquals(marked, Cells.marked(problem));
    assertEquals(List.of("with 100000 trials"), problem.repairs());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "budget n | This has no uncertainty: nothing that it is computed from has a ±.",
        "budget 3 | This has no uncertainty: nothing that it is computed from has a ±.",
        "budget x with trials | Here there is “trials”; a whole number belongs here, as in: with 100000 trials.",
        "budget x with 1000 | Here the line ends; “trials” belongs here.",
        "budget x with 1000 trials seed -1 | Here there is “-”; a whole number belongs here, as in: with 100000 trials.",
        "budget x with 1000 trials seed 1e10 | A seed is a whole number from 0 to 999\u202f999\u202f999.",
        "budget x in words | A budget is written in numbers; only a unit can be chosen.",
        "budget x in s | This is a plain number; s measures a time.",
        "budget y | I do not know “y” in this sheet.",
        "budget sqrt(x - 1) | The uncertainty of sqrt is not defined here, where its slope is infinite.",
        "budget sqrt(x - 0.99999) with 1000 trials | ok",
        "budget (x - 1)*0 | ok"
      })
  void whatCannotBeDoneIsSaidInASentence(String line, String sentence) {
    Run run = new Sheet().run("cell", "given x = 1.0 ± 0.1\nn = 3.0\n" + line);
    String said = run.ok() ? "ok" : Cells.onlyProblem(run).sentence();
    assertEquals(sentence, said);
  }

  /** 2000 definitions, each with a source of its own: every one contributes 0.1. */
  @Test
  void aLongChainOfDefinitionsIsFollowed() {
    Sheet sheet = new Sheet();
    StringBuilder cell = new StringBuilder("x_0 = 0\n");
    for (int i = 1; i <= 2000; i++) {
      cell.append("given g_%d = 1.0 ± 0.1\nx_%d = x_%d + g_%d\n".formatted(i, i, i - 1, i));
      if (i % 200 == 0) {
        Cells.run(sheet, "cell " + i, cell.toString());
        cell.setLength(0);
      }
    }
    Account account = budget(sheet.run("budget", "budget x_2000 with 1000 trials")).account();
    assertEquals(2000, account.shares().size());
    Account.Drawn drawn = account.drawn().orElseThrow();
    double u = 0.1 * Math.sqrt(2000);
    assertEquals(u, drawn.mean().uncertainty().orElseThrow().doubleValue(), 0.1 * u);
  }
}
