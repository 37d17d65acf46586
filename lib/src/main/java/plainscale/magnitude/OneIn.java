package plainscale.magnitude;

import java.math.BigDecimal;

/**
 * A fraction said as one part in so many: 1.4E-11 is one part in 71 billion. {@code exact} is false
 * when the denominator was rounded.
 */
public record OneIn(BigDecimal denominator, boolean exact) {

  /** The reciprocal of a fraction, to as many figures as the fraction has. */
  public static OneIn of(BigDecimal fraction) {
    if (fraction.signum() <= 0 || fraction.compareTo(BigDecimal.ONE) > 0) {
      throw new IllegalArgumentException(
          "One part in so many can be said of numbers above 0 and up to 1.");
    }
    BigDecimal parts = Figures.quotient(BigDecimal.ONE, fraction, fraction.precision());
    return new OneIn(parts, parts.multiply(fraction).compareTo(BigDecimal.ONE) == 0);
  }

  /** As many parts as a ratio says; a ratio is taken to be rounded. */
  public static OneIn of(Ratio ratio) {
    return new OneIn(ratio.value(), false);
  }

  /** "one part in 70 billion". */
  public String phrase(Words words) {
    return "one part in " + words.mixed(denominator).text();
  }

  /**
   * "for every one electron that moved there are about 55 trillion electrons that stayed": the
   * caller gives the singular of the one and the plural of the many.
   */
  public String forEveryOne(String one, String many, Words words) {
    String about = exact ? "" : "about ";
    return "for every one %s there are %s%s %s"
        .formatted(one, about, words.mixed(denominator).text(), many);
  }
}
