package plainscale.render;

import static java.util.stream.Collectors.joining;

import java.util.List;
import plainscale.sheet.Result;

/** An uncertainty budget as HTML: the value, the table of its sources, the sentences. */
final class BudgetHtml {
  private final Medium medium;
  private final Result.Budgeted budgeted;

  BudgetHtml(Medium medium, Result.Budgeted budgeted) {
    this.medium = medium;
    this.budgeted = budgeted;
  }

  String html() {
    BudgetText text = new BudgetText(budgeted);
    return "<div class=\"ps-budgeted\"><p>"
        + medium.mathematics().apply(line())
        + description()
        + "</p>"
        + HeadedTable.html(text.table(), medium)
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

  private String words(String sentence) {
    return medium.words().apply(sentence);
  }

  private String paragraph(String sentence) {
    return "<p>" + words(sentence) + "</p>";
  }
}
