package plainscale.language;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plainscale.laws.Law;
import plainscale.laws.Laws;
import plainscale.notation.Greek;

/**
 * Completion and inspection on a line that uses a law: laws by name and by search words, in
 * quotation marks or without, then the symbols of the law.
 */
final class LawWords {
  private static final int MOST_SYMBOL_PARTS = 2;
  private static final int MOST_FOUND = 6;
  private static final String NAME = "[\\p{L}\\p{N}_]+";
  private static final Pattern USE = Pattern.compile("^\\h*use\\h+(?<phrase>\"?[^\"]*)$");
  private static final Pattern WITH =
      Pattern.compile(
          "^\\h*use\\h+(?<law>" + NAME + ")(?:\\h+as\\h+" + NAME + ")?\\h+with\\h+(?<rest>.*)$");

  private LawWords() {}

  /** What belongs at the cursor, if the line uses a law and it is the law's own matter. */
  static Optional<Completion> complete(String code, int cursor) {
    String line = line(code, cursor);
    Matcher with = WITH.matcher(line);
    if (with.matches()) {
      return Laws.find(with.group("law")).flatMap(law -> symbols(law, with.group("rest"), cursor));
    }
    Matcher use = USE.matcher(line);
    return use.matches() ? Optional.of(laws(use.group("phrase"), cursor)) : Optional.empty();
  }

  private static String line(String code, int cursor) {
    int end = Math.max(0, Math.min(cursor, code.length()));
    return code.substring(code.lastIndexOf('\n', end - 1) + 1, end);
  }

  /** The symbols that nothing stands for yet; right of a sign of equality stands the sheet's. */
  private static Optional<Completion> symbols(Law law, String rest, int cursor) {
    String[] parts = rest.split(",", -1);
    String last = parts[parts.length - 1];
    if (last.contains("=") || rest.contains("\"")) {
      return Optional.empty();
    }
    Set<String> taken =
        Stream.of(parts)
            .map(part -> part.split("=", MOST_SYMBOL_PARTS)[0].strip())
            .flatMap(name -> law.symbol(name).stream())
            .map(Law.Symbol::name)
            .collect(Collectors.toSet());
    String prefix = last.stripLeading();
    String normal = Greek.normal(prefix);
    List<Completion.Item> items =
        law.symbols().stream()
            .map(Law.Symbol::name)
            .filter(name -> !taken.contains(name) || name.equals(normal))
            .filter(name -> name.startsWith(prefix) || name.startsWith(normal))
            .map(name -> new Completion.Item(name + " = ", "symbol"))
            .toList();
    return Optional.of(new Completion(cursor - prefix.length(), cursor, items));
  }

  private static Completion laws(String phrase, int cursor) {
    String words = phrase.replace("\"", "").strip();
    boolean whole = !phrase.equals(phrase.stripTrailing()) && Laws.find(words).isPresent();
    if (whole) {
      List<Completion.Item> next =
          Stream.of("with", "as").map(word -> new Completion.Item(word, "keyword")).toList();
      return new Completion(cursor, cursor, next);
    }
    Set<String> names = new LinkedHashSet<>();
    Laws.search(words.replace('_', ' ')).forEach(law -> names.add(law.name()));
    Laws.all().stream().map(Law::name).filter(n -> n.startsWith(words)).forEach(names::add);
    List<Completion.Item> items =
        names.stream().map(name -> new Completion.Item(name, "law")).toList();
    return new Completion(cursor - phrase.length(), cursor, items);
  }

  /** What a law says, in lines. */
  static String paragraph(Law law) {
    List<String> lines = new ArrayList<>();
    lines.add(law.title() + ": " + law.equation().text());
    law.symbols().forEach(symbol -> lines.add(symbol(symbol)));
    lines.add("Holds " + law.holds() + ".");
    lines.add("Source: " + String.join("; ", law.sources()) + ".");
    lines.add(law.example());
    return String.join("\n", lines);
  }

  private static String symbol(Law.Symbol symbol) {
    String unit = symbol.unit().text();
    return symbol.name() + ": " + symbol.meaning() + (unit.isEmpty() ? "" : ", in " + unit);
  }

  /** A symbol left of its sign of equality on a line that uses a law. */
  static Optional<String> symbol(String code, Word word) {
    Matcher with = WITH.matcher(line(code, word.end()));
    boolean named = code.substring(word.end()).stripLeading().startsWith("=");
    return with.matches() && named
        ? Laws.find(with.group("law"))
            .flatMap(law -> law.symbol(word.text()).map(s -> symbol(s) + "\nin " + law.title()))
        : Optional.empty();
  }

  /** The laws that are found by what stands where a law's name should stand. */
  static Optional<String> found(String code, Word word) {
    Matcher use = USE.matcher(line(code, word.end()));
    if (!use.matches()) {
      return Optional.empty();
    }
    String words = use.group("phrase").replace("\"", "").strip();
    String laws =
        Laws.search(words).stream()
            .limit(MOST_FOUND)
            .map(law -> "\n" + law.name() + ": " + law.title() + ", " + law.equation().text())
            .collect(Collectors.joining());
    return laws.isEmpty() ? Optional.empty() : Optional.of("Laws about “" + words + "”:" + laws);
  }

  /** Whether the line of the word begins with the word that uses laws. */
  static boolean isUsed(String code, Word word) {
    return USE.matcher(line(code, word.start()) + " ").matches();
  }
}
