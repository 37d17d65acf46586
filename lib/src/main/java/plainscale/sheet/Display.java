package plainscale.sheet;

import org.jspecify.annotations.Nullable;
import plainscale.notation.Format;
import plainscale.notation.Span;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.units.UnitOfMeasure;

/** Values in sentences: in a unit, or with the prefix that reads best, to two figures at least. */
record Display(Showing showing, Span span) {
  private static final int FEWEST = 2;

  /** In its own unit, else in the other if there is one, else with a prefix. */
  Shown of(Quantity quantity, @Nullable UnitOfMeasure otherwise) {
    boolean own = quantity.unit().isPresent();
    Format format = own || otherwise == null ? Format.USUAL : Format.USUAL.with(otherwise);
    Shown shown = showing.shown(quantity, format, span);
    boolean coarse = shown.value().precision() < FEWEST && shown.uncertainty().isEmpty();
    boolean whole = Showing.isExact(quantity, shown);
    Shown fine = coarse && !whole ? showing.shown(quantity, format.to(FEWEST), span) : shown;
    return own || otherwise != null ? fine : PrefixedForm.of(fine).orElse(fine);
  }
}
