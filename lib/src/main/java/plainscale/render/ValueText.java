package plainscale.render;

import plainscale.magnitude.Digits;
import plainscale.magnitude.Role;
import plainscale.magnitude.Run;
import plainscale.magnitude.Writing;
import plainscale.quantity.Shown;
import plainscale.sheet.Result;
import plainscale.units.Superscripts;
import plainscale.units.UnitOfMeasure;

/**
 * A rounded value as plain text: {@code 2.70 ± 0.05 g}, {@code (6.71 ± 0.13) × 10⁻⁸ C}, or in
 * another form that was asked for.
 */
public final class ValueText {
  private ValueText() {}

  /** The value in its form, with its unit. */
  public static String of(Result.Numeral number) {
    return switch (number.style()) {
      case NUMBER -> number(number.shown(), number.writing());
      case DIGITS -> withUnit(marked(digits(number)), number.shown());
      default -> ValueWords.of(number).text();
    };
  }

  static Digits digits(Result.Numeral number) {
    return Digits.of(number.shown().value(), number.writing().digits());
  }

  /** Digits on one line, in square brackets those that are significant if not all are. */
  static String marked(Digits digits) {
    if (digits.zeros() == 0) {
      return digits.text();
    }
    StringBuilder text = new StringBuilder();
    boolean open = false;
    int last = lastSignificant(digits);
    for (int i = 0; i < digits.runs().size(); i++) {
      Run run = digits.runs().get(i);
      boolean opens = !open && run.role() == Role.SIGNIFICANT;
      open |= opens;
      text.append(opens ? "[" : "").append(run.text()).append(i == last ? "]" : "");
    }
    return text.toString();
  }

  private static int lastSignificant(Digits digits) {
    for (int i = digits.runs().size() - 1; i >= 0; i--) {
      if (digits.runs().get(i).role() == Role.SIGNIFICANT) {
        return i;
      }
    }
    return -1;
  }

  /** The value with uncertainty and power of ten. */
  public static String number(Shown shown, Writing writing) {
    NumberForm form = NumberForm.of(shown, writing.digits());
    String number = form.value() + form.uncertainty().map(u -> " ± " + u).orElse("");
    boolean unit = !shown.unit().equals(UnitOfMeasure.ONE);
    boolean bracket = form.uncertainty().isPresent() && (form.power().isPresent() || unit);
    String whole = bracket ? "(" + number + ")" : number;
    if (form.power().isPresent()) {
      whole += tenToThe(form.power().getAsInt());
    }
    return withUnit(whole, shown);
  }

  /** From one value to another with one power of ten and one unit: {@code (0.00 to 1.84) nC}. */
  static String range(Shown low, Shown high, Writing writing) {
    boolean down = low.value().abs().compareTo(high.value().abs()) > 0;
    Shown both =
        down
            ? new Shown(low.value(), high.value(), low.unit())
            : new Shown(high.value(), low.value(), low.unit());
    NumberForm form = NumberForm.of(both, writing.digits());
    String other = form.uncertainty().orElseThrow();
    String range = down ? form.value() + " to " + other : other + " to " + form.value();
    String power = form.power().isPresent() ? tenToThe(form.power().getAsInt()) : "";
    return withUnit("(" + range + ")" + power, low);
  }

  private static String tenToThe(int power) {
    return " × 10" + Superscripts.always(power);
  }

  private static String withUnit(String number, Shown shown) {
    String unit = shown.unit().text();
    if (unit.isEmpty()) {
      return number;
    }
    return unit.equals("°") ? number + unit : number + " " + unit;
  }
}
