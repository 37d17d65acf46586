package plainscale.render;

import static java.util.stream.Collectors.joining;

import java.util.List;

/** A table of texts as HTML, its first row as a head. */
final class HeadedTable {
  private static final String CELL =
      "<td style=\"text-align:left;font-size:0.92em;padding:0.1em 0.7em 0.1em 0%s\">%s</td>";

  /** A number and its unit stay on one line; longer texts may be broken. */
  private static final int SHORT = 18;

  private static final String WHOLE = ";white-space:nowrap";

  private HeadedTable() {}

  static String html(List<List<String>> rows, Medium medium) {
    String body =
        rows.subList(1, rows.size()).stream().map(row -> row(row, "%s", medium)).collect(joining());
    return Html.table(row(rows.get(0), "<i>%s</i>", medium) + body);
  }

  private static String row(List<String> cells, String form, Medium medium) {
    return "<tr>"
        + cells.stream()
            .map(cell -> cell(cell, form.formatted(medium.words().apply(cell))))
            .collect(joining())
        + "</tr>";
  }

  private static String cell(String text, String content) {
    return CELL.formatted(text.length() <= SHORT ? WHOLE : "", content);
  }
}
