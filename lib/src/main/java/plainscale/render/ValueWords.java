package plainscale.render;

import java.math.BigDecimal;
import plainscale.magnitude.Words;
import plainscale.quantity.Shown;
import plainscale.units.UnitOfMeasure;

/**
 * A rounded value in words with its unit: "8.7 trillion", "67 billionths of a coulomb", "3.9
 * million metres per second".
 */
final class ValueWords {
  private ValueWords() {}

  static String of(Shown shown) {
    String number = Words.ENGLISH.mixed(shown.value()).text();
    if (shown.unit().equals(UnitOfMeasure.ONE)) {
      return number;
    }
    boolean fraction =
        shown.value().abs().compareTo(BigDecimal.ONE) < 0 && shown.value().signum() != 0;
    boolean one = shown.value().compareTo(BigDecimal.ONE) == 0;
    String unit = shown.unit().words(one || fraction);
    return fraction && !Character.isDigit(number.charAt(number.length() - 1))
        ? number + " of " + article(unit) + unit
        : number + " " + unit;
  }

  private static String article(String noun) {
    boolean vowel = "aeiou".indexOf(noun.charAt(0)) >= 0 || noun.startsWith("hour");
    return vowel ? "an " : "a ";
  }
}
