package plainscale.document;

import java.util.Map;

/** Text that is no plain word, as YAML has it. */
final class YamlText {
  private static final Map<Integer, String> SHORT =
      Map.of((int) '"', "\\\"", (int) '\\', "\\\\", (int) '\n', "\\n", (int) '\t', "\\t");

  /** Would end a fence's first line or a comment. */
  private static final String ENDINGS = "`>";

  private YamlText() {}

  /** In double quotation marks, in one line, without anything that ends a fence or a comment. */
  static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints().forEach(c -> quoted.append(sign(c)));
    return quoted.append('"').toString();
  }

  private static String sign(int c) {
    String escape = SHORT.get(c);
    if (escape != null) {
      return escape;
    }
    if (ENDINGS.indexOf(c) >= 0) {
      return "\\x%02X".formatted(c);
    }
    return isSeen(c) ? Character.toString(c) : "\\u%04X".formatted(c);
  }

  /** Not a control, a line end of some other convention, a byte-order mark or a non-character. */
  private static boolean isSeen(int c) {
    boolean none = c <= 0xFFFF && (c & 0xFFFE) == 0xFFFE;
    return !Character.isISOControl(c) && c != 0x2028 && c != 0x2029 && c != 0xFEFF && !none;
  }

  /** Whether a text has several lines that may stand as they are, indented. */
  static boolean isLiteral(String text) {
    return text.indexOf('\n') >= 0
        && !text.endsWith("\n\n")
        && !text.startsWith("\n")
        && text.codePoints().allMatch(c -> c == '\n' || isSeen(c))
        && text.lines().noneMatch(line -> line.startsWith(" "));
  }

  /** The lines below a bar. */
  static String literal(String text, String indent) {
    boolean ended = text.endsWith("\n");
    StringBuilder lines = new StringBuilder(ended ? "|" : "|-");
    text.lines().forEach(line -> lines.append('\n').append(line.isEmpty() ? "" : indent + line));
    return lines.toString();
  }
}
