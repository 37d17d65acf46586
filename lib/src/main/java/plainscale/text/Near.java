package plainscale.text;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * The nearest known words to an unknown one, by edit distance (insert, delete, replace, swap
 * neighbours).
 */
public final class Near {
  private static final int LONGEST = 40;

  private Near() {}

  /**
   * Up to {@code most} of the known words within a distance that grows with the length of the word.
   */
  public static List<String> to(String word, Collection<String> known, int most) {
    if (word.length() > LONGEST) {
      return List.of();
    }
    return known.stream()
        .distinct()
        .filter(k -> k.length() <= LONGEST && isNear(word, k))
        .sorted(Comparator.comparingInt((String k) -> distance(word, k)).thenComparing(k -> k))
        .limit(most)
        .toList();
  }

  /** Of a single letter only the other case is near. */
  private static boolean isNear(String word, String known) {
    if (word.length() == 1) {
      return known.equalsIgnoreCase(word);
    }
    return distance(word, known) <= (word.length() <= 3 ? 1 : 2);
  }

  /**
   * Edits from one word to another; a difference in case alone counts as half an edit, so as one of
   * two.
   */
  static int distance(String a, String b) {
    if (a.toLowerCase(Locale.ROOT).equals(b.toLowerCase(Locale.ROOT))) {
      return a.equals(b) ? 0 : 1;
    }
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : step(a, b, d, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int step(String a, String b, int[][] d, int i, int j) {
    int replace = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
    int best = Math.min(replace, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
  }
}
