package plainscale.algebra;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.notation.Expr;

/** Systems of introductory physics: the outcome, the number of steps, and each step by numbers. */
class DerivationFixtureTest {
  private static final int FEWEST = 130;

  static List<Systems.Example> examples() {
    return Systems.examples();
  }

  @Test
  void thereAreEnoughExamples() {
    assertTrue(examples().size() >= FEWEST, examples().size() + " examples");
  }

  @ParameterizedTest
  @MethodSource("examples")
  void theOutcomeIsAsExpectedInNoMoreSteps(Systems.Example example) {
    Derivation derivation = example.solve();
    String text = Systems.text(derivation);
    assertEquals(example.outcome(), derivation.outcome().getClass().getSimpleName(), text);
    assertTrue(derivation.steps().size() <= example.steps(), text);
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyStepHoldsAndTheAnswerSatisfiesTheRelations(Systems.Example example) {
    Derivation derivation = example.solve();
    Check check = Check.of(derivation, example.known()::contains);
    assertEquals(List.of(), check.failures(), Systems.text(derivation));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void theAnswerContainsKnownNamesOnly(Systems.Example example) {
    if (example.solve().outcome() instanceof Outcome.Solved solved) {
      Expr answer = solved.answer();
      Set<String> names = Mentions.of(List.of(new Equation(answer, answer))).names();
      assertTrue(example.known().containsAll(names), names + " in " + example);
    }
  }
}
