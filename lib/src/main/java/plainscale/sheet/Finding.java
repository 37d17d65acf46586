package plainscale.sheet;

import java.util.List;

/** How some forces of a sheet hang together, or that they do not; which forces, in order. */
public record Finding(Kind kind, List<Side> sides) {

  /** Keeps its own copy of the sides. */
  public Finding {
    sides = List.copyOf(sides);
  }

  /** A force and the body on which it acts. */
  public record Side(String body, BodyForces.Force force) {}

  /** What was found, in the order in which it is told. */
  public enum Kind {
    /** Action and reaction: by Newton's third law equal and opposite, and so they are. */
    PAIR,
    /** Action and reaction, but their sizes are not equal. */
    UNEQUAL,
    /** Action and reaction, but they do not point in opposite directions. */
    NOT_OPPOSITE,
    /** Each acts between the same two bodies, but they have different names. */
    OTHER_NAME,
    /** Its agent is drawn, but there the partner is missing. */
    PARTNER_MISSING,
    /** Equal and opposite on the same body: no pair. */
    BALANCE,
    /** The same name on several bodies, by something that is not drawn: no pair. */
    ALIKE,
    /** Its partner acts on something that is not drawn. */
    NOT_DRAWN,
    /** Nothing says what exerts it. */
    NO_AGENT;

    /** Whether the two are action and reaction, be they right or wrong. */
    public boolean isPair() {
      return this == PAIR || this == UNEQUAL || this == NOT_OPPOSITE;
    }
  }
}
