package plainscale.magnitude;

import java.math.BigDecimal;

/** An SI prefix: {@code ("k", "kilo", 3)}. {@link #NONE} is the empty one. */
public record Prefix(String symbol, String name, int power) {

  /** No prefix. */
  public static final Prefix NONE = new Prefix("", "", 0);

  /** The number that stands before the prefixed unit: 0.0124 becomes 12.4 for milli. */
  public BigDecimal mantissa(BigDecimal value) {
    return value.scaleByPowerOfTen(-power);
  }
}
