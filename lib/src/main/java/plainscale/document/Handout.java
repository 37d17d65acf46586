package plainscale.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import plainscale.render.Html;
import plainscale.render.Renderers;
import plainscale.text.Printable;

/**
 * A worked lesson as one HTML file: native MathML, inline SVG, print styles, fonts of the system,
 * nothing from a network, no script.
 */
public final class Handout {
  private static final String SHELL = resource("handout.html");
  private static final String STYLE = resource("handout.css");

  private Handout() {}

  /** The HTML text. */
  public static String html(WorkedLesson worked) {
    StringBuilder body = new StringBuilder();
    for (WorkedLesson.WorkedCell cell : worked.cells()) {
      body.append(section(cell));
    }
    return SHELL
        .replace("{{style}}", STYLE)
        .replace("{{title}}", Html.escape(worked.lesson().title()))
        .replace("{{body}}", body);
  }

  private static String section(WorkedLesson.WorkedCell worked) {
    if (worked.cell() instanceof LessonCell.Prose prose) {
      return "<section class=\"prose\">" + Printable.of(Prose.html(prose)) + "</section>\n";
    }
    if (!(worked.cell() instanceof LessonCell.Code) || worked.cell().source().isBlank()) {
      return "";
    }
    return "<section class=\"worked\"><pre class=\"source\">"
        + Html.escape(worked.cell().source())
        + "</pre>"
        + Renderers.pageHtml(worked.results())
        + "</section>\n";
  }

  private static String resource(String name) {
    try (InputStream in = Handout.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("missing resource " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
