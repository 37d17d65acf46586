package plainscale.document;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * HTML that CommonMark reads on to its end, over blank lines and fences. Source: CommonMark 0.31,
 * “HTML blocks”, kinds 1 to 5.
 *
 * @param opening what opens it
 * @param closing what would close it
 */
record OpenHtml(String opening, String closing) {
  private static final Pattern OPENING =
      Pattern.compile(
          "(?i)[ ]{0,3}(?:(<!--)|(<!\\[CDATA\\[)|(<\\?)|(<![a-z])|<(pre|script|style|textarea)(?=[\\s>]|$)).*",
          Pattern.DOTALL);
  private static final List<String> CLOSING = List.of("-->", "]]>", "?>", ">");
  private static final Pattern CLOSING_TAG =
      Pattern.compile("(?i)</(?:pre|script|style|textarea)>");

  /** What the block of these lines opens and does not close. */
  static Optional<OpenHtml> of(List<String> lines) {
    Matcher opening = OPENING.matcher(lines.get(0));
    if (!opening.matches()) {
      return Optional.empty();
    }
    String last = lines.get(lines.size() - 1);
    String tag = opening.group(CLOSING.size() + 1);
    if (tag != null) {
      return CLOSING_TAG.matcher(last).find()
          ? Optional.empty()
          : Optional.of(new OpenHtml("<" + tag + ">", "</" + tag + ">"));
    }
    for (int kind = 0; kind < CLOSING.size(); kind++) {
      String opened = opening.group(kind + 1);
      if (opened != null && !last.contains(CLOSING.get(kind))) {
        return Optional.of(new OpenHtml(opened, CLOSING.get(kind)));
      }
    }
    return Optional.empty();
  }
}
