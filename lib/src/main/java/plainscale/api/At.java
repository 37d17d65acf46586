package plainscale.api;

import plainscale.quantity.Quantity;

/**
 * A place in the plane of the page, or a velocity there: across to the right, and up.
 *
 * <pre>{@code
 * FieldOf pair = field("pair")
 *     .charge("3.00 nC", at("-7.00 cm", "0 cm"))
 *     .charge("-3.00 nC", at("7.00 cm", "0 cm"));
 * check(pair.potential(at("0 cm", "5.00 cm")).text().contains("5.93 × 10³ V/m"));
 * }</pre>
 */
public final class At {
  private final Operand x;
  private final Operand y;

  private At(Operand x, Operand y) {
    this.x = x;
    this.y = y;
  }

  static At of(String x, String y) {
    return new At(Operand.of(x), Operand.of(y));
  }

  static At of(Quantity x, Quantity y) {
    return new At(Operand.of(x), Operand.of(y));
  }

  /** {@code (x, y)}. */
  String in(Phrase phrase) {
    return "(" + x.in(phrase) + ", " + y.in(phrase) + ")";
  }
}
