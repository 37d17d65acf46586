package plainscale.magnitude;

import java.math.BigDecimal;

/**
 * A share said as it reads best: per cent from a thousandth up, parts per million from a millionth
 * up ("ppm" and "ppb" are avoided, since a billion is not the same everywhere: NIST SP 811,
 * 7.10.3), one part in so many below, so many to one above 1.
 */
public record Parts(Kind kind, BigDecimal number) {

  /** The forms of a share. */
  public enum Kind {
    PERCENT,
    PER_MILLION,
    ONE_IN,
    TO_ONE
  }

  private static final BigDecimal THOUSANDTH = new BigDecimal("0.001");
  private static final BigDecimal MILLIONTH = new BigDecimal("0.000001");

  /** The form for a share above zero, to as many figures as the share has. */
  public static Parts of(BigDecimal share) {
    if (share.signum() <= 0) {
      throw new IllegalArgumentException("Only a number above zero can be said as a share.");
    }
    if (share.compareTo(BigDecimal.ONE) > 0) {
      return new Parts(Kind.TO_ONE, share);
    }
    if (share.compareTo(THOUSANDTH) >= 0) {
      return new Parts(Kind.PERCENT, share.scaleByPowerOfTen(2));
    }
    return share.compareTo(MILLIONTH) >= 0
        ? new Parts(Kind.PER_MILLION, share.scaleByPowerOfTen(6))
        : oneIn(share);
  }

  /** One part in so many, whatever the size: the reciprocal of a share up to 1. */
  public static Parts oneIn(BigDecimal share) {
    if (share.signum() <= 0 || share.compareTo(BigDecimal.ONE) > 0) {
      throw new IllegalArgumentException(
          "One part in so many can be said of numbers above 0 and up to 1.");
    }
    return new Parts(Kind.ONE_IN, Figures.quotient(BigDecimal.ONE, share, share.precision()));
  }

  /** "12 %", "34 parts per million", "one part in 71 billion", "1.9 trillion to one". */
  public String text(Words words) {
    boolean plain = kind == Kind.PERCENT || kind == Kind.PER_MILLION;
    String said = plain ? words.digits(number).text() : words.mixed(number).text();
    return Phrases.of(words.language())
        .say("parts." + kind, said, Agreement.of(said, number, words));
  }
}
