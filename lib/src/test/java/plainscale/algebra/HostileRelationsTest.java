package plainscale.algebra;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import plainscale.notation.Expr;
import plainscale.quantity.ElementaryFunction;

/** Relations without measure end within bounds, and say so. */
@Timeout(60)
class HostileRelationsTest {

  private static Outcome outcome(String unknown, List<Relation> relations) {
    return Solver.solve(relations, unknown, Systems.known(Map.of()), Budget.usual()).outcome();
  }

  private static List<Relation> chain(int length) {
    String[] texts = new String[length];
    for (int i = 0; i < length; i++) {
      texts[i] = "x_" + i + " = x_" + (i + 1) + " + x_" + (i + 2) + " sin(x_" + i + ")";
    }
    return Systems.relations(texts);
  }

  @Test
  void twoHundredRelationsAreRefused() {
    assertInstanceOf(Outcome.Bounded.class, outcome("x_0", chain(200)));
  }

  @Test
  void fiftyRelationsWithTooManyUnknownsEnd() {
    Outcome outcome = outcome("x_0", chain(50));
    assertTrue(outcome instanceof Outcome.Free || outcome instanceof Outcome.Bounded);
  }

  @Test
  void denseLinearSystemsEnd() {
    List<String> texts = new ArrayList<>();
    for (int row = 0; row < 9; row++) {
      StringBuilder text = new StringBuilder("a_" + row);
      for (int column = 0; column < 9; column++) {
        text.append(" + c_").append(row).append(column).append(" x_").append(column);
      }
      texts.add(text + " = b_" + row);
    }
    List<Relation> relations = Systems.relations(texts.toArray(new String[0]));
    Known known =
        new Known() {
          @Override
          public boolean isKnown(String name) {
            return !name.startsWith("x");
          }

          @Override
          public java.util.OptionalDouble value(String name) {
            return java.util.OptionalDouble.empty();
          }
        };
    Budget budget = new Budget(20_000, Duration.ofSeconds(3), () -> false);
    Derivation derivation = Solver.solve(relations, "x_0", known, budget);
    assertTrue(
        derivation.outcome() instanceof Outcome.Bounded
            || derivation.outcome() instanceof Outcome.NumericSystem
            || derivation.outcome() instanceof Outcome.Solved,
        Systems.text(derivation));
  }

  @Test
  void deepNestingEnds() {
    Expr deep = Systems.expression("x");
    for (int i = 0; i < 100_000; i++) {
      deep = new Expr.Call(deep.span(), ElementaryFunction.SIN, deep);
    }
    Relation relation = new Relation("a", new Equation(deep, Systems.expression("1")), "");
    assertInstanceOf(Outcome.Bounded.class, outcome("x", List.of(relation)));
  }

  @Test
  void powersOfSumsDoNotGrowWithoutEnd() {
    List<Relation> relations =
        Systems.relations(
            "(x + y + z + 1)^8 = (x - y + 2*z)^8 + x", "y = (z + x)^8", "z = x^8 + y");
    Outcome outcome = outcome("x", relations);
    assertTrue(
        !(outcome instanceof Outcome.Solved) && !(outcome instanceof Outcome.Several),
        outcome.toString());
  }

  @Test
  void aHugeExponentIsNoTrouble() {
    List<Relation> relations = Systems.relations("x^1000000 = 2^900000");
    assertTrue(!(outcome("x", relations) instanceof Outcome.Contradiction));
  }

  @Test
  void whoeverStopsItIsObeyed() {
    Budget stopped = new Budget(1_000_000, Duration.ofSeconds(10), () -> true);
    Derivation derivation =
        Solver.solve(Systems.relations("x + 1 = 2"), "x", Systems.known(Map.of()), stopped);
    assertInstanceOf(Outcome.Bounded.class, derivation.outcome());
  }
}
