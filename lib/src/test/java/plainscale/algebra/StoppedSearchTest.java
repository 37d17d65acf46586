package plainscale.algebra;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;

/** What a search that was stopped shows of its way. */
class StoppedSearchTest {
  private static final Set<String> KNOWN = Set.of("R_1", "R_2", "R_3", "R_4", "R_5", "U");

  /** Five resistors in a bridge: Kirchhoff's rules for its nodes and loops. */
  private static final List<Relation> BRIDGE =
      Systems.relations(
          "I_1 = I_3 + I_5",
          "I_4 = I_2 + I_5",
          "R_1 I_1 + R_5 I_5 = R_2 I_2",
          "R_3 I_3 = R_4 I_4 + R_5 I_5",
          "U = R_1 I_1 + R_3 I_3");

  private static Derivation within(int steps, BooleanSupplier stop) {
    Budget budget = new Budget(steps, Duration.ofMinutes(1), stop);
    return Solver.solve(BRIDGE, "I_5", Systems.known(KNOWN), budget);
  }

  /** With twice as much to spend each time, until it is solved. */
  private static List<Derivation> stopped() {
    List<Derivation> stopped = new ArrayList<>();
    int steps = 10;
    Derivation derivation = within(steps, () -> false);
    while (derivation.outcome() instanceof Outcome.Bounded) {
      stopped.add(derivation);
      steps *= 2;
      derivation = within(steps, () -> false);
    }
    assertInstanceOf(Outcome.Solved.class, derivation.outcome());
    return stopped;
  }

  private static Outcome.Bounded outcome(Derivation derivation) {
    return (Outcome.Bounded) derivation.outcome();
  }

  @Test
  void theStepsHoldAndLeadSomewhere() {
    List<Derivation> stopped = stopped();
    for (Derivation derivation : stopped) {
      assertEquals("This cell takes too long; it was stopped.", outcome(derivation).why());
      assertEquals(List.of(), Check.of(derivation).failures());
      assertEquals(derivation.steps().isEmpty(), outcome(derivation).left().isEmpty());
    }
    Derivation last = stopped.get(stopped.size() - 1);
    assertFalse(last.steps().isEmpty(), () -> Systems.text(last));
  }

  @Test
  void whatIsLeftHasAsManyEquationsAsUnknowns() {
    for (Derivation derivation : stopped()) {
      Outcome.Bounded bounded = outcome(derivation);
      if (!bounded.left().isEmpty()) {
        assertEquals(bounded.left().size(), bounded.open().size() + 1, bounded.toString());
        assertTrue(bounded.left().size() < BRIDGE.size());
        List<Equation> left = bounded.left().stream().map(derivation::equation).toList();
        Set<String> names = new TreeSet<>(Mentions.of(left).names());
        names.removeAll(KNOWN);
        names.remove("I_5");
        assertEquals(names, new TreeSet<>(bounded.open()));
      }
    }
  }

  @Test
  void withMoreToSpendItComesFurther() {
    List<Integer> left =
        stopped().stream().map(d -> outcome(d).left().size()).filter(n -> n > 0).toList();
    assertTrue(left.get(0) > left.get(left.size() - 1), left::toString);
    for (int i = 1; i < left.size(); i++) {
      assertTrue(left.get(i) <= left.get(i - 1), left::toString);
    }
  }

  @Test
  void beforeTheFirstStepThereIsNothingToShow() {
    Derivation derivation = within(0, () -> false);
    assertEquals(List.of(), derivation.steps());
    assertInstanceOf(Outcome.Bounded.class, derivation.outcome());
  }

  @Test
  void whoStopsItIsShownNothing() {
    int[] asked = {0};
    Derivation derivation = within(100_000, () -> ++asked[0] > 200);
    assertEquals(new Outcome.Bounded("Stopped, as you asked."), derivation.outcome());
    assertEquals(List.of(), derivation.steps());
  }
}
