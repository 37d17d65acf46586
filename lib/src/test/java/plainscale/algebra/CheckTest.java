package plainscale.algebra;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.notation.Expr;

/** The check notices a wrong step and a wrong answer: each right one is spoiled in turn. */
class CheckTest {
  private static final Expr SPOILT = Systems.expression("1.01");

  record Spoilt(String id, int step, Derivation derivation) {
    @Override
    public String toString() {
      return id + " (" + step + ")";
    }
  }

  static Stream<Spoilt> steps() {
    return Systems.examples().stream().flatMap(CheckTest::spoilt);
  }

  private static Stream<Spoilt> spoilt(Systems.Example example) {
    Derivation derivation = example.solve();
    List<Spoilt> all = new ArrayList<>();
    for (int i = 0; i < derivation.steps().size(); i++) {
      Step step = derivation.steps().get(i);
      if (!NormalForm.of(step.after().right()).isZero()) {
        all.add(new Spoilt(example.id(), step.number(), with(derivation, i)));
      }
    }
    return all.stream();
  }

  /** The derivation whose step of that index has a right side that is one per cent too large. */
  private static Derivation with(Derivation derivation, int index) {
    List<Step> steps = new ArrayList<>(derivation.steps());
    Step step = steps.get(index);
    Equation wrong = new Equation(step.after().left(), times(step.after().right()));
    steps.set(
        index,
        new Step(step.number(), step.rule(), step.from(), wrong, step.reason(), step.condition()));
    return new Derivation(
        derivation.unknown(), derivation.relations(), steps, derivation.outcome());
  }

  private static Expr times(Expr expr) {
    return new Expr.Binary(expr.span(), Expr.Operator.TIMES, SPOILT, expr, expr.span());
  }

  @ParameterizedTest
  @MethodSource("steps")
  void aStepThatIsOnePerCentOffIsNoticed(Spoilt spoilt) {
    List<String> failures = Check.of(spoilt.derivation()).failures();
    String number = "(" + spoilt.step() + ")";
    assertFalse(
        failures.stream().noneMatch(failure -> failure.startsWith(number)), failures.toString());
  }

  static Stream<Systems.Example> solved() {
    return Systems.examples().stream().filter(example -> example.outcome().equals("Solved"));
  }

  @ParameterizedTest
  @MethodSource("solved")
  void anAnswerThatIsOnePerCentOffIsNoticed(Systems.Example example) {
    Derivation derivation = example.solve();
    Outcome.Solved solved = (Outcome.Solved) derivation.outcome();
    Outcome wrong = new Outcome.Solved(times(solved.answer()), List.of());
    Derivation spoilt =
        new Derivation(derivation.unknown(), derivation.relations(), derivation.steps(), wrong);
    assertEquals(1, Check.of(spoilt).failures().size());
    assertEquals(1, Check.of(spoilt, example.known()::contains).failures().size());
  }
}
