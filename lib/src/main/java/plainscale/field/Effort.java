package plainscale.field;

import java.util.function.BooleanSupplier;

/**
 * What one computation may cost: a number of evaluations of one source's field or potential, and a
 * question whether someone wants it stopped (a caller with a deadline asks the clock there). Not
 * for use by several threads.
 */
public final class Effort {
  private static final long USUAL = 100_000_000;
  private static final int ASK_EVERY = 1024;

  private final BooleanSupplier stopped;
  private long left;
  private long sinceAsked;

  /** At most {@code evaluations}; {@code stopped} is asked now and then. */
  public Effort(long evaluations, BooleanSupplier stopped) {
    this.left = evaluations;
    this.stopped = stopped;
  }

  /** Enough for a map of a page with many charges. */
  public static Effort usual(BooleanSupplier stopped) {
    return new Effort(USUAL, stopped);
  }

  /** Pays for that many evaluations of a configuration. */
  void spend(int evaluations, Configuration configuration) {
    long cost = (long) evaluations * Math.max(1, configuration.sources().size());
    left -= cost;
    sinceAsked += cost;
    if (left < 0) {
      throw new Exhausted("This field takes too much computing; it was stopped.");
    }
    if (sinceAsked >= ASK_EVERY) {
      sinceAsked = 0;
      ask();
    }
  }

  private void ask() {
    if (stopped.getAsBoolean()) {
      throw new Exhausted("Stopped, as you asked.");
    }
  }

  /** The computation was stopped; the message is a sentence for the reader. */
  public static final class Exhausted extends RuntimeException {
    private static final long serialVersionUID = 1;

    Exhausted(String sentence) {
      super(sentence);
    }
  }
}
