package plainscale.document.edition;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashSet;
import java.util.Set;
import plainscale.notation.Measurement;
import plainscale.quantity.Shown;
import plainscale.sheet.Result;
import plainscale.units.Kind;
import plainscale.units.UnitOfMeasure;

/**
 * Numbers that a student's copy does not tell: values that are left to measure, and values that
 * come out. Where one of them is typed into another line, that line would tell it, rounded too. A
 * number of one figure (the 2 of 2*r) tells nothing.
 */
final class HiddenNumbers {
  private static final int TELLING = 2;

  /** With fewer figures a number is too often near another one. */
  private static final int TELLING_ROUNDED = 3;

  private record Amount(Kind kind, BigDecimal coherent) {}

  private final Set<Amount> amounts = new HashSet<>();

  /** What was written in a given. */
  void add(Measurement measurement) {
    add(measurement.value(), measurement.unit());
    measurement.readings().forEach(reading -> add(reading, measurement.unit()));
  }

  /** What comes out of formulas. */
  void add(Result result) {
    if (result instanceof Result.Valued valued && valued.label().formula().isPresent()) {
      add(valued.shown());
    } else if (result instanceof Result.Derived derived) {
      derived.value().ifPresent(value -> add(value.shown()));
    }
  }

  private void add(Shown shown) {
    add(shown.value(), shown.unit());
  }

  private void add(BigDecimal value, UnitOfMeasure unit) {
    amounts.add(new Amount(unit.kind(), unit.toCoherent(value)));
  }

  /** Whether that number tells one of them, in whatever unit. */
  boolean contain(BigDecimal value, UnitOfMeasure unit) {
    return value.precision() >= TELLING
        && value.signum() != 0
        && amounts.stream()
            .filter(amount -> amount.kind().equals(unit.kind()))
            .anyMatch(amount -> isTold(unit.fromCoherent(amount.coherent()), value));
  }

  private static boolean isTold(BigDecimal hidden, BigDecimal typed) {
    boolean rounded =
        typed.precision() >= TELLING_ROUNDED
            && hidden.round(new MathContext(typed.precision())).compareTo(typed) == 0;
    return rounded || hidden.compareTo(typed) == 0;
  }
}
