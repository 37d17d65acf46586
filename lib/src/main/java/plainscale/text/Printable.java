package plainscale.text;

/**
 * Text from a stranger as text that any page, file or terminal can show: control characters, halves
 * of characters and non-characters become U+FFFD; line ends and tabs stay.
 */
public final class Printable {
  private static final int REPLACEMENT = 0xFFFD;

  private Printable() {}

  /** The text with what cannot be shown replaced. */
  public static String of(String written) {
    String text = written.replace("\r\n", "\n");
    if (text.codePoints().allMatch(Printable::isShown)) {
      return text;
    }
    StringBuilder shown = new StringBuilder(text.length());
    text.codePoints().map(c -> isShown(c) ? c : REPLACEMENT).forEach(shown::appendCodePoint);
    return shown.toString();
  }

  private static boolean isShown(int c) {
    boolean control = Character.isISOControl(c) && c != '\n' && c != '\t';
    boolean half = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
    boolean none = (c & 0xFFFE) == 0xFFFE;
    return !control && !half && !none;
  }
}
