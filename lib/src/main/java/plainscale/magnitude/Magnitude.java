package plainscale.magnitude;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A rounded number and all the ways to write it: {@code new Magnitude(new
 * BigDecimal("8.7E+12")).words().text()} is "8.7 trillion".
 */
public record Magnitude(BigDecimal value) {

  /** Full digits in SI style. */
  public Digits digits() {
    return Digits.of(value);
  }

  /** Full digits in another style. */
  public Digits digits(DigitStyle style) {
    return Digits.of(value, style);
  }

  /** Digits and a named power of the short scale. */
  public Spelling words() {
    return Words.ENGLISH.mixed(value);
  }

  /** All in words of the short scale. */
  public Spelling spelled() {
    return Words.ENGLISH.spelled(value);
  }

  /** Scientific form. */
  public PowerOfTen powerOfTen() {
    return PowerOfTen.of(value);
  }

  /** The SI prefix that suits the number. */
  public Prefix prefix() {
    return Prefixes.choose(value);
  }

  /** How it compares with another number. */
  public Ratio ratio(Magnitude other) {
    return Ratio.of(value, other.value);
  }

  /** A line of perspective, where the number is a large count. */
  public Optional<Perspective> perspective() {
    return Perspective.of(value);
  }
}
