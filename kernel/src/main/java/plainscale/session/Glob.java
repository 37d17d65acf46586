package plainscale.session;

/** Patterns with {@code *} and {@code ?} that match a whole text, in time of pattern × text. */
final class Glob {

  private Glob() {}

  /** On a mismatch only the last star can give way, so one remembered place is enough. */
  static boolean matches(String pattern, String text) {
    int p = 0;
    int t = 0;
    int star = -1;
    int afterStar = 0;
    while (t < text.length()) {
      if (p < pattern.length() && pattern.charAt(p) == '*') {
        star = p++;
        afterStar = t;
      } else if (p < pattern.length() && fits(pattern.charAt(p), text.charAt(t))) {
        p++;
        t++;
      } else if (star >= 0) {
        p = star + 1;
        t = ++afterStar;
      } else {
        return false;
      }
    }
    return pattern.substring(p).chars().allMatch(c -> c == '*');
  }

  private static boolean fits(char pattern, char text) {
    return pattern == '?' || pattern == text;
  }
}
