package plainscale.api;

import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A documentation comment as plain text: paragraphs, examples as they are, tags in words. */
final class DocText {
  private static final Pattern EXAMPLE =
      Pattern.compile("<pre>\\{@code\\R(.*?)\\R\\s*}</pre>", Pattern.DOTALL);

  private static final Pattern INLINE = Pattern.compile("\\{@(\\w+)\\s+((?:[^{}]|\\{[^{}]*})*)}");

  private DocText() {}

  static String of(String comment) {
    String inner =
        comment
            .substring("/**".length(), comment.length() - "*/".length())
            .replaceAll("(?m)^[ \\t]*\\*[ ]?", "")
            .strip();
    StringBuilder text = new StringBuilder();
    Matcher example = EXAMPLE.matcher(inner);
    int from = 0;
    while (example.find()) {
      text.append(words(inner.substring(from, example.start())));
      text.append("\n\n").append(example.group(1).indent(2).stripTrailing()).append("\n\n");
      from = example.end();
    }
    text.append(words(inner.substring(from)));
    return text.toString().replaceAll("\\n(?: *\\n){2,}", "\n\n").strip();
  }

  /** Lines that were broken for the source are joined; paragraphs and tags begin anew. */
  private static String words(String prose) {
    String plain = INLINE.matcher(prose).replaceAll(m -> Matcher.quoteReplacement(inline(m)));
    return plain
        .replaceAll("\\R(?=@)", "\n\n")
        .replaceAll("\\s*<p>\\s*", "\n\n")
        .replaceAll("<[^>]{1,20}>", "")
        .replaceAll("(?<!\\n)\\R(?!\\R)", " ")
        .replaceAll("@param (\\S+)", "$1:")
        .replaceAll("@throws (\\S+)", "Throws $1")
        .replaceAll("@return", "Gives")
        .replaceAll("[ \\t]+", " ")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&amp;", "&")
        .strip();
  }

  /** What a tag in the text reads as: a link by its label, or by what it names. */
  private static String inline(MatchResult tag) {
    String inside = tag.group(2).replaceAll("\\s+", " ").strip();
    if (!tag.group(1).startsWith("link")) {
      return inside;
    }
    int label = inside.indexOf(' ');
    return label > 0
        ? inside.substring(label + 1)
        : inside.replaceFirst("^.*[.](?=[A-Z])", "").replaceFirst("^#", "").replace('#', '.');
  }
}
