package plainscale.picture.force;

/** How much of a force diagram is there already. */
public enum Edition {
  /** Everything to scale. */
  WHOLE,
  /** Which way the forces go, all arrows of one length. */
  DIRECTIONS,
  /** The dot on squared paper. */
  DOT
}
