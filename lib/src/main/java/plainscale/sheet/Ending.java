package plainscale.sheet;

import java.util.Optional;
import org.apache.commons.math3.fraction.Fraction;
import org.jspecify.annotations.Nullable;
import plainscale.quantity.Shown;

/**
 * What becomes of a quantity near a limit. {@code exponent}: it goes as that power of the distance;
 * {@code times}: ten times nearer makes it that many times as much (not a number if it does not);
 * {@code number}: the limit, or what each row adds; {@code good}: the last place of the name whose
 * value counts, if the nearer ones do not.
 */
public record Ending(
    Result.Label label,
    Trend.Kind kind,
    double exponent,
    double times,
    boolean negative,
    @Nullable Shown number,
    Stop stop,
    @Nullable Shown good) {

  /** Why nearer rows do not count. */
  public enum Stop {
    /** They all do. */
    NONE,
    /** Their digits are lost to rounding, or they jump about. */
    SCATTER,
    /** There is no value. */
    NO_VALUE
  }

  /** How far an exponent may be from a fraction that it is taken for. */
  private static final double EXPONENT = 0.005;

  /** The limit, or what each row adds. */
  public Optional<Shown> shown() {
    return Optional.ofNullable(number);
  }

  /** The last place of the name whose value counts. */
  public Optional<Shown> lastGood() {
    return Optional.ofNullable(good);
  }

  /** The exponent, if it is a simple fraction. */
  public Optional<Fraction> fraction() {
    return fraction(exponent);
  }

  static Optional<Fraction> fraction(double exponent) {
    return Optional.of(exponent)
        .filter(Double::isFinite)
        .map(Variations::nearest)
        .filter(f -> Math.abs(f.doubleValue() - exponent) < EXPONENT);
  }
}
