package plainscale.data;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.Set;

/**
 * Headings as names of the notation: a letter first, then letters, digits, {@code _} and subscript
 * digits; every name once.
 */
final class ColumnNames {
  private static final int LONGEST = 40;
  private final Set<String> used = new HashSet<>();

  /** The nearest valid name to a text. */
  static String valid(String text, int place) {
    StringBuilder name = new StringBuilder();
    Normalizer.normalize(text, Normalizer.Form.NFC)
        .codePoints()
        .limit(LONGEST)
        .map(c -> isPart(c) ? c : '_')
        .forEach(name::appendCodePoint);
    String joined = name.toString().replaceAll("_+", "_").replaceAll("^_|_$", "");
    if (joined.isEmpty()) {
      return "column_" + place;
    }
    return Character.isLetter(joined.codePointAt(0)) ? joined : "c_" + joined;
  }

  private static boolean isPart(int c) {
    return Character.isLetterOrDigit(c)
        || c == '_'
        || (c >= '₀' && c <= '₉')
        || Character.getType(c) == Character.NON_SPACING_MARK;
  }

  /** The name itself, or with a number behind it if it is taken. */
  String once(String name) {
    String free = name;
    for (int i = 2; !used.add(free); i++) {
      free = name + "_" + i;
    }
    return free;
  }
}
