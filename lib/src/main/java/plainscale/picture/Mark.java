package plainscale.picture;

import java.math.BigDecimal;
import plainscale.magnitude.Agreement;
import plainscale.magnitude.Digits;
import plainscale.magnitude.PowerOfTen;
import plainscale.magnitude.Spelling;
import plainscale.magnitude.Writing;

/**
 * A number that a picture shows: {@code new Mark("electrons that moved", 8.7E+12, "")}. The number
 * is rounded already; label and unit may be empty.
 */
public record Mark(String label, BigDecimal value, String unit) {
  private static final BigDecimal HUNDREDTH = new BigDecimal("0.01");
  private static final char NO_BREAK_SPACE = '\u00a0';
  private static final int LONGEST_NAME = 240;

  /** Numbers from 0.01 up to 9999 are clearer as they stand than as a power of ten. */
  private static final int LOWEST_EVERYDAY = -2;

  private static final int HIGHEST_EVERYDAY = 3;

  /** The label, cut where it is monstrously long. */
  String name() {
    return cut(label.strip());
  }

  static String cut(String text) {
    return text.codePointCount(0, text.length()) <= LONGEST_NAME
        ? text
        : text.substring(0, text.offsetByCodePoints(0, LONGEST_NAME)) + "…";
  }

  /** "8.7 × 10¹² kg", in one piece. */
  String inPowers(Writing writing) {
    return withUnit(PowerOfTen.of(value).text(writing.digits())).replace(' ', NO_BREAK_SPACE);
  }

  /** "412 kg", and beyond everyday numbers "8.7 × 10¹² kg", in one piece. */
  String inFigures(Writing writing) {
    return isEveryday() ? withUnit(Digits.of(value, writing.digits()).text()) : inPowers(writing);
  }

  boolean isEveryday() {
    long exponent = PowerOfTen.of(value).exponent();
    return exponent >= LOWEST_EVERYDAY && exponent <= HIGHEST_EVERYDAY;
  }

  /** "8.7 trillion kg", "305 quintillionths of 1 kg", to be broken before "of" at most. */
  String inWords(Writing writing) {
    String words = spelling(writing).text().replace(' ', NO_BREAK_SPACE);
    if (unit.isEmpty()) {
      return words;
    }
    if (value.signum() != 0 && value.abs().compareTo(BigDecimal.ONE) < 0) {
      return words + " " + withUnit(writing.words().ofOne() + NO_BREAK_SPACE + "1");
    }
    Agreement agreement = Agreement.of(words, value, writing.words());
    return writing.phrases().say("quantity", words, unit, agreement).replace(' ', NO_BREAK_SPACE);
  }

  /** Whether the words say more than the power of ten or the digits do. */
  boolean hasWords(Writing writing) {
    Spelling words = spelling(writing);
    boolean everyday = // 0.14 is clearer than "14 hundredths"
        value.abs().compareTo(BigDecimal.ONE) < 0 && value.abs().compareTo(HUNDREDTH) >= 0;
    return !everyday
        && words.inWords()
        && !words.text().equals(Digits.of(value, writing.digits()).text());
  }

  /** One clause for a text alternative: label, digits to copy, words. */
  String said(Writing writing) {
    String words = hasWords(writing) ? " (" + inWords(writing) + ")" : "";
    String number = withUnit(digits(writing)) + words;
    return (name().isEmpty()
            ? number
            : writing.phrases().say("picture.label", Isolate.of(name()), number))
        .replace(NO_BREAK_SPACE, ' ');
  }

  private String digits(Writing writing) {
    Digits digits = Digits.of(value, writing.digits());
    return digits.full() ? digits.plain().replace(".", digits.style().marker()) : digits.text();
  }

  private Spelling spelling(Writing writing) {
    return writing.words().with(writing.digits()).mixed(value);
  }

  private String withUnit(String number) {
    return unit.isEmpty() ? number : number + NO_BREAK_SPACE + unit;
  }
}
