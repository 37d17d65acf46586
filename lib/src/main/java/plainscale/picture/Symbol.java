package plainscale.picture;

/**
 * The symbol of a quantity within a text: its letter is italic, what follows {@code _} is a
 * subscript (ISO 80000-1, 7.1). Four private characters mark that in the text.
 */
public final class Symbol {
  static final char ITALIC = '\uE001';
  static final char UPRIGHT = '\uE002';
  static final char LOWERED = '\uE003';
  static final char LEVEL = '\uE004';

  private Symbol() {}

  /** The symbol of a name as it is written in a cell: "q_1" with a lowered 1. */
  public static String of(String name) {
    int bar = name.indexOf('_');
    String letter = bar < 0 ? name : name.substring(0, bar);
    String italic = ITALIC + letter + UPRIGHT;
    return bar < 0 ? italic : italic + LOWERED + name.substring(bar + 1) + LEVEL;
  }

  static boolean isMark(int c) {
    return c >= ITALIC && c <= LEVEL;
  }

  /** The text without the marks, for a reader who hears it: "q 1". */
  public static String spoken(String text) {
    return text.replaceAll("[" + ITALIC + UPRIGHT + LEVEL + "]", "").replace(LOWERED, ' ');
  }
}
