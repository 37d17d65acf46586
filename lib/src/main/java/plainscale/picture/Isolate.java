package plainscale.picture;

import java.text.Bidi;

/** Keeps the direction of a text to itself, where it has parts that are read from the right. */
final class Isolate {
  /** U+2068 first strong isolate, U+2069 pop directional isolate (Unicode Standard Annex 9). */
  private static final String ISOLATED = "\u2068%s\u2069";

  private Isolate() {}

  static String of(String text) {
    char[] characters = text.toCharArray();
    boolean twoWays = Bidi.requiresBidi(characters, 0, characters.length);
    return twoWays ? ISOLATED.formatted(text) : text;
  }
}
