package plainscale.data;

import java.util.OptionalDouble;
import plainscale.quantity.Quantity;

/**
 * A result beside a reference value, such as the teacher's.
 *
 * @param difference result less reference
 * @param zeta the difference over its standard uncertainty, to which both contribute (the zeta
 *     score of ISO 13528, clause 9.6, from memory); nothing if neither has an uncertainty
 * @param verdict what the score says
 */
public record Agreement(Quantity difference, OptionalDouble zeta, Verdict verdict) {

  /** How a score is read: the limits 2 and 3 are those of ISO 13528 (from memory). */
  public enum Verdict {
    /** Within two standard uncertainties. */
    AGREES,
    /** Between two and three. */
    DOUBTFUL,
    /** Three or more. */
    DISAGREES,
    /** There is no uncertainty to compare with. */
    UNKNOWN;

    /** What a score says. */
    public static Verdict of(double score) {
      double size = Math.abs(score);
      return size <= 2 ? AGREES : size < 3 ? DOUBTFUL : DISAGREES;
    }
  }

  /**
   * Compares two quantities of one kind; what both owe to the same source cancels. Quantities of
   * different kinds are refused as in a difference.
   */
  public static Agreement of(Quantity result, Quantity reference) {
    Quantity difference = result.minus(reference);
    double standard = difference.uncertainty().standard();
    if (standard == 0) {
      return new Agreement(difference, OptionalDouble.empty(), Verdict.UNKNOWN);
    }
    double zeta = difference.value().doubleValue() / standard;
    return new Agreement(difference, OptionalDouble.of(zeta), Verdict.of(zeta));
  }

  /**
   * The difference over the expanded uncertainty with coverage factor 2 (the E_n number of ISO
   * 13528, clause 9.7, from memory); agreement is |E_n| ≤ 1.
   */
  public OptionalDouble normalizedError() {
    return zeta.isEmpty() ? zeta : OptionalDouble.of(zeta.getAsDouble() / 2);
  }
}
