package plainscale.laws;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plainscale.table.Table;
import plainscale.text.Near;
import plainscale.units.UnitParser;

/**
 * The table of laws: the files that {@code table/fields.tsv} names, one for each field of physics,
 * one row a law. Sources stand in {@code table/sources.tsv}. Read when it is first asked.
 */
public final class Laws {
  private static final int NEAREST = 3;

  /** {@code q_1 [C] first charge}. */
  private static final Pattern SYMBOL = Pattern.compile("(\\S+) \\[([^\\]]+)\\] (.+)");

  private static final Map<String, Law> BY_NAME = new LinkedHashMap<>();
  private static final LawSearch SEARCH;

  static {
    Map<String, String> sources = new LinkedHashMap<>();
    rows("sources").forEach(row -> sources.put(row.get("key"), row.get("source")));
    for (Table.Row field : rows("fields")) {
      rows(field.get("file")).forEach(row -> add(row, field.get("field"), sources));
    }
    SEARCH = new LawSearch(List.copyOf(BY_NAME.values()));
  }

  private Laws() {}

  private static List<Table.Row> rows(String file) {
    return Table.read(Laws.class, "table/" + file + ".tsv");
  }

  private static void add(Table.Row row, String field, Map<String, String> sources) {
    Law law =
        new Law(
            row.get("name"),
            row.get("title"),
            field,
            row.get("relation"),
            parts(row.get("symbols"), ";").stream().map(Laws::symbol).toList(),
            row.get("holds"),
            parts(row.get("source"), ",").stream()
                .map(key -> Objects.requireNonNull(sources.get(key), "no source " + key))
                .toList(),
            parts(row.get("words"), ","));
    if (BY_NAME.put(law.name(), law) != null) {
      throw new IllegalStateException("two laws are called " + law.name());
    }
  }

  private static List<String> parts(String cell, String separator) {
    return Arrays.stream(cell.split(separator, -1)).map(String::strip).toList();
  }

  private static Law.Symbol symbol(String text) {
    Matcher matcher = SYMBOL.matcher(text);
    if (!matcher.matches()) {
      throw new IllegalStateException("a symbol is written “F [N] force”, not “" + text + "”");
    }
    return new Law.Symbol(
        matcher.group(1), UnitParser.parse(matcher.group(2)), matcher.group(3).strip());
  }

  /** All laws, in the order of the table. */
  public static List<Law> all() {
    return List.copyOf(BY_NAME.values());
  }

  /** The law of that name. */
  public static Optional<Law> find(String name) {
    return Optional.ofNullable(BY_NAME.get(name));
  }

  /** The laws that some words fit, the best first; what is being typed may be half a word. */
  public static List<Law> search(String words) {
    return SEARCH.find(words);
  }

  /** The names of laws that were meant if this one has a slip of the pen. */
  public static List<String> near(String name) {
    return Near.to(name, BY_NAME.keySet(), NEAREST);
  }
}
