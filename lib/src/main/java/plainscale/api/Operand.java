package plainscale.api;

import java.math.BigDecimal;
import plainscale.quantity.Quantity;
import plainscale.units.UnitOfMeasure;

/** What stands at a place of a statement. */
sealed interface Operand {

  /** The formula, or the name under which a quantity enters the phrase. */
  String in(Phrase phrase);

  /** The formula, or the number with its unit, where no name may stand. */
  String written();

  static Operand of(String formula) {
    return new Formula(formula);
  }

  static Operand of(Quantity quantity) {
    return new Amount(quantity);
  }

  /** A formula of the notation. */
  record Formula(String text) implements Operand {
    @Override
    public String in(Phrase phrase) {
      return text;
    }

    @Override
    public String written() {
      return text;
    }
  }

  /** A quantity of the program. */
  record Amount(Quantity quantity) implements Operand {
    @Override
    public String in(Phrase phrase) {
      return phrase.name(quantity);
    }

    @Override
    public String written() {
      UnitOfMeasure unit = quantity.displayUnit();
      BigDecimal shown = quantity.shown().value();
      BigDecimal whole = unit.fromCoherent(quantity.value());
      String number = Written.number(shown.compareTo(whole) == 0 ? shown : whole);
      return unit.equals(UnitOfMeasure.ONE) ? number : number + " [" + unit.text() + "]";
    }
  }
}
