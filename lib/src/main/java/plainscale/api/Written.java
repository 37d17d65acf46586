package plainscale.api;

import java.math.BigDecimal;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;

/** Values and texts as they stand in a statement. */
final class Written {
  private Written() {}

  /** A text in quotation marks. */
  static String quoted(String text) {
    return "\"" + text.replace("\"", "\\\"").replaceAll("\\R", " ") + "\"";
  }

  /** A text in quotation marks after a space; nothing if it is empty. */
  static String after(String text) {
    return text.isEmpty() ? "" : " " + quoted(text);
  }

  /** What follows a word, with the word before it; nothing if it is empty. */
  static String clause(String word, String rest) {
    return rest.isEmpty() ? "" : " " + word + " " + rest;
  }

  static String number(BigDecimal value) {
    return value.toString().replace("E+", "e").replace("E", "e");
  }

  /** A quantity as a given is written: {@code 2.70 ± 0.05 g}. */
  static String given(Quantity quantity) {
    Shown shown = quantity.shown();
    String number = number(shown.value());
    String doubt = shown.uncertainty().map(u -> " ± " + number(u)).orElse("");
    return (number + doubt + " " + shown.unit().text()).strip();
  }

  /** A line that goes on in the next one begins with a space there. */
  static String oneStatement(String text) {
    return text.strip().replaceAll("\\R", "\n ");
  }
}
