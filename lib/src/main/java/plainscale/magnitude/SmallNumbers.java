package plainscale.magnitude;

import com.ibm.icu.text.RuleBasedNumberFormat;
import java.util.Locale;

/**
 * The words for 0 to 999, from ICU4J. ICU4J itself stops at 10^18 and turns larger doubles into
 * 2^63 − 1 without a word, so it is given nothing but small longs.
 */
final class SmallNumbers {
  private SmallNumbers() {}

  /** Loaded when the first word is asked for: the rules take a while to parse. */
  private static final class Rules {
    static final RuleBasedNumberFormat ENGLISH =
        new RuleBasedNumberFormat(Locale.ENGLISH, RuleBasedNumberFormat.SPELLOUT);
  }

  static String spell(int number) {
    if (number < 0 || number > 999) {
      throw new IllegalArgumentException("Not a group of three digits: " + number);
    }
    // One format serves all threads, and ICU4J does not promise that it may be shared.
    synchronized (Rules.ENGLISH) {
      return Rules.ENGLISH.format((long) number);
    }
  }
}
