package plainscale.render;

import java.util.regex.Pattern;
import plainscale.notation.Problem;
import plainscale.text.Printable;

/**
 * The line of a problem with carets under the place. Long lines are cut around the place, and
 * characters that a terminal or a page could not show are replaced, so that an excerpt is always
 * short and printable.
 */
record Excerpt(int lineNumber, String line, String carets) {
  private static final int WIDEST = 76;
  private static final int BEFORE = 30;

  /** Signs that change the direction of a line would put the carets under other characters. */
  private static final Pattern TURNS_THE_LINE =
      Pattern.compile("[\\u200E\\u200F\\u202A-\\u202E\\u2066-\\u2069]");

  static Excerpt of(Problem problem) {
    String source = problem.source();
    int at = Math.min(problem.span().start(), source.length());
    int from = source.lastIndexOf('\n', at - 1) + 1;
    int to = source.indexOf('\n', from);
    int lineEnd = to < 0 ? source.length() : to;
    int start = at - from > WIDEST - BEFORE ? at - BEFORE : from;
    int end = Math.min(lineEnd, start + WIDEST);
    int stop = Math.max(at + 1, Math.min(problem.span().end(), end));
    String head = printable(source.substring(start, Math.min(at, end)));
    String marked = at < end ? printable(source.substring(at, Math.min(stop, end))) : "";
    String tail = stop < end ? printable(source.substring(stop, end)) : "";
    String dots = start > from ? "…" : "";
    String line = dots + head + marked + tail + (end < lineEnd ? "…" : "");
    String carets = " ".repeat(length(dots + head)) + "^".repeat(Math.max(1, length(marked)));
    return new Excerpt(problem.line(), line, carets);
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }

  private static String printable(String text) {
    return TURNS_THE_LINE.matcher(Printable.of(text).replace('\t', ' ')).replaceAll("\uFFFD");
  }
}
