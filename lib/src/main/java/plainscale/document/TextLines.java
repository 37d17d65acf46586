package plainscale.document;

import java.util.List;

/** The lines of a text; only a line feed parts them, since all else may be content. */
final class TextLines {
  private static final String CRLF = "\r\n";

  private TextLines() {}

  static List<String> of(String text) {
    return List.of(text.split("\n", -1));
  }

  /** Whether a line is empty to CommonMark, or would be but for its carriage return. */
  static boolean isBlank(String line) {
    return line.chars().allMatch(c -> c == ' ' || c == '\t' || c == '\r');
  }

  /** A text whose first line ends in carriage return and line feed is one whose lines all do. */
  static boolean endInCrLf(String text) {
    int feed = text.indexOf('\n');
    return feed > 0 && text.charAt(feed - 1) == '\r';
  }

  /** With line feeds only, if that is its convention. */
  static String withLineFeeds(String text) {
    return endInCrLf(text) ? text.replace(CRLF, "\n") : text;
  }

  /** With both; {@link #withLineFeeds} gives back the same. */
  static String withCrLf(String text) {
    return text.replace("\n", CRLF);
  }
}
