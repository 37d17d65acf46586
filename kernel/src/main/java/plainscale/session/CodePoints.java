package plainscale.session;

/** The protocol counts cursor positions in Unicode code points, Java in UTF-16 units. */
final class CodePoints {

  private CodePoints() {}

  /** The UTF-16 position after so many code points; what lies outside goes to the nearer end. */
  static int toUtf16(String text, int codePoints) {
    int inside = Math.max(0, Math.min(codePoints, text.codePointCount(0, text.length())));
    return text.offsetByCodePoints(0, inside);
  }

  /** How many code points stand before a UTF-16 position. */
  static int fromUtf16(String text, int position) {
    return text.codePointCount(0, Math.max(0, Math.min(position, text.length())));
  }
}
