package plainscale.document;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Ids of cells: letters, digits, - and _, at most 64 of them (nbformat 4.5). */
public final class CellIds {
  private static final int LONGEST = 64;
  private static final int FIRST = 200; // signs in which the first words are looked for
  private static final int FIRST_WORDS = 4;
  private static final Pattern VALID = Pattern.compile("[a-zA-Z0-9_-]{1," + LONGEST + "}");
  private static final Pattern OTHER = Pattern.compile("[^a-zA-Z0-9_]+");
  private static final Pattern LETTER = Pattern.compile("[a-zA-Z]");

  private CellIds() {}

  static boolean isValid(String id) {
    return VALID.matcher(id).matches();
  }

  /** The text if it is an id, else the nearest. */
  static String valid(String text) {
    return isValid(text) ? text : slug(text, LONGEST);
  }

  /** Lower-case words joined by -, without accents; {@code cell} if nothing is left. */
  static String slug(String text, int longest) {
    String joined =
        OTHER
            .matcher(plain(text))
            .replaceAll("-")
            .replaceAll("^-+|-+$", "")
            .toLowerCase(Locale.ROOT);
    String cut = joined.substring(0, Math.min(longest, joined.length())).replaceAll("-+$", "");
    return cut.isEmpty() ? "cell" : cut;
  }

  private static String plain(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
  }

  /**
   * The first words of a source as an id, for a cell that has none: words with a letter in them, so
   * that another value does not make another id.
   */
  static String derived(String source) {
    String begin = source.substring(0, Math.min(FIRST, source.length())).strip();
    String line = begin.lines().findFirst().orElse("");
    String words =
        Arrays.stream(OTHER.split(plain(line)))
            .filter(word -> LETTER.matcher(word).find())
            .limit(FIRST_WORDS)
            .collect(Collectors.joining("-"));
    return slug(words, LONGEST);
  }

  /** The id, with a number behind it if it is taken. */
  public static String free(String id, Collection<String> taken) {
    String free = id;
    for (int number = 2; taken.contains(free); number++) {
      String ending = "-" + number;
      free = id.substring(0, Math.min(id.length(), LONGEST - ending.length())) + ending;
    }
    return free;
  }
}
