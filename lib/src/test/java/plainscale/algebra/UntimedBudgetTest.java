package plainscale.algebra;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;

/** Work whose time does not count. */
class UntimedBudgetTest {
  private static final Duration LONG = Duration.ofMillis(300);
  private static final Duration SHORT = Duration.ofMillis(200);

  private static int slow() {
    long end = System.nanoTime() + LONG.toNanos();
    while (System.nanoTime() < end) {
      LockSupport.parkNanos(end - System.nanoTime());
    }
    return 7;
  }

  @Test
  void untimedWorkLeavesTheTime() {
    Budget budget = new Budget(10, SHORT, () -> false);
    assertEquals(7, budget.untimed(UntimedBudgetTest::slow));
    assertFalse(budget.isOver());
    slow();
    assertTrue(budget.isOver());
  }

  @Test
  void soDoesWorkThatFails() {
    Budget budget = new Budget(10, SHORT, () -> false);
    assertThrows(
        IllegalStateException.class,
        () ->
            budget.untimed(
                () -> {
                  throw new IllegalStateException("after " + slow());
                }));
    assertFalse(budget.isOver());
  }
}
