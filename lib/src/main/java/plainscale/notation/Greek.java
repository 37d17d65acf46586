package plainscale.notation;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plainscale.table.Table;

/** Names in one form: Greek letters for their words, {@code _} for subscripts. */
public final class Greek {
  private static final Map<String, String> LETTERS = new LinkedHashMap<>();
  private static final Map<String, String> WORDS = new LinkedHashMap<>();
  private static final String SUBSCRIPTS = "₀₁₂₃₄₅₆₇₈₉";

  static {
    for (Table.Row row : Table.read(Greek.class, "greek.tsv")) {
      LETTERS.put(row.get("word"), row.get("letter"));
      WORDS.put(row.get("letter"), row.get("word"));
    }
  }

  private Greek() {}

  /** Words to letters, as in {@code theta} to θ. */
  public static Map<String, String> letters() {
    return Map.copyOf(LETTERS);
  }

  /** Letters to words, as TeX names them. */
  public static Map<String, String> words() {
    return Map.copyOf(WORDS);
  }

  /**
   * One form for every way to write a name: {@code epsilon_0}, {@code ε_0} and {@code ε₀} are one.
   */
  public static String normal(String name) {
    String composed =
        Normalizer.normalize(subscriptsOut(name), Normalizer.Form.NFC)
            .replace('µ', 'μ')
            .replace('Ω', 'Ω');
    List<String> parts = new ArrayList<>();
    for (String part : composed.split("_", -1)) {
      parts.add(LETTERS.getOrDefault(part, part));
    }
    return String.join("_", parts);
  }

  private static String subscriptsOut(String name) {
    StringBuilder plain = new StringBuilder();
    boolean below = false;
    for (int i = 0; i < name.length(); i++) {
      int digit = SUBSCRIPTS.indexOf(name.charAt(i));
      if (digit >= 0
          && !below
          && (plain.length() == 0 || plain.charAt(plain.length() - 1) != '_')) {
        plain.append('_');
      }
      below = digit >= 0;
      plain.append(digit >= 0 ? (char) ('0' + digit) : name.charAt(i));
    }
    return plain.toString();
  }

  /** Whether the character is a subscript digit. */
  static boolean isSubscript(int c) {
    return c <= 0xFFFF && SUBSCRIPTS.indexOf(c) >= 0;
  }
}
