package plainscale.laws;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The words of a row of a table, one of which must be there: words or phrases between bars, {@code
 * *} for any ending, {@code =η} for a name of the sheet. {@code -} asks for nothing.
 */
final class WordList {
  /** A list that asks for nothing. */
  static final WordList NONE = new WordList(List.of());

  private static final String BAR = "|";

  private final List<String> terms;

  private WordList(List<String> terms) {
    this.terms = terms;
  }

  static WordList of(String cell) {
    return cell.equals("-")
        ? NONE
        : new WordList(Arrays.stream(cell.split("\\" + BAR, -1)).map(String::strip).toList());
  }

  /** Whether it asks for nothing. */
  boolean isEmpty() {
    return terms.isEmpty();
  }

  /** Whether one of the terms is among the words. */
  boolean in(Subject subject) {
    List<String> words = subject.words();
    return terms.stream()
        .anyMatch(
            term ->
                term.startsWith("=")
                    ? isNamed(subject, term.substring(1))
                    : isAmong(words, List.of(term.toLowerCase(Locale.ROOT).split(" ", -1))));
  }

  private static boolean isNamed(Subject subject, String symbol) {
    return subject.name().equals(symbol) || subject.symbol().equals(symbol);
  }

  private static boolean isAmong(List<String> words, List<String> phrase) {
    for (int from = 0; from + phrase.size() <= words.size(); from++) {
      if (fits(words.subList(from, from + phrase.size()), phrase)) {
        return true;
      }
    }
    return false;
  }

  private static boolean fits(List<String> words, List<String> phrase) {
    for (int i = 0; i < phrase.size(); i++) {
      String term = phrase.get(i);
      boolean same =
          term.endsWith("*")
              ? words.get(i).startsWith(term.substring(0, term.length() - 1))
              : words.get(i).equals(term);
      if (!same) {
        return false;
      }
    }
    return true;
  }
}
