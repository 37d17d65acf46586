package plainscale.render;

import java.util.Locale;

/** Bodies in sentences. */
final class Bodies {
  private Bodies() {}

  /**
   * With an article: “the left ball”, “the Earth”; what has one, or is a person’s name, as it is.
   */
  static String the(String body) {
    String first = body.split("\\s", 2)[0].toLowerCase(Locale.ROOT);
    boolean articled =
        first.equals("the") || first.equals("a") || first.equals("an") || first.equals("my");
    boolean proper =
        Character.isUpperCase(body.codePointAt(0)) && !body.equals("Earth") && !body.equals("Moon");
    return articled || proper ? body : "the " + body;
  }
}
