package plainscale.language;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import plainscale.notation.DataStatement;
import plainscale.notation.Functions;
import plainscale.notation.Greek;
import plainscale.notation.Keywords;
import plainscale.notation.Open;
import plainscale.notation.Statement;
import plainscale.sheet.Entry;
import plainscale.sheet.Sheet;
import plainscale.units.UnitTable;

/**
 * Completion: Greek letters after a backslash, units where a unit stands, else names, constants,
 * functions and words.
 */
final class Completer {
  private static final Pattern IN_UNIT =
      Pattern.compile("(\\[[^\\]]*|\\bin |[\\d?][ ·/*]?|=\\s*[-\\d.±() e×?]+[^\"]*)$");
  private static final Pattern LINE_START = Pattern.compile("(^|\\n)\\h*$");
  private static final Pattern AFTER_GIVEN_NUMBER =
      Pattern.compile("(^|\\n)given\\h[^\"\\n]*=\\h*[-\\d(?][^\"\\n]*$");

  /** Multiples that are used every day; all others can be written too. */
  private static final List<String> EVERYDAY =
      List.of(
          "g", "kg", "mg", "µg", "m", "km", "cm", "mm", "µm", "nm", "s", "ms", "µs", "ns", "min",
          "N", "kN", "mN", "J", "kJ", "MJ", "W", "kW", "MW", "Pa", "kPa", "hPa", "C", "mC", "µC",
          "nC", "V", "kV", "mV", "A", "mA", "µA", "Ω", "kΩ", "MΩ", "F", "µF", "nF", "pF", "Hz",
          "kHz", "MHz", "L", "mL", "K", "°C", "°");

  private final Sheet sheet;

  Completer(Sheet sheet) {
    this.sheet = sheet;
  }

  Completion complete(String code, int cursor) {
    Word word = Word.before(code, cursor);
    if (word.text().startsWith("\\")) {
      return new Completion(word.start(), word.end(), letters(word.text().substring(1)));
    }
    Optional<Completion> law = LawWords.complete(code, cursor);
    if (law.isPresent()) {
      return law.get();
    }
    String before = code.substring(0, word.start());
    return new Completion(word.start(), word.end(), items(word.text(), before));
  }

  private List<Completion.Item> letters(String word) {
    String exact = Greek.letters().get(word);
    if (exact != null) {
      return List.of(new Completion.Item(exact, "letter"));
    }
    Map<String, String> sorted = new TreeMap<>(Greek.letters());
    return sorted.keySet().stream()
        .filter(name -> name.startsWith(word))
        .map(name -> new Completion.Item("\\" + name, "letter"))
        .toList();
  }

  private List<Completion.Item> items(String prefix, String before) {
    return GuardWords.hazards(prefix, before).orElseGet(() -> words(prefix, before));
  }

  private List<Completion.Item> words(String prefix, String before) {
    List<Completion.Item> items = new ArrayList<>(GuardWords.ranges(prefix, before));
    if (IN_UNIT.matcher(before).find() || AFTER_GIVEN_NUMBER.matcher(before).find()) {
      addUnits(items, prefix);
    }
    if (AFTER_GIVEN_NUMBER.matcher(before).find()) {
      return items.stream().distinct().toList();
    }
    addEntries(items, prefix);
    if (LINE_START.matcher(before).find()) {
      add(items, Keywords.STATEMENTS, prefix, "keyword");
    }
    if (!prefix.isEmpty()) {
      add(items, sheet.constants().symbols(), prefix, "constant");
      add(items, Functions.names(), prefix, "function");
      add(items, Keywords.INNER, prefix, "keyword");
    }
    return items.stream().distinct().toList();
  }

  private static void addUnits(List<Completion.Item> items, String prefix) {
    if (UnitTable.standard().find(prefix).isPresent()) {
      items.add(new Completion.Item(prefix, "unit"));
    }
    add(items, EVERYDAY, prefix, "unit");
    add(items, UnitTable.standard().symbols(), prefix, "unit");
  }

  private void addEntries(List<Completion.Item> items, String prefix) {
    String normal = Greek.normal(prefix);
    for (String name : sheet.names().all()) {
      sheet
          .entry(name)
          .filter(e -> name.startsWith(prefix) || name.startsWith(normal))
          .map(Completer::item)
          .ifPresent(items::add);
    }
  }

  private static Completion.Item item(Entry entry) {
    if (entry.statement() instanceof Open) {
      return new Completion.Item(entry.name(), "blank");
    }
    if (entry.statement() instanceof Statement.Relation) {
      return new Completion.Item(entry.name(), "relation");
    }
    if (entry.statement() instanceof DataStatement.Table) {
      return new Completion.Item(entry.name(), "column");
    }
    boolean given = entry.statement() instanceof Statement.Given;
    return new Completion.Item(entry.name(), given ? "given" : "definition");
  }

  private static void add(
      List<Completion.Item> items, Collection<String> words, String prefix, String kind) {
    words.stream()
        .filter(w -> w.startsWith(prefix))
        .map(w -> new Completion.Item(w, kind))
        .forEach(items::add);
  }
}
