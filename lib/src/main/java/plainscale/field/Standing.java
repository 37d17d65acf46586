package plainscale.field;

/** What can be said about the field of a source at a place. */
public enum Standing {
  /** Potential and field are defined. */
  FREE,
  /** On a charged surface: the potential is defined, the field jumps from side to side. */
  ON_SURFACE,
  /** On the rim of a charged disc: the potential is defined, the field is infinite. */
  ON_EDGE,
  /** On a point, line or ring of charge: the potential is infinite. */
  ON_CHARGE
}
