package plainscale.magnitude;

import java.math.BigDecimal;

/**
 * What is meant by orders of magnitude; the trade uses all three (common practice, no source). For
 * 8.7E+12 beside 2.0E+3 they give 9, 10 and 10.
 */
public enum Orders {
  /** The order of a number is floor(log₁₀|x|); two numbers are as far apart as their orders. */
  FLOOR,
  /** The order of a number is the power of ten nearest to it on a logarithmic scale. */
  NEAREST,
  /** As {@link #NEAREST} for one number; two are apart by their ratio in powers of ten, rounded. */
  RATIO;

  /** The order of magnitude of one number that is not zero: 12 or 13 for 8.7E+12. */
  public long of(BigDecimal value) {
    PowerOfTen form = PowerOfTen.of(value);
    return this == FLOOR ? form.exponent() : Math.round(form.log10());
  }

  /** How many orders of magnitude lie between two numbers that are not zero. */
  public long between(BigDecimal larger, BigDecimal smaller) {
    if (this == RATIO) {
      return Math.round(PowerOfTen.of(larger).log10() - PowerOfTen.of(smaller).log10());
    }
    return of(larger) - of(smaller);
  }

  /** The definition in a few words, to be shown beside the number. */
  public String definition(Language language) {
    return Phrases.of(language).say("orders." + this);
  }
}
