package plainscale.render;

import static java.util.stream.Collectors.joining;

import java.util.List;
import plainscale.sheet.Result;

/** An uncertainty budget as HTML: the value, the table of its sources, the sentences. */
final class BudgetHtml {
  private static final String PLACE = "text-align:left;padding:0.1em 0.8em 0.1em 0";

  private final Medium medium;
  private final Result.Budgeted budgeted;

  BudgetHtml(Medium medium, Result.Budgeted budgeted) {
    this.medium = medium;
    this.budgeted = budgeted;
  }

  String html() {
    BudgetText text = new BudgetText(budgeted);
    List<List<String>> rows = text.table();
    String body =
        rows.subList(1, rows.size()).stream().map(row -> row(row, "td")).collect(joining());
    return "<div class=\"ps-budgeted\"><p>"
        + medium.mathematics().apply(line())
        + description()
        + "</p><table style=\"border:none;margin:0\"><thead>"
        + row(rows.get(0), "th")
        + "</thead><tbody>"
        + body
        + "</tbody></table>"
        + text.sentences().stream().map(this::paragraph).collect(joining())
        + "</div>";
  }

  private String line() {
    ValueLine line = new ValueLine(medium.markup(), budgeted.writing());
    String value = line.value(budgeted.shown());
    return line.label(budgeted.label())
        .map(label -> medium.markup().row(List.of(label, medium.markup().sign("="), value)))
        .orElse(value);
  }

  private String description() {
    String words = budgeted.label().description();
    return words.isEmpty() ? "" : " <i>" + medium.words().apply(words) + "</i>";
  }

  private String row(List<String> cells, String element) {
    return "<tr>"
        + cells.stream()
            .map(
                cell ->
                    "<%s style=\"%s\">%s</%s>"
                        .formatted(element, PLACE, medium.words().apply(cell), element))
            .collect(joining())
        + "</tr>";
  }

  private String paragraph(String sentence) {
    return "<p>" + medium.words().apply(sentence) + "</p>";
  }
}
