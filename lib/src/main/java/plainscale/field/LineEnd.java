package plainscale.field;

/** Where a field line begins or ends. */
public sealed interface LineEnd {
  /** At a charge, given by the index of its footprint. */
  record AtCharge(int footprint) implements LineEnd {}

  /** Not at a charge. */
  enum Elsewhere implements LineEnd {
    /** It goes on outside the frame. */
    FRAME,
    /** The field vanishes there, so that it has no direction. */
    NULL_POINT,
    /** It was cut after several times the frame's diagonal. */
    TOO_LONG,
    /** The computation could not follow it further. */
    NOT_FOLLOWED
  }
}
