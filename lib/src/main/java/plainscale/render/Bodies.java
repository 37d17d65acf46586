package plainscale.render;

import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Bodies in sentences. */
final class Bodies {
  private static final Set<String> ARTICLES = Set.of("the ", "a ", "an ", "my ");
  private static final Set<String> HEAVENLY = Set.of("Earth", "Moon", "Sun");

  private Bodies() {}

  /** “a”, “a and b”, “a, b and c”. */
  static String list(List<String> items) {
    int last = items.size() - 1;
    return last < 1
        ? String.join("", items)
        : String.join(", ", items.subList(0, last)) + " and " + items.get(last);
  }

  /**
   * With an article: “the left ball”, “the Earth”; what has one, or is a person’s name, as it is.
   */
  static String the(String body) {
    String first = body.replaceFirst("\\s.*", " ").toLowerCase(Locale.ROOT);
    boolean articled = ARTICLES.contains(first);
    boolean proper = Character.isUpperCase(body.codePointAt(0)) && !HEAVENLY.contains(body);
    return articled || proper ? body : "the " + body;
  }
}
