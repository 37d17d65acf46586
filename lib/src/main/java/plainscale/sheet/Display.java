package plainscale.sheet;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import plainscale.notation.Format;
import plainscale.notation.Span;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.units.UnitOfMeasure;

/** Values in sentences: in the unit that was asked for, or as it reads best. */
record Display(Showing showing, Span span) {
  private static final int FEWEST = 2;

  /** From here to there SI prefixes are known to every student. */
  private static final BigDecimal SMALLEST = new BigDecimal("1e-12");

  private static final BigDecimal LARGEST = new BigDecimal("1e13");

  /** In its own unit, else in the other if there is one and it reads well, else with a prefix. */
  Shown of(Quantity quantity, @Nullable UnitOfMeasure otherwise) {
    return of(quantity, otherwise, Format.USUAL);
  }

  /** The same, to two figures at least. */
  Shown fine(Quantity quantity, @Nullable UnitOfMeasure otherwise) {
    Shown shown = of(quantity, otherwise);
    boolean coarse =
        shown.value().precision() < FEWEST
            && shown.uncertainty().isEmpty()
            && !Showing.isExact(quantity, shown);
    return coarse ? of(quantity, otherwise, Format.USUAL.to(FEWEST)) : shown;
  }

  private Shown of(Quantity quantity, @Nullable UnitOfMeasure otherwise, Format format) {
    if (quantity.unit().isPresent()) {
      return showing.shown(quantity, format, span);
    }
    Shown plain = showing.shown(quantity, format, span);
    if (otherwise == null) {
      return best(plain, quantity);
    }
    Shown asked = showing.shown(quantity, format.with(otherwise), span);
    return PrefixedForm.readsWell(asked.value()) ? asked : PrefixedForm.of(plain).orElse(asked);
  }

  private static Shown best(Shown plain, Quantity quantity) {
    BigDecimal size = quantity.value().abs();
    boolean known = size.compareTo(SMALLEST) >= 0 && size.compareTo(LARGEST) < 0;
    return known ? PrefixedForm.of(plain).orElse(plain) : plain;
  }
}
