package plainscale.field;

/** A remarkable moment of a motion. */
public record Passage(Kind kind, Moment moment) {
  /** What is remarkable. */
  public enum Kind {
    /** The speed is least: a turning point, where it stands still if it moves on a line. */
    SLOWEST,
    /** The speed is greatest. */
    FASTEST,
    /** Nearer to the nearest charge than before and after. */
    CLOSEST,
    /** Back at the start with the velocity of the start. */
    RETURN
  }
}
