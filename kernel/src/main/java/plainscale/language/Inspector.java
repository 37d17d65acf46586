package plainscale.language;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainscale.laws.Constant;
import plainscale.laws.Law;
import plainscale.laws.Laws;
import plainscale.notation.Functions;
import plainscale.notation.Greek;
import plainscale.notation.Open;
import plainscale.notation.Printer;
import plainscale.notation.Statement;
import plainscale.quantity.ElementaryFunction;
import plainscale.quantity.Quantity;
import plainscale.render.Html;
import plainscale.render.ValueText;
import plainscale.sheet.Entry;
import plainscale.sheet.Sheet;
import plainscale.table.Table;
import plainscale.units.Kinds;
import plainscale.units.UnitException;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitSymbol;
import plainscale.units.UnitTable;

/**
 * What the word at the cursor is: a name of the sheet, a constant, a function, a word of the
 * notation, a unit.
 */
final class Inspector {
  private static final Map<String, Table.Row> WORDS = new LinkedHashMap<>();

  static {
    Table.read(Inspector.class, "words.tsv").forEach(row -> WORDS.put(row.get("word"), row));
  }

  private final Sheet sheet;

  Inspector(Sheet sheet) {
    this.sheet = sheet;
  }

  Optional<MimeBundle> inspect(String code, int cursor) {
    Word around = Word.around(code, cursor);
    String word = around.text().isEmpty() && isBlank(code, cursor) ? Open.SIGN : around.text();
    if (word.isEmpty()) {
      return Optional.empty();
    }
    List<String> paragraphs = new ArrayList<>();
    LawWords.symbol(code, around).ifPresent(paragraphs::add);
    name(Greek.normal(word)).ifPresent(paragraphs::add);
    Functions.find(word).map(Inspector::function).ifPresent(paragraphs::add);
    Optional.ofNullable(WORDS.get(word)).map(Inspector::keyword).ifPresent(paragraphs::add);
    GuardWords.inspected(word).ifPresent(paragraphs::add);
    UnitTable.standard().find(word).map(Inspector::unit).ifPresent(paragraphs::add);
    law(code, around, paragraphs.isEmpty())
        .map(LawWords::paragraph)
        .or(() -> LawWords.found(code, around))
        .ifPresent(paragraphs::add);
    return paragraphs.isEmpty() ? Optional.empty() : Optional.of(bundle(paragraphs));
  }

  /** Whether the cursor stands right before or behind a blank. */
  private static boolean isBlank(String code, int cursor) {
    return code.startsWith(Open.SIGN, cursor) || code.startsWith(Open.SIGN, cursor - 1);
  }

  /** The law behind a relation of the sheet, or the one that is meant where laws stand. */
  private Optional<Law> law(String code, Word word, boolean alone) {
    Optional<Law> behind =
        sheet
            .entry(Greek.normal(word.text()))
            .flatMap(Entry::origin)
            .flatMap(origin -> Laws.find(origin.law()));
    return behind.or(
        () ->
            Optional.of(word.text())
                .filter(name -> alone || LawWords.isUsed(code, word))
                .flatMap(Laws::find));
  }

  private static MimeBundle bundle(List<String> paragraphs) {
    StringBuilder html = new StringBuilder();
    paragraphs.forEach(
        p -> html.append("<p>").append(Html.escape(p).replace("\n", "<br>")).append("</p>"));
    return MimeBundle.of(
        Map.of("text/plain", String.join("\n\n", paragraphs), "text/html", html.toString()));
  }

  private Optional<String> name(String name) {
    return sheet
        .entry(name)
        .map(this::entry)
        .or(() -> sheet.constants().find(name).map(this::constant));
  }

  private String entry(Entry entry) {
    if (entry.statement() instanceof Open) {
      String words = entry.description().isEmpty() ? "" : "\n" + entry.description();
      return entry.name() + ": still blank" + words + "\nin this sheet: " + line(entry);
    }
    if (entry.statement() instanceof Statement.Relation relation) {
      String used = relation.origin().map(law -> "\n" + equation(relation)).orElse("");
      return line(entry)
          + used
          + "\nrelation in this sheet; solve it: solve "
          + relation.name()
          + " for …";
    }
    String value = sheet.value(entry.name()).map(this::shown).orElse(": no value yet");
    String formula = entry.formula().map(f -> " = " + Printer.print(f)).orElse("");
    String description = entry.description().isEmpty() ? "" : "\n" + entry.description();
    String kind = entry.formula().isPresent() ? "\ndefined" : "\ngiven";
    return entry.name() + formula + value + description + kind + " in this sheet: " + line(entry);
  }

  private static String equation(Statement.Relation relation) {
    return Printer.print(relation.left()) + " = " + Printer.print(relation.right());
  }

  /** A value whose unit has a broken power cannot be shown. */
  private String shown(Quantity quantity) {
    try {
      return " = " + ValueText.number(quantity.shown(), sheet.writing());
    } catch (UnitException brokenPower) {
      return ": " + brokenPower.getMessage();
    }
  }

  private static String line(Entry entry) {
    int start = entry.statement().span().start();
    int end = entry.source().indexOf('\n', start);
    return entry.source().substring(start, end < 0 ? entry.source().length() : end).strip();
  }

  private String constant(Constant constant) {
    String exact =
        constant.quantity().uncertainty().derivatives().isEmpty()
                && constant.quantity().figures().exact()
            ? " (exact)"
            : "";
    return constant.symbol()
        + " = "
        + ValueText.number(constant.quantity().shown(), sheet.writing())
        + exact
        + "\n"
        + constant.meaning()
        + "\n"
        + constant.source();
  }

  private static String function(ElementaryFunction function) {
    String takes =
        switch (function.takes()) {
          case ANGLE -> "an angle (30° or 0.5 [rad])";
          case NUMBER -> "a plain number";
          case ANY -> "any quantity";
        };
    return function.text()
        + "(x): x is "
        + takes
        + (function.gives() == ElementaryFunction.Gives.ANGLE ? "; gives an angle" : "");
  }

  private static String keyword(Table.Row row) {
    return row.get("word") + ": " + row.get("meaning") + "\nExample: " + row.get("example");
  }

  private static String unit(UnitSymbol symbol) {
    UnitOfMeasure unit = UnitOfMeasure.of(List.of(new UnitOfMeasure.Factor(symbol, 1)));
    Kinds.Named kind = Kinds.of(unit.kind());
    String size =
        kind.unit().equals(unit) || unit.isScale()
            ? ""
            : "\n1 "
                + symbol.text()
                + " = "
                + unit.factor().stripTrailingZeros().toPlainString()
                + " "
                + kind.unit().text();
    return symbol.text()
        + ": "
        + symbol.name()
        + ", a unit of "
        + kind.name()
        + size
        + "\n"
        + symbol.source();
  }
}
