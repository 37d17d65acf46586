package plainscale.render;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;
import plainscale.magnitude.DigitStyle;
import plainscale.magnitude.Digits;
import plainscale.quantity.Shown;

/**
 * A rounded value as it is printed: plain where no zero would only keep the place and the number is
 * of everyday size, else with a power of ten. The uncertainty goes to the same place and power.
 */
record NumberForm(String value, Optional<String> uncertainty, OptionalInt power) {
  private static final int SMALLEST_PLAIN = -3;
  private static final int LARGEST_PLAIN = 6;

  static NumberForm of(Shown shown, DigitStyle style) {
    BigDecimal value = shown.value();
    int exponent = value.signum() == 0 ? 0 : value.precision() - value.scale() - 1;
    boolean plain = value.scale() >= 0 && exponent >= SMALLEST_PLAIN && exponent < LARGEST_PLAIN;
    if (plain || value.signum() == 0) {
      return new NumberForm(
          digits(value, style),
          shown.uncertainty().map(u -> digits(u, style)),
          OptionalInt.empty());
    }
    Optional<String> u =
        shown.uncertainty().map(x -> digits(x.scaleByPowerOfTen(-exponent), style));
    return new NumberForm(
        digits(value.scaleByPowerOfTen(-exponent), style), u, OptionalInt.of(exponent));
  }

  private static String digits(BigDecimal value, DigitStyle style) {
    return Digits.of(value, style).text();
  }
}
