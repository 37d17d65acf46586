package plainscale.magnitude;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A round number near another: "nearly 9 trillion" for 8.68E+12. The rule (common practice, no
 * source): one figure where that is off by at most a tenth, else two; "about" when it is off by at
 * most a hundredth, "nearly" when the number is less than the round one, "just over" when it is
 * more (a negative number is "about" in all three cases); and where the figures that were asked for
 * are off by more than a tenth, the two round numbers around it.
 */
public record Approximation(Kind kind, BigDecimal round, BigDecimal upper) {

  /** What is said before the round number. */
  public enum Kind {
    ABOUT,
    NEARLY,
    JUST_OVER,
    BETWEEN
  }

  private static final BigDecimal HUNDREDTH = new BigDecimal("0.01");
  private static final BigDecimal TENTH = new BigDecimal("0.1");

  /** To one figure if that is close enough, else to two. */
  public static Approximation of(BigDecimal value) {
    Approximation one = of(value, 1);
    return one.kind == Kind.BETWEEN ? of(value, 2) : one;
  }

  /** To a stated number of figures. */
  public static Approximation of(BigDecimal value, int figures) {
    BigDecimal round = value.round(new MathContext(figures, RoundingMode.HALF_EVEN));
    if (round.signum() == 0) {
      return new Approximation(Kind.ABOUT, BigDecimal.ZERO, BigDecimal.ZERO);
    }
    BigDecimal off = value.abs().subtract(round.abs());
    if (isWithin(off, HUNDREDTH, round)) {
      return new Approximation(Kind.ABOUT, round, round);
    }
    boolean negative = value.signum() < 0; // "just over −5" is not clear
    if (isWithin(off, TENTH, round) && negative) {
      return new Approximation(Kind.ABOUT, round, round);
    }
    if (isWithin(off, TENTH, round)) {
      return new Approximation(off.signum() < 0 ? Kind.NEARLY : Kind.JUST_OVER, round, round);
    }
    BigDecimal lower = value.round(new MathContext(figures, RoundingMode.FLOOR));
    BigDecimal upper = value.round(new MathContext(figures, RoundingMode.CEILING));
    return new Approximation(Kind.BETWEEN, lower, upper);
  }

  private static boolean isWithin(BigDecimal off, BigDecimal share, BigDecimal round) {
    return off.abs().compareTo(share.multiply(round.abs())) <= 0;
  }

  /** "nearly 9 trillion", "between 1 and 2 billion". */
  public String text(Words words) {
    return Phrases.of(words.language())
        .say("roughly." + kind, words.mixed(round).text(), words.mixed(upper).text());
  }
}
