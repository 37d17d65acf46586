package plainscale.render;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import plainscale.laws.Law;
import plainscale.magnitude.Writing;
import plainscale.sheet.LawResult;
import plainscale.units.UnitOfMeasure;

/** Laws as HTML, their relations and symbols as mathematics. */
final class LawHtml implements LawResult.Visitor<String> {
  private static final String CELL = "<td style=\"text-align:left;padding:0.1em 0.9em 0.1em 0\">";

  private final Medium medium;

  LawHtml(Medium medium) {
    this.medium = medium;
  }

  @Override
  public String used(LawResult.Used used) {
    FormulaWriter formula = formula(used.writing());
    boolean renames = used.renames();
    List<List<String>> rows = new ArrayList<>(List.of(heads(LawText.heads(renames))));
    for (LawResult.Row row : used.rows()) {
      List<String> cells = new ArrayList<>(List.of(math(formula.write(row.here()))));
      if (renames) {
        cells.add(math(medium.markup().name(row.symbol())));
      }
      cells.addAll(List.of(unit(row.unit()), words(row.meaning())));
      rows.add(cells);
    }
    String head =
        words(used.name())
            + ": "
            + math(formula.write(used.equation()))
            + " <i>"
            + words(LawText.words(used))
            + "</i>";
    return block(head, rows, LawText.sentences(used.law()));
  }

  @Override
  public String found(LawResult.Found found) {
    FormulaWriter formula = formula(found.writing());
    List<List<String>> rows =
        new ArrayList<>(List.of(heads(List.of("name", "relation", "what it is"))));
    for (Law law : found.laws()) {
      rows.add(
          List.of(
              "<b>" + words(law.name()) + "</b>",
              math(formula.write(law.equation())),
              words(law.title())));
    }
    return block(words(LawText.head(found)), rows, List.of(LawText.advice(found)));
  }

  private String block(String head, List<List<String>> rows, List<String> sentences) {
    return "<div class=\"ps-law\"><p>"
        + head
        + "</p>"
        + Html.table(rows.stream().map(LawHtml::row).collect(joining()))
        + sentences.stream().map(s -> "<p>" + words(s) + "</p>").collect(joining())
        + "</div>";
  }

  private static String row(List<String> cells) {
    return cells.stream().map(c -> CELL + c + "</td>").collect(joining("", "<tr>", "</tr>"));
  }

  private static List<String> heads(List<String> heads) {
    return heads.stream().map(head -> "<i>" + head + "</i>").toList();
  }

  private FormulaWriter formula(Writing writing) {
    return new FormulaWriter(medium.markup(), writing.digits());
  }

  private String math(String inner) {
    return medium.mathematics().apply(inner);
  }

  private String words(String text) {
    return medium.words().apply(text);
  }

  private String unit(UnitOfMeasure unit) {
    return unit.text().isEmpty() ? "1" : math(medium.markup().unit(unit));
  }
}
