package plainscale.quantity;

import java.math.BigDecimal;
import plainscale.units.Superscripts;

/**
 * A rounded value as the SI Brochure writes it: {@code (2.70 ± 0.05) g}, {@code 6.71 × 10⁻⁸ C}.
 * Languages and other styles are the business of those who present results; this is what a program
 * prints.
 */
final class PlainText {
  private static final int SMALLEST_PLAIN = -3;
  private static final int LARGEST_PLAIN = 6;
  private static final int GROUP = 3;

  /** So many digits stay together. */
  private static final int TOGETHER = 4;

  private static final char THIN_SPACE = '\u202F';

  private PlainText() {}

  static String of(Shown shown) {
    BigDecimal value = shown.value();
    int exponent = value.signum() == 0 ? 0 : value.precision() - value.scale() - 1;
    boolean plain = value.scale() >= 0 && exponent >= SMALLEST_PLAIN && exponent < LARGEST_PLAIN;
    int power = plain || value.signum() == 0 ? 0 : exponent;
    String number = number(shown, power);
    String unit = shown.unit().text();
    boolean bracket = shown.uncertainty().isPresent() && (power != 0 || !unit.isEmpty());
    String whole = bracket ? "(" + number + ")" : number;
    if (power != 0) {
      whole += " × 10" + Superscripts.always(power);
    }
    boolean space = !unit.isEmpty() && !unit.equals("°");
    return whole + (space ? " " : "") + unit;
  }

  private static String number(Shown shown, int power) {
    return digits(shown.value().scaleByPowerOfTen(-power))
        + shown.uncertainty().map(u -> " ± " + digits(u.scaleByPowerOfTen(-power))).orElse("");
  }

  private static String digits(BigDecimal value) {
    boolean zero = value.signum() == 0;
    String plain = zero && value.scale() < 0 ? "0" : value.abs().toPlainString();
    int point = plain.indexOf('.');
    String whole = point < 0 ? plain : plain.substring(0, point);
    String decimals = point < 0 ? "" : "." + grouped(plain.substring(point + 1), 0);
    String sign = value.signum() < 0 ? "−" : "";
    return sign + grouped(whole, whole.length() % GROUP) + decimals;
  }

  /** The first group has {@code first} digits, or three. */
  private static String grouped(String digits, int first) {
    if (digits.length() <= TOGETHER) {
      return digits;
    }
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < digits.length(); i++) {
      boolean parts = i > 0 && (i - first) % GROUP == 0;
      text.append(parts ? String.valueOf(THIN_SPACE) : "").append(digits.charAt(i));
    }
    return text.toString();
  }
}
