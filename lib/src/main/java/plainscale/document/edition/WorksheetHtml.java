package plainscale.document.edition;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plainscale.picture.SvgWriter;
import plainscale.render.Html;
import plainscale.render.PageMath;

/** A worksheet as HTML; how high lines and how wide gaps are is said in {@code student.css}. */
final class WorksheetHtml implements Worksheet.Visitor<String>, Piece.Visitor<String> {
  private static final String LINE = "<div class=\"ws-line\"></div>";

  /** So many rows of a table stay on one page. */
  private static final int MOST_TOGETHER = 10;

  private final FixedWords words;

  WorksheetHtml(FixedWords words) {
    this.words = words;
  }

  /** Neighbouring entries share a table. */
  String html(List<Worksheet> items) {
    StringBuilder html = new StringBuilder();
    List<String> rows = new ArrayList<>();
    for (Worksheet item : items) {
      if (item instanceof Worksheet.Entry entry) {
        rows.add(row(entry));
      } else {
        flush(rows, html);
        html.append(item.accept(this));
      }
    }
    flush(rows, html);
    return html.toString();
  }

  private static void flush(List<String> rows, StringBuilder html) {
    if (!rows.isEmpty()) {
      html.append("<table class=\"ws-entries\"><tbody>")
          .append(String.join("", rows))
          .append("</tbody></table>\n");
      rows.clear();
    }
  }

  private String row(Worksheet.Entry entry) {
    String description =
        entry.description().isEmpty() ? "" : "<i>" + Html.escape(entry.description()) + "</i>";
    return "<tr><td>"
        + pieces(entry.pieces())
        + "</td><td>"
        + pieces(entry.beside())
        + "</td><td>"
        + description
        + "</td></tr>";
  }

  private String pieces(List<Piece> pieces) {
    return pieces.stream().map(piece -> piece.accept(this)).collect(joining());
  }

  @Override
  public String heading(Worksheet.Heading heading) {
    return "<p class=\"ws-heading\"><b>" + Html.escape(heading.words()) + "</b></p>\n";
  }

  @Override
  public String caption(Worksheet.Caption caption) {
    return "<p class=\"ws-caption\"><b>" + Html.escape(caption.words()) + "</b></p>\n";
  }

  /** A gap to the end of the line takes the room that is left there. */
  @Override
  public String text(Worksheet.Text text) {
    String style = text.pieces().contains(Piece.Gap.REST) ? "ws-text ws-rest" : "ws-text";
    return "<p class=\"" + style + "\">" + pieces(text.pieces()) + "</p>\n";
  }

  @Override
  public String entry(Worksheet.Entry entry) {
    return html(List.of(entry));
  }

  @Override
  public String ruled(Worksheet.Ruled ruled) {
    return "<div class=\"ws-lines\" role=\"img\" aria-label=\""
        + Html.escape(words.say("lines"))
        + "\">"
        + LINE.repeat(ruled.lines())
        + "</div>\n";
  }

  @Override
  public String boxes(Worksheet.Boxes boxes) {
    List<BoxCount.Line> lines = boxes.count().lines();
    StringBuilder html = new StringBuilder();
    for (int i = 0; i < lines.size(); i++) {
      boolean last = i == lines.size() - 1;
      boolean marker = !lines.get(i).part().isEmpty() && (i == 0 || isFirstPart(lines, i));
      String mark = marker ? "<span class=\"ws-marker\">" + marker(boxes) + "</span>" : "";
      html.append("<div class=\"ws-row\" role=\"img\" aria-label=\"")
          .append(Html.escape(words.say("boxes")))
          .append("\">")
          .append(groups(lines.get(i).whole()))
          .append(mark)
          .append(groups(lines.get(i).part()))
          .append(last ? unit(new Piece.Unit(boxes.unit())) : "")
          .append("</div>\n");
    }
    return html.toString();
  }

  private static boolean isFirstPart(List<BoxCount.Line> lines, int line) {
    return lines.get(line - 1).part().isEmpty();
  }

  private static String marker(Worksheet.Boxes boxes) {
    return Html.escape(boxes.count().style().marker());
  }

  private static String groups(List<Integer> groups) {
    return groups.stream()
        .map(boxes -> "<span class=\"ws-group\">" + "<span class=\"ws-box\"></span>".repeat(boxes))
        .map(group -> group + "</span>")
        .collect(joining());
  }

  @Override
  public String grid(Worksheet.Grid grid) {
    String head =
        grid.head().stream()
            .map(cell -> "<th>" + pieces(cell) + "</th>")
            .collect(joining("", "<thead><tr>", "</tr></thead>"));
    String rows =
        grid.rows().stream()
            .map(
                row ->
                    row.stream()
                        .map(cell -> "<td>" + pieces(cell) + "</td>")
                        .collect(joining("", "<tr>", "</tr>")))
            .collect(joining("", "<tbody>", "</tbody>"));
    String style = grid.rows().size() <= MOST_TOGETHER ? "ws-grid ws-whole" : "ws-grid";
    return "<table class=\"" + style + "\">" + head + rows + "</table>\n";
  }

  @Override
  public String picture(Worksheet.Picture picture) {
    return "<div class=\"ws-picture\">" + SvgWriter.write(picture.scene()) + "</div>\n";
  }

  @Override
  public String together(Worksheet.Together together) {
    String style = together.style().name().toLowerCase(Locale.ROOT);
    return "<div class=\"ws-" + style + "\">" + html(together.items()) + "</div>\n";
  }

  @Override
  public String words(Piece.Words piece) {
    return Html.escape(piece.text());
  }

  @Override
  public String name(Piece.Name name) {
    return PageMath.name(name.name());
  }

  @Override
  public String formula(Piece.Formula formula) {
    return PageMath.of(formula.expr(), formula.writing());
  }

  @Override
  public String line(Piece.Line line) {
    return PageMath.of(line.equation(), line.writing());
  }

  @Override
  public String given(Piece.Given given) {
    return PageMath.value(given.shown(), given.writing());
  }

  @Override
  public String unit(Piece.Unit unit) {
    String math = PageMath.unit(unit.unit());
    return math.isEmpty() ? "" : "<span class=\"ws-unit\">" + math + "</span>";
  }

  @Override
  public String gap(Piece.Gap gap) {
    return "<span class=\"ws-gap ws-%s\" role=\"img\" aria-label=\"%s\"></span>"
        .formatted(gap.name().toLowerCase(Locale.ROOT), Html.escape(words.say("gap")));
  }
}
