package plainscale.document;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Writes fences that hold any text. */
final class Fences {
  private static final int SHORTEST = 3;
  private static final Pattern TICKS = Pattern.compile("`+");

  private Fences() {}

  /**
   * A fence of backticks longer than any in its content; {@code rest} follows its word. No line is
   * the empty text.
   */
  static String write(FenceWord word, String rest, String content) {
    String fence = "`".repeat(Math.max(SHORTEST, longest(content) + 1));
    String lines = content.isEmpty() ? "" : content + "\n";
    return fence + word.word() + rest + "\n" + lines + fence + "\n";
  }

  private static int longest(String content) {
    int longest = 0;
    Matcher ticks = TICKS.matcher(content);
    while (ticks.find()) {
      longest = Math.max(longest, ticks.end() - ticks.start());
    }
    return longest;
  }
}
