package plainscale.language;

/**
 * The word of a cell at a position: letters, digits and subscripts, with a backslash before it
 * perhaps.
 */
record Word(String text, int start, int end) {

  /** The part of a word that ends at the cursor, as completion needs it. */
  static Word before(String code, int cursor) {
    int end = Math.max(0, Math.min(cursor, code.length()));
    int start = end;
    while (start > 0 && isPart(code.codePointBefore(start))) {
      start -= Character.charCount(code.codePointBefore(start));
    }
    if (start > 0 && code.charAt(start - 1) == '\\') {
      start--;
    }
    return new Word(code.substring(start, end), start, end);
  }

  /** The whole word around the cursor, as inspection needs it. */
  static Word around(String code, int cursor) {
    Word before = before(code, cursor);
    int end = before.end();
    while (end < code.length() && isPart(code.codePointAt(end))) {
      end += Character.charCount(code.codePointAt(end));
    }
    return new Word(code.substring(before.start(), end), before.start(), end);
  }

  private static boolean isPart(int c) {
    return Character.isLetterOrDigit(c)
        || c == '_'
        || c == '°'
        || c == '%'
        || (c >= '₀' && c <= '₉');
  }
}
