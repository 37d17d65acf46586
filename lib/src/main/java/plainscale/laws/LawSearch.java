package plainscale.laws;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import plainscale.text.Near;

/**
 * Laws by words. Each word of a query counts by how well a law has it (whole, as a beginning, with
 * another ending, misspelled), by where (search words and names before the meanings of symbols),
 * and by how few laws have it; a phrase that is the whole query counts more.
 */
final class LawSearch {
  private static final double WHOLE = 1;
  private static final double BEGINNING = 0.8;
  private static final double OTHER_ENDING = 0.7;
  private static final double MISSPELLED = 0.4;

  /** A word in the meaning of a symbol says less of a law than one of its search words. */
  private static final double IN_MEANING = 0.3;

  /** How much a phrase adds that is the query and nothing else. */
  private static final double PHRASE = 4;

  /** What scores less than this share of the best is left out. */
  private static final double POOR = 0.45;

  private static final int SHORTEST_STEM = 4;
  private static final int SHORTEST_MISSPELLED = 5;

  /** Words that say nothing of the matter. */
  private static final Set<String> EMPTY =
      Set.of(
          "a", "an", "and", "are", "as", "at", "between", "by", "do", "does", "for", "from", "has",
          "have", "how", "i", "in", "is", "it", "its", "law", "of", "on", "or", "s", "that", "the",
          "there", "to", "what", "when", "with");

  private final List<Entry> entries;
  private final Map<String, Double> rarity = new HashMap<>();

  /** The words of a law with their weights, and its phrases. */
  private record Entry(Law law, Map<String, Double> words, List<List<String>> phrases) {}

  private record Hit(Law law, double score) {}

  LawSearch(List<Law> laws) {
    entries = laws.stream().map(LawSearch::entry).toList();
    Map<String, Integer> having = new HashMap<>();
    entries.forEach(e -> e.words().keySet().forEach(w -> having.merge(w, 1, Integer::sum)));
    having.forEach((word, n) -> rarity.put(word, 1 + Math.log((double) laws.size() / n)));
  }

  private static Entry entry(Law law) {
    List<List<String>> phrases = new ArrayList<>();
    law.words().forEach(phrase -> phrases.add(words(phrase)));
    phrases.add(words(law.title()));
    phrases.add(words(law.name()));
    Map<String, Double> weights = new LinkedHashMap<>();
    law.symbols().forEach(s -> words(s.meaning()).forEach(w -> weights.put(w, IN_MEANING)));
    words(law.field()).forEach(word -> weights.put(word, IN_MEANING));
    phrases.forEach(phrase -> phrase.forEach(word -> weights.put(word, 1.0)));
    return new Entry(law, weights, phrases);
  }

  /** Lower-case words that say something; if none does, all of them. */
  private static List<String> words(String text) {
    List<String> all =
        Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
            .filter(word -> !word.isEmpty())
            .toList();
    List<String> telling = all.stream().filter(word -> !EMPTY.contains(word)).toList();
    return telling.isEmpty() ? all : telling;
  }

  /** The laws that fit, the best first. */
  List<Law> find(String query) {
    List<Map<String, Double>> asked = words(query).stream().map(this::alike).toList();
    List<Hit> hits =
        entries.stream()
            .map(entry -> new Hit(entry.law(), score(entry, asked)))
            .filter(hit -> hit.score() > 0)
            .sorted(Comparator.comparingDouble(Hit::score).reversed())
            .toList();
    double best = hits.isEmpty() ? 0 : hits.get(0).score();
    return hits.stream().filter(hit -> hit.score() > POOR * best).map(Hit::law).toList();
  }

  /** The words of the table that a word of a query is like, and how much. */
  private Map<String, Double> alike(String asked) {
    Map<String, Double> alike = new HashMap<>();
    for (String known : rarity.keySet()) {
      double likeness = likeness(asked, known);
      if (likeness > 0) {
        alike.put(known, likeness);
      }
    }
    return alike;
  }

  private double score(Entry entry, List<Map<String, Double>> asked) {
    double words = 0;
    for (Map<String, Double> alike : asked) {
      words +=
          alike.entrySet().stream()
              .mapToDouble(a -> a.getValue() * weight(entry, a.getKey()) * rarity(a.getKey()))
              .max()
              .orElse(0);
    }
    double phrase = entry.phrases().stream().mapToDouble(p -> coverage(p, asked)).max().orElse(0);
    return words == 0 ? 0 : words + PHRASE * phrase;
  }

  private static double weight(Entry entry, String word) {
    return entry.words().getOrDefault(word, 0.0);
  }

  private double rarity(String word) {
    return rarity.getOrDefault(word, 1.0);
  }

  private static double likeness(Map<String, Double> alike, String known) {
    return alike.getOrDefault(known, 0.0);
  }

  /** 1 if the phrase and the query are the same words, less for every word that only one has. */
  private static double coverage(List<String> phrase, List<Map<String, Double>> asked) {
    double common = 0;
    for (Map<String, Double> alike : asked) {
      common += phrase.stream().mapToDouble(p -> likeness(alike, p)).max().orElse(0);
    }
    return common / Math.max(phrase.size(), asked.size());
  }

  /** How well a word of a query fits a word of the table: 1 if it is the same, 0 if not at all. */
  private static double likeness(String asked, String known) {
    if (asked.equals(known)) {
      return WHOLE;
    }
    if (asked.length() > 1 && known.startsWith(asked)) {
      return BEGINNING;
    }
    if (isSameStem(asked, known)) {
      return OTHER_ENDING;
    }
    return isMisspelled(asked, known) ? MISSPELLED : 0;
  }

  /** {@code charging} and {@code charges}: alike but for the ending of the shorter word. */
  private static boolean isSameStem(String one, String other) {
    int common = 0;
    int shorter = Math.min(one.length(), other.length());
    while (common < shorter && one.charAt(common) == other.charAt(common)) {
      common++;
    }
    return common >= SHORTEST_STEM && common >= shorter - 1;
  }

  /** A slip of the pen is seldom in the first letter. */
  private static boolean isMisspelled(String asked, String known) {
    return asked.length() >= SHORTEST_MISSPELLED
        && Math.abs(asked.length() - known.length()) <= 1
        && asked.charAt(0) == known.charAt(0)
        && !Near.to(asked, List.of(known), 1).isEmpty();
  }
}
