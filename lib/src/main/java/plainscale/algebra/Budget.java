package plainscale.algebra;

import java.time.Duration;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;

/**
 * What one run may cost: a number of steps, a time, and a question whether someone wants it
 * stopped.
 */
public final class Budget {
  private static final int STEPS = 2_000_000;
  private static final Duration TIME = Duration.ofSeconds(10);
  private static final int CLOCK_EVERY = 256;

  private final BooleanSupplier stopped;
  private long deadline;
  private int left;

  /** A budget of that many steps and that time. */
  public Budget(int steps, Duration time, BooleanSupplier stopped) {
    this.left = steps;
    this.deadline = System.nanoTime() + time.toNanos();
    this.stopped = stopped;
  }

  /** The usual budget of a cell. */
  public static Budget usual(BooleanSupplier stopped) {
    return new Budget(STEPS, TIME, stopped);
  }

  /** The usual budget where nobody can stop the run. */
  public static Budget usual() {
    return usual(() -> false);
  }

  /** Whether someone wants the run stopped. */
  public boolean isStopped() {
    return stopped.getAsBoolean();
  }

  /** Whether nothing more may be spent. */
  public boolean isOver() {
    return left < 0 || isStopped() || System.nanoTime() > deadline;
  }

  /**
   * Does something whose time does not count, since its size is bounded in another way; it can be
   * stopped still.
   */
  public <T> T untimed(Supplier<T> work) {
    long start = System.nanoTime();
    try {
      return work.get();
    } finally {
      deadline += System.nanoTime() - start;
    }
  }

  /** Pays for one step at a place in a source. */
  void spend(String source, Span span) {
    left--;
    if (isStopped()) {
      throw problem("Stopped, as you asked.", source, span);
    }
    if (left < 0 || (left % CLOCK_EVERY == 0 && System.nanoTime() > deadline)) {
      throw problem("This cell takes too long; it was stopped.", source, span);
    }
  }

  private static ProblemException problem(String sentence, String source, Span span) {
    return new ProblemException(new Problem(Problem.Kind.LIMIT, sentence, source, span, List.of()));
  }
}
