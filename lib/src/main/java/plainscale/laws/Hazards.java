package plainscale.laws;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import plainscale.table.Table;
import plainscale.text.Near;

/** What can hurt in a physics lesson ({@code hazards.tsv}). */
public final class Hazards {
  /** What stands below all cautions. */
  public static final String LAST_WORD =
      "The rules of the school and those who are licensed to decide have the last word.";

  private static final String BAR = "\\|";
  private static final Pattern NO_LETTER = Pattern.compile("[^\\p{L}\\p{N}]+");
  private static final int SHORTEST = 3;
  private static final int MOST = 3;

  private static final Map<String, Hazard> ALL = new LinkedHashMap<>();

  static {
    for (Table.Row row : Table.read(Hazards.class, "hazards.tsv")) {
      Hazard hazard = hazard(row);
      ALL.put(hazard.name(), hazard);
    }
  }

  private Hazards() {}

  private static Hazard hazard(Table.Row row) {
    return new Hazard(
        row.get("name"),
        row.get("title"),
        parts(row.get("words")),
        parts(row.get("cautions")),
        row.get("source"));
  }

  private static List<String> parts(String cell) {
    return Arrays.stream(cell.split(BAR, -1)).map(String::strip).toList();
  }

  /** All of them, in the order of the table. */
  public static Collection<Hazard> all() {
    return List.copyOf(ALL.values());
  }

  /** Their names, in the order of the table. */
  public static List<String> names() {
    return List.copyOf(ALL.keySet());
  }

  /** The hazard of that name. */
  public static Optional<Hazard> find(String name) {
    return Optional.ofNullable(ALL.get(name));
  }

  /** The hazards that one of the words of a text stands for: “rubber balloon” finds latex. */
  public static List<Hazard> search(String text) {
    Set<String> words =
        new LinkedHashSet<>(Arrays.asList(NO_LETTER.split(text.toLowerCase(Locale.ROOT))));
    words.removeIf(word -> word.length() < SHORTEST);
    return ALL.values().stream().filter(hazard -> isMeant(hazard, words)).toList();
  }

  private static boolean isMeant(Hazard hazard, Set<String> words) {
    return words.stream()
        .anyMatch(
            word ->
                List.of(hazard.name().split("_", -1)).contains(word)
                    || hazard.words().stream()
                        .flatMap(known -> Arrays.stream(known.split(" ", -1)))
                        .anyMatch(known -> isSame(known, word)));
  }

  private static boolean isSame(String known, String word) {
    return word.equals(known) || word.equals(known + "s") || known.equals(word + "s");
  }

  /**
   * The names that an unknown one may stand for: those that look alike, with the same letter first,
   * then those that it finds as a word, well written or not.
   */
  public static List<String> nearest(String name) {
    Set<String> nearest = new LinkedHashSet<>();
    Near.to(name, ALL.keySet(), ALL.size()).stream()
        .sorted(Comparator.comparing((String known) -> !known.startsWith(first(name))))
        .forEach(nearest::add);
    List<String> words = ALL.values().stream().flatMap(h -> h.words().stream()).toList();
    Near.to(name, words, MOST).stream()
        .flatMap(word -> search(word).stream())
        .forEach(hazard -> nearest.add(hazard.name()));
    search(name).forEach(hazard -> nearest.add(hazard.name()));
    return nearest.stream().limit(MOST).toList();
  }

  private static String first(String name) {
    return name.substring(0, Math.min(1, name.length()));
  }
}
