package plainscale.notation;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plainscale.units.UnitOfMeasure;

/**
 * How a value is asked to be shown: {@code in mN}, {@code in words}, {@code in words de}, {@code in
 * digits}, {@code to 2 figures}. {@code wording} are the words after {@code in words} that choose a
 * language or a scale.
 */
public record Format(
    @Nullable UnitOfMeasure in, Style style, int figures, List<Statement.Option> wording) {
  /** Nothing asked. */
  public static final Format USUAL = new Format(null, Style.NUMBER, 0, List.of());

  /** Keeps its own copy of the wording. */
  public Format {
    wording = List.copyOf(wording);
  }

  /** The form of the number. */
  public enum Style {
    /** A decimal or a power of ten. */
    NUMBER,
    /** Full digits. */
    DIGITS,
    /** Digits and a named power: 8.7 trillion. */
    WORDS,
    /** All in words: eight trillion seven hundred billion. */
    FULL_WORDS,
    /** A share: 12 %, 34 parts per million, one part in 71 billion. */
    PARTS,
    /** The order of magnitude. */
    ORDERS,
    /** About, nearly, just over a round number. */
    ROUGHLY;

    /** Whether words belong to the form already. */
    public boolean isWorded() {
      return this == PARTS || this == ORDERS || this == ROUGHLY;
    }
  }

  /** The unit asked for. */
  public Optional<UnitOfMeasure> unit() {
    return Optional.ofNullable(in);
  }

  /** The same with another number of figures; 0 for those that the value keeps. */
  public Format to(int other) {
    return new Format(in, style, other, wording);
  }

  /** The same with another unit. */
  public Format with(UnitOfMeasure unit) {
    return new Format(unit, style, figures, wording);
  }
}
