package plainscale.picture.force;

/**
 * A force as it is drawn: its components in newtons, to the right and up, and its size in words
 * ("26.5 mN"). A {@code hint} is not there but would balance the others; it is drawn dashed.
 */
public record Force(String label, double across, double up, String size, boolean hint) {

  /** A force that is there. */
  public Force(String label, double across, double up, String size) {
    this(label, across, up, size, false);
  }

  /** Its size in newtons. */
  public double newtons() {
    return Math.hypot(across, up);
  }

  boolean isZero() {
    return across == 0 && up == 0;
  }
}
