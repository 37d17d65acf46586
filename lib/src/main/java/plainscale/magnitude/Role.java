package plainscale.magnitude;

/** What a stretch of characters in a written number is there for. */
public enum Role {
  /** The minus sign, U+2212. */
  SIGN,
  /** Zeros before the first significant figure of a number below one: 0.00 in 0.0053. */
  LEADING_ZERO,
  /** A figure that was measured or computed. */
  SIGNIFICANT,
  /** A zero after the last significant figure that only keeps the place. */
  PLACEHOLDER,
  /** The space, comma or point between two groups of digits. */
  SEPARATOR,
  /** The decimal point or comma. */
  MARKER,
  /** "× 10ⁿ", where a number is too long to be written in full. */
  POWER;

  /** Whether it is made of digits. */
  public boolean isDigit() {
    return this == LEADING_ZERO || this == SIGNIFICANT || this == PLACEHOLDER;
  }
}
