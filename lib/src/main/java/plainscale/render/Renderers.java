package plainscale.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plainscale.sheet.Result;
import plainscale.text.Printable;

/** A cell's results in each medium. */
public final class Renderers {
  private Renderers() {}

  /** Plain text, one result below the other. */
  public static String text(List<Result> results) {
    TextRenderer renderer = new TextRenderer();
    return Printable.of(
        results.stream().map(r -> r.accept(renderer)).collect(Collectors.joining("\n")));
  }

  /** HTML for a cell's output in a front end. */
  public static String cellHtml(List<Result> results) {
    return html(results, Medium.CELL);
  }

  /** HTML for a page of our own, with MathML and inline SVG. */
  public static String pageHtml(List<Result> results) {
    return html(results, Medium.PAGE);
  }

  /** Neighbouring values share a table. */
  private static String html(List<Result> results, Medium medium) {
    HtmlRenderer renderer = new HtmlRenderer(medium);
    StringBuilder html = new StringBuilder();
    List<String> rows = new ArrayList<>();
    for (Result result : results) {
      if (result instanceof Result.Valued valued) {
        rows.add(renderer.row(valued));
      } else {
        flush(rows, html);
        html.append(result.accept(renderer));
      }
    }
    flush(rows, html);
    return html.toString();
  }

  private static void flush(List<String> rows, StringBuilder html) {
    if (!rows.isEmpty()) {
      html.append(HtmlRenderer.table(String.join("", rows)));
      rows.clear();
    }
  }

  /**
   * The lines of mathematics among the results as TeX with its delimiters; empty if there are none.
   */
  public static Optional<String> latex(List<Result> results) {
    TexMarkup markup = new TexMarkup();
    List<String> lines =
        results.stream()
            .filter(Result.Valued.class::isInstance)
            .map(Result.Valued.class::cast)
            .map(valued -> new ValueLine(markup, valued.writing()).line(valued))
            .toList();
    if (lines.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        "$$\\begin{gathered}\n" + String.join(" \\\\\n", lines) + "\n\\end{gathered}$$");
  }
}
