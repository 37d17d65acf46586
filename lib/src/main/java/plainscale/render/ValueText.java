package plainscale.render;

import plainscale.magnitude.Digits;
import plainscale.notation.Format;
import plainscale.quantity.Shown;
import plainscale.units.Superscripts;
import plainscale.units.UnitOfMeasure;

/**
 * A rounded value as plain text: {@code 2.70 ± 0.05 g}, {@code (6.71 ± 0.13) × 10⁻⁸ C}, or in full
 * digits or words.
 */
public final class ValueText {
  private ValueText() {}

  /** The value in that style, with its unit. */
  public static String of(Shown shown, Format.Style style) {
    return switch (style) {
      case NUMBER -> number(shown);
      case DIGITS -> withUnit(Digits.of(shown.value()).text(), shown);
      case WORDS -> ValueWords.of(shown);
    };
  }

  /** The value with uncertainty and power of ten. */
  public static String number(Shown shown) {
    NumberForm form = NumberForm.of(shown);
    String number = form.value() + form.uncertainty().map(u -> " ± " + u).orElse("");
    boolean unit = !shown.unit().equals(UnitOfMeasure.ONE);
    boolean bracket = form.uncertainty().isPresent() && (form.power().isPresent() || unit);
    String whole = bracket ? "(" + number + ")" : number;
    if (form.power().isPresent()) {
      whole += " × 10" + Superscripts.always(form.power().getAsInt());
    }
    return withUnit(whole, shown);
  }

  private static String withUnit(String number, Shown shown) {
    String unit = shown.unit().text();
    if (unit.isEmpty()) {
      return number;
    }
    return unit.equals("°") ? number + unit : number + " " + unit;
  }
}
