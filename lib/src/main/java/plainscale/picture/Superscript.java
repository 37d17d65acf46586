package plainscale.picture;

import java.util.regex.Pattern;

/** Superscript digits and minus, and the characters that they raise. */
final class Superscript {
  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹⁻";
  private static final String PLAIN = "0123456789−";

  /** Stretches that are wholly raised or wholly not. */
  static final Pattern PARTS = Pattern.compile("[" + RAISED + "]+|[^" + RAISED + "]+");

  private Superscript() {}

  static boolean isRaised(int c) {
    return RAISED.indexOf(c) >= 0;
  }

  /** The character on the line: 2 for ²; any other character as it is. */
  static int lower(int c) {
    return isRaised(c) ? PLAIN.charAt(RAISED.indexOf(c)) : c;
  }

  /** The text with every superscript brought down. */
  static String lower(String text) {
    StringBuilder lowered = new StringBuilder();
    text.codePoints().forEach(c -> lowered.appendCodePoint(lower(c)));
    return lowered.toString();
  }
}
