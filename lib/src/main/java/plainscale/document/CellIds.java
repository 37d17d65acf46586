package plainscale.document;

import java.text.Normalizer;
import java.util.Collection;
import java.util.Locale;
import java.util.regex.Pattern;

/** Ids of cells: letters, digits, - and _, at most 64 of them (nbformat 4.5). */
public final class CellIds {
  private static final int LONGEST = 64;
  private static final Pattern VALID = Pattern.compile("[a-zA-Z0-9_-]{1," + LONGEST + "}");
  private static final Pattern OTHER = Pattern.compile("[^a-zA-Z0-9_]+");

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
    String plain = Normalizer.normalize(text, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
    String joined =
        OTHER.matcher(plain).replaceAll("-").replaceAll("^-+|-+$", "").toLowerCase(Locale.ROOT);
    String cut = joined.substring(0, Math.min(longest, joined.length())).replaceAll("-+$", "");
    return cut.isEmpty() ? "cell" : cut;
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
