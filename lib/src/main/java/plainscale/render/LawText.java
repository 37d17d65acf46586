package plainscale.render;

import java.util.ArrayList;
import java.util.List;
import plainscale.laws.Law;
import plainscale.notation.Printer;
import plainscale.sheet.LawResult;
import plainscale.units.UnitOfMeasure;

/** What a result about laws says: a heading, a table, sentences. */
record LawText(String head, List<List<String>> table, List<String> sentences) {

  static LawText of(LawResult result) {
    return result.acceptLaw(
        new LawResult.Visitor<>() {
          @Override
          public LawText used(LawResult.Used used) {
            return of(used);
          }

          @Override
          public LawText found(LawResult.Found found) {
            return of(found);
          }
        });
  }

  private static LawText of(LawResult.Used used) {
    boolean renames = used.renames();
    List<List<String>> table = new ArrayList<>(List.of(heads(renames)));
    for (LawResult.Row row : used.rows()) {
      List<String> cells = new ArrayList<>(List.of(Printer.print(row.here())));
      if (renames) {
        cells.add(row.symbol());
      }
      cells.addAll(List.of(unit(row.unit()), row.meaning()));
      table.add(cells);
    }
    String head = "%s: %s    (%s)".formatted(used.name(), used.equation().text(), words(used));
    return new LawText(head, table, sentences(used.law()));
  }

  /** The heads of the columns. */
  static List<String> heads(boolean renames) {
    return renames
        ? List.of("here", "in the law", "unit", "what it is")
        : List.of("symbol", "unit", "what it is");
  }

  /** What the statement says of the law, and what the law is called. */
  static String words(LawResult.Used used) {
    String title = used.law().title();
    return used.description().isEmpty() ? title : used.description() + "; " + title;
  }

  /** The unit's text; 1 for a plain number. */
  static String unit(UnitOfMeasure unit) {
    return unit.text().isEmpty() ? "1" : unit.text();
  }

  /** When a law holds, and where it is published. */
  static List<String> sentences(Law law) {
    return List.of(
        "Holds " + law.holds() + ".", "Source: " + String.join("; ", law.sources()) + ".");
  }

  private static LawText of(LawResult.Found found) {
    List<List<String>> table = new ArrayList<>(List.of(List.of("name", "relation", "what it is")));
    found.laws().forEach(law -> table.add(List.of(law.name(), law.equation().text(), law.title())));
    return new LawText(head(found), table, List.of(advice(found)));
  }

  /** What was asked. */
  static String head(LawResult.Found found) {
    return "Laws about “" + found.words() + "”";
  }

  /** How the first of the laws is used. */
  static String advice(LawResult.Found found) {
    return "Use one by its name, with your names for its symbols: " + found.laws().get(0).example();
  }
}
