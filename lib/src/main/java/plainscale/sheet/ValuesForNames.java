package plainscale.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Set;
import plainscale.notation.Expr;
import plainscale.notation.Rewriting;
import plainscale.quantity.Shown;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/** An expression with the rounded values in place of the names, as it is put into a calculator. */
final class ValuesForNames extends Rewriting {
  /** Nobody types more figures of a constant; the value itself is computed with all of them. */
  private static final MathContext OF_CONSTANTS = new MathContext(4, RoundingMode.HALF_EVEN);

  /** 20.0 °C is 293.15 K. */
  private static final int KELVIN_PLACES = 2;

  private static final UnitOfMeasure KELVIN = UnitParser.parse("K");

  private final Showing showing;
  private final Set<String> asKelvins;

  ValuesForNames(Showing showing, Set<String> asKelvins) {
    this.showing = showing;
    this.asKelvins = Set.copyOf(asKelvins);
  }

  @Override
  public Expr name(Expr.Name name) {
    if (asKelvins.contains(name.text())) {
      BigDecimal kelvins = showing.value(name).value();
      int places = Math.min(KELVIN_PLACES, Math.max(0, kelvins.scale()));
      BigDecimal value = kelvins.setScale(places, RoundingMode.HALF_EVEN);
      return new Expr.Literal(name.span(), value, KELVIN, false);
    }
    Shown shown = showing.value(name).shown();
    UnitOfMeasure unit = shown.unit().equals(UnitOfMeasure.ONE) ? null : shown.unit();
    boolean own = showing.names().entries().containsKey(name.text());
    BigDecimal value = own ? shown.value() : shown.value().round(OF_CONSTANTS);
    return new Expr.Literal(name.span(), value, unit, false);
  }
}
