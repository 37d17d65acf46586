package plainscale.document.check;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import plainscale.quantity.Shown;
import plainscale.units.Kind;
import plainscale.units.Kinds;
import plainscale.units.UnitOfMeasure;

/**
 * A number that a sheet shows.
 *
 * @param name how a sentence asks for it in braces; empty if it cannot be asked for by a name
 * @param given whether it was put in, not computed
 * @param value in the coherent SI unit
 * @param kind what it measures
 * @param shown how it is shown, perhaps also with a prefix
 */
record Computed(String name, boolean given, BigDecimal value, Kind kind, List<Shown> shown) {
  /** Keeps its own copy of the list. */
  Computed {
    shown = List.copyOf(shown);
  }

  /** A number of which only the rounded form is known. */
  static Computed rounded(String name, Shown shown) {
    UnitOfMeasure unit = shown.unit();
    return new Computed(name, false, unit.toCoherent(shown.value()), unit.kind(), List.of(shown));
  }

  /** The units in which it is told: those in which it is shown, and the usual one of its kind. */
  Stream<UnitOfMeasure> units() {
    return Stream.concat(
        shown.stream().map(Shown::unit),
        Kinds.isNamed(kind) ? Stream.of(Kinds.of(kind).unit()) : Stream.empty());
  }

  /** Whether it is that number of the unit, if both are cut to so many figures. */
  boolean is(BigDecimal typed, int figures, UnitOfMeasure unit) {
    if (!unit.kind().equals(kind)) {
      return false;
    }
    BigDecimal own = unit.fromCoherent(value).abs();
    return TypedNumber.rounded(own, figures).compareTo(TypedNumber.rounded(typed, figures)) == 0;
  }
}
