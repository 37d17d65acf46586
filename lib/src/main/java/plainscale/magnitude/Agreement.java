package plainscale.magnitude;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import plainscale.magnitude.ScaleNames.Name;

/**
 * How the noun after a number agrees with it, for the patterns of {@link Phrases}: after "2
 * millones" Spanish says "de años", after "61,5 mil" only "años"; after "1,5" Portuguese says
 * "vez", after "37" "vezes".
 */
public enum Agreement {
  /** The number ends in a name that is a noun itself: million, or the French millier. */
  LARGE,
  /** The number takes the singular. */
  ONE,
  /** All other numbers. */
  OTHER;

  private static final int THOUSAND = 3;
  private static final int MILLION = 6;

  /** ICU4J tells the plural of 999 decimals at most; nobody reads so many. */
  private static final int MOST_DECIMALS = 99;

  /** For a number as it is written, in digits or in words. */
  public static Agreement of(String text, BigDecimal value, Words words) {
    if (endsInNoun(text, Grammar.of(words.language()).names(words.scale()), words.scale())) {
      return LARGE;
    }
    boolean one =
        value.scale() <= MOST_DECIMALS && IcuRules.of(words.language()).takesSingular(value.abs());
    return one ? ONE : OTHER;
  }

  private static boolean endsInNoun(String text, ScaleNames names, Scale scale) {
    boolean large =
        IntStream.rangeClosed(MILLION, scale.reach())
            .mapToObj(names::exactly)
            .flatMap(Optional::stream)
            .anyMatch(n -> endsIn(text, n.one()) || endsIn(text, n.other()));
    return large || names.exactly(THOUSAND).filter(n -> isNoun(n, text)).isPresent();
  }

  /** A thousand is a noun only where it has a word of its own for one: millier beside mille. */
  private static boolean isNoun(Name thousand, String text) {
    return endsIn(text, thousand.one()) && !thousand.one().equals(thousand.other());
  }

  private static boolean endsIn(String text, String name) {
    return !name.isEmpty() && text.endsWith(name);
  }

  /** The keyword in the patterns. */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
