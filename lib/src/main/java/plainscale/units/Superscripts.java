package plainscale.units;

/** Raised digits: 2 as ², −12 as ⁻¹². */
public final class Superscripts {
  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

  private Superscripts() {}

  /** The exponent in raised digits; nothing for one, which is not written. */
  public static String of(int exponent) {
    return exponent == 1 ? "" : always(exponent);
  }

  /** The exponent in raised digits, one included. */
  public static String always(int exponent) {
    StringBuilder raised = new StringBuilder();
    for (char c : Integer.toString(exponent).toCharArray()) {
      raised.append(c == '-' ? '⁻' : RAISED.charAt(c - '0'));
    }
    return raised.toString();
  }

  /** The value of a raised digit, −1 for any other character. */
  public static int digit(int c) {
    return c > 0xFFFF ? -1 : RAISED.indexOf(c);
  }
}
