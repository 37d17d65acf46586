package plainscale.document.edition;

import java.util.Optional;

/**
 * How many steps of a derivation are left blank, counted from its end. Backward fading of worked
 * examples helps more than forward fading (Renkl, Atkinson, Maier and Staley, Journal of
 * Experimental Education 70:293, 2002).
 *
 * @param steps at least 0; {@link Integer#MAX_VALUE} for all
 */
public record Fading(int steps) {
  /** Every step is blank; the relations and the unknown are left. */
  public static final Fading ALL = new Fading(Integer.MAX_VALUE);

  /** The last step is blank. */
  public static final Fading LAST = new Fading(1);

  private static final String WORD = "all";

  /** Refuses a number below zero. */
  public Fading {
    if (steps < 0) {
      throw new IllegalArgumentException("Fewer than no steps cannot be blank.");
    }
  }

  /** A number of steps, or “all”; nothing for any other word. */
  public static Optional<Fading> named(String word) {
    if (word.equals(WORD)) {
      return Optional.of(ALL);
    }
    return word.matches("\\d{1,4}")
        ? Optional.of(new Fading(Integer.parseInt(word)))
        : Optional.empty();
  }

  /** How many of so many steps are shown. */
  int shown(int all) {
    return Math.max(0, all - steps);
  }

  /** Whether the answer of a derivation is among what is left blank. */
  boolean hidesAnswer() {
    return steps > 0;
  }

  @Override
  public String toString() {
    return equals(ALL) ? WORD : Integer.toString(steps);
  }
}
