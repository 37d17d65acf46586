package plainscale.picture;

import java.math.BigDecimal;
import plainscale.magnitude.Digits;
import plainscale.magnitude.PowerOfTen;
import plainscale.magnitude.Spelling;
import plainscale.magnitude.Words;

/**
 * A number that a picture shows: {@code new Mark("electrons that moved", 8.7E+12, "")}. The number
 * is rounded already; the unit may be empty.
 */
public record Mark(String label, BigDecimal value, String unit) {
  private static final char NO_BREAK_SPACE = '\u00a0';

  /** "8.7 × 10¹² kg", in one piece. */
  String inPowers() {
    return withUnit(PowerOfTen.of(value).text()).replace(' ', NO_BREAK_SPACE);
  }

  /** "8.7 trillion kg", "305 quintillionths of 1 kg", to be broken before "of" at most. */
  String inWords() {
    String words = Words.ENGLISH.mixed(value).text().replace(' ', NO_BREAK_SPACE);
    boolean fraction = value.abs().compareTo(BigDecimal.ONE) < 0;
    return fraction && !unit.isEmpty() ? words + " " + withUnit("of\u00a01") : withUnit(words);
  }

  /** Whether the words say more than the power of ten or the digits do. */
  boolean hasWords() {
    Spelling words = Words.ENGLISH.mixed(value);
    return words.inWords() && !words.text().equals(Digits.of(value).text());
  }

  /** One clause for a text alternative: label, digits to copy, words. */
  String said() {
    String words = hasWords() ? " (" + inWords() + ")" : "";
    String said = label + ": " + withUnit(Digits.of(value).plain()) + words;
    return said.replace(NO_BREAK_SPACE, ' ');
  }

  private String withUnit(String number) {
    return unit.isEmpty() ? number : number + NO_BREAK_SPACE + unit;
  }
}
