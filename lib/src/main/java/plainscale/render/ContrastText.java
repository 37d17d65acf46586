package plainscale.render;

import java.util.Optional;
import plainscale.magnitude.Digits;
import plainscale.magnitude.Perspective;
import plainscale.magnitude.Ratio;
import plainscale.magnitude.Words;
import plainscale.notation.Printer;
import plainscale.sheet.Result;

/** The sentences of a contrast, the same in every medium. */
final class ContrastText {
  private ContrastText() {}

  /** What a side is called: its description, else its name, else its formula. */
  static String name(Result.Side side) {
    Result.Label label = side.label();
    if (!label.description().isEmpty()) {
      return label.description();
    }
    return label.name().or(() -> label.formula().map(Printer::print)).orElse("");
  }

  /** "The second is about 1.9 trillion times the first: 12 orders of magnitude." */
  static String comparison(Result.Contrasted contrast) {
    Ratio ratio = contrast.ratio();
    boolean firstIsLarger =
        contrast.first().shown().value().abs().compareTo(contrast.second().shown().value().abs())
            >= 0;
    String larger = firstIsLarger ? "first" : "second";
    String smaller = firstIsLarger ? "second" : "first";
    String times = ratio.words(Words.ENGLISH).text();
    return "The %s is %s times the %s: %s.".formatted(larger, times, smaller, ratio.ordersText());
  }

  /** The ratio in full digits, and with its uncertainty as a power of ten. */
  static String digits(Result.Contrasted contrast) {
    String digits = Digits.of(contrast.ratio().value()).text();
    String written = ValueText.number(contrast.times());
    return written.equals(digits) ? digits : digits + " = " + written;
  }

  /** One line that makes the ratio graspable, as a sentence. */
  static Optional<String> perspective(Ratio ratio) {
    return Perspective.of(ratio.value()).map(p -> "To picture the ratio: " + p.text() + ".");
  }

  /** The uncertain form of a side, where it has one: "(4.19 ± 0.23) × 10¹¹". */
  static Optional<String> uncertain(Result.Side side) {
    return side.shown().uncertainty().map(u -> ValueText.number(side.shown()));
  }

  /** "3 significant figures, 9 zeros that keep the place". */
  static String figures(Digits digits) {
    int figures = digits.significantFigures();
    int zeros = digits.placeholderZeros() + digits.leadingZeros();
    String text = figures + (figures == 1 ? " significant figure" : " significant figures");
    if (zeros == 0) {
      return text;
    }
    return text
        + ", "
        + zeros
        + (zeros == 1 ? " zero that keeps" : " zeros that keep")
        + " the place";
  }
}
