package plainscale.render;

import plainscale.text.Printable;

/** Escaping for HTML text and attributes. */
public final class Html {
  private Html() {}

  /** A table without lines or margins around these rows. */
  static String table(String rows) {
    return "<table style=\"border:none;margin:0\"><tbody>" + rows + "</tbody></table>";
  }

  /** The text with the five characters escaped that mean something in HTML, and printable. */
  public static String escape(String words) {
    String text = Printable.of(words);
    StringBuilder escaped = new StringBuilder(text.length() + 16);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> escaped.append("&amp;");
        case '<' -> escaped.append("&lt;");
        case '>' -> escaped.append("&gt;");
        case '"' -> escaped.append("&quot;");
        case '\'' -> escaped.append("&#39;");
        default -> escaped.append(c);
      }
    }
    return escaped.toString();
  }
}
