package plainscale.magnitude;

import java.util.Locale;
import java.util.Optional;

/**
 * How numbers are written for a reader: the style of digits, the words, and what is meant by an
 * order of magnitude. {@code Writing.USUAL} is SI digits and English words of the short scale.
 */
public record Writing(DigitStyle digits, Words words, Orders orders) {

  /** What a sheet uses unless it says otherwise. */
  public static final Writing USUAL = new Writing(DigitStyle.SI, Words.ENGLISH, Orders.RATIO);

  /** The everyday digits and words of a locale; empty for a language without number words. */
  public static Optional<Writing> of(Locale locale) {
    return Words.of(locale).map(words -> new Writing(DigitStyle.of(locale), words, Orders.RATIO));
  }

  /** The sentences around numbers. */
  public Phrases phrases() {
    return Phrases.of(words.language());
  }
}
