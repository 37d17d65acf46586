package plainscale.render;

import static java.util.stream.Collectors.joining;

import java.util.List;
import plainscale.sheet.Result;

/** An uncertainty budget as HTML: the value, the table of its sources, the sentences. */
final class BudgetHtml {
  private static final String CELL =
      "<td style=\"text-align:left;padding:0.1em 0.8em 0.1em 0\">%s</td>";

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
        rows.subList(1, rows.size()).stream().map(row -> row(row, "%s")).collect(joining());
    return "<div class=\"ps-budgeted\"><p>"
        + medium.mathematics().apply(line())
        + description()
        + "</p>"
        + Html.table(row(rows.get(0), "<i>%s</i>") + body)
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
    return words.isEmpty() ? "" : " <i>" + words(words) + "</i>";
  }

  private String row(List<String> cells, String form) {
    return "<tr>"
        + cells.stream().map(cell -> CELL.formatted(form.formatted(words(cell)))).collect(joining())
        + "</tr>";
  }

  private String words(String sentence) {
    return medium.words().apply(sentence);
  }

  private String paragraph(String sentence) {
    return "<p>" + words(sentence) + "</p>";
  }
}
