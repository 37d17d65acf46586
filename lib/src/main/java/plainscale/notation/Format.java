package plainscale.notation;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plainscale.units.UnitOfMeasure;

/**
 * How a value is asked to be shown: {@code in mN}, {@code in words}, {@code in digits}, {@code to 2
 * figures}.
 */
public record Format(@Nullable UnitOfMeasure in, Style style, int figures) {
  /** Nothing asked. */
  public static final Format USUAL = new Format(null, Style.NUMBER, 0);

  /** The form of the number. */
  public enum Style {
    NUMBER,
    DIGITS,
    WORDS
  }

  /** The unit asked for. */
  public Optional<UnitOfMeasure> unit() {
    return Optional.ofNullable(in);
  }
}
