package plainscale.data;

/** A text for a remark: one line of forty characters at most. */
final class Shortened {
  private static final int LONGEST = 40;

  private Shortened() {}

  static String of(String text) {
    String line = text.replaceAll("\\s+", " ");
    if (line.codePointCount(0, line.length()) <= LONGEST) {
      return line;
    }
    return line.substring(0, line.offsetByCodePoints(0, LONGEST)) + "…";
  }
}
