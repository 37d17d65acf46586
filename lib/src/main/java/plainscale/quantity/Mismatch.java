package plainscale.quantity;

import static plainscale.quantity.QuantityException.Fault.UNIT;

import plainscale.units.Kind;
import plainscale.units.Kinds;
import plainscale.units.UnitOfMeasure;

/** The sentences for kinds that do not go together. */
final class Mismatch {
  private Mismatch() {}

  /** Refuses "adding metres to seconds", and an angle to a plain number. */
  static void refuse(String doing, String preposition, Quantity x, Quantity y) {
    if (x.kind().equals(y.kind())) {
      return;
    }
    String sentence =
        "You are %s %s %s %s: %s and %s do not go together."
            .formatted(doing, name(x), preposition, name(y), article(x.kind()), article(y.kind()));
    throw new QuantityException(UNIT, sentence, repairs(x.kind(), y.kind()));
  }

  /** The complaint about a unit that measures something else. */
  static QuantityException conversion(Quantity x, UnitOfMeasure unit) {
    String sentence =
        "This is %s; %s measures %s."
            .formatted(article(x.kind()), unit.text(), article(unit.kind()));
    String usual = x.displayUnit().text();
    return usual.isEmpty()
        ? new QuantityException(UNIT, sentence, "leave the unit out")
        : new QuantityException(UNIT, sentence, "in " + usual);
  }

  private static String name(Quantity x) {
    String words = x.displayUnit().words(false);
    return words.isEmpty() ? "a plain number" : words;
  }

  private static String article(Kind kind) {
    return Kinds.of(kind).withArticle();
  }

  private static String[] repairs(Kind x, Kind y) {
    boolean angleAndNumber = (x.angle() && y.isNumber()) || (y.angle() && x.isNumber());
    if (angleAndNumber) {
      return new String[] {
        "give the number its unit: [rad] or [°]",
        "make a plain number of the angle: angle/(1 [rad])"
      };
    }
    return new String[0];
  }
}
