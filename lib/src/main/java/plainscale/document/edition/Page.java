package plainscale.document.edition;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import plainscale.render.Html;

/**
 * One HTML page: native MathML, inline SVG, print styles, fonts of the system, nothing from a
 * network, no script.
 *
 * @param language its language as a BCP 47 tag
 * @param title its title in words
 * @param styles the style sheets that are put into it, by name, in order
 * @param body what stands in its main part
 * @param footer what stands below, as HTML; may be empty
 */
record Page(String language, String title, List<String> styles, String body, String footer) {
  private static final String SHELL = resource("handout.html");
  private static final Pattern PLACE = Pattern.compile("\\{\\{(\\w+)\\}\\}");

  /** Keeps its own copy of the names. */
  Page {
    styles = List.copyOf(styles);
  }

  String html() {
    Map<String, String> parts =
        Map.of(
            "language", Html.escape(language),
            "title", Html.escape(title),
            "style", styles.stream().map(Page::resource).collect(Collectors.joining()),
            "body", body,
            "footer", footer.isEmpty() ? "" : "<footer>\n" + footer + "\n</footer>");
    return PLACE
        .matcher(SHELL)
        .replaceAll(place -> Matcher.quoteReplacement(parts.getOrDefault(place.group(1), "")));
  }

  private static String resource(String name) {
    try (InputStream in = Page.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("missing resource " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
