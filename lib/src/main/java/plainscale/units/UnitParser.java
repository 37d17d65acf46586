package plainscale.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads a unit text by the usual symbols: products by space, {@code ·}, {@code *} or {@code .}, one
 * solidus (more only with brackets, as ISO 80000-1 asks), exponents as {@code ^-2}, {@code ⁻²} or
 * {@code -2}. A text that is not of this form, such as {@code m3.kg-1.s-2} or {@code [lb_av]}, is
 * tried as a UCUM code.
 *
 * <pre>{@code
 * text    := product [ "/" factor ]
 * product := factor { (" " | "·" | "*" | ".") factor }
 * factor  := ( symbol | "1" | "(" product ")" ) [ exponent ]
 * }</pre>
 */
public final class UnitParser {
  private static final int LONGEST = 120;
  private static final int HIGHEST_EXPONENT = 12;

  private final String text;
  private int at;

  private UnitParser(String text) {
    this.text = text;
  }

  /**
   * The unit that the text means.
   *
   * @throws UnitException with a sentence, the place in the text and repairs
   */
  public static UnitOfMeasure parse(String text) {
    if (text.length() > LONGEST) {
      throw new UnitException("This unit is too long to be one.", 0, text.length(), List.of());
    }
    try {
      UnitParser parser = new UnitParser(text);
      List<UnitOfMeasure.Factor> factors = parser.whole();
      return UnitOfMeasure.of(checked(factors, text));
    } catch (UnitException plainReadingFailed) {
      return ucum(text).orElseThrow(() -> plainReadingFailed);
    }
  }

  private static Optional<UnitOfMeasure> ucum(String text) {
    String code = text.strip();
    return Ucum.find(code)
        .map(unit -> new UnitSymbol(code, code, code, "UCUM", () -> unit))
        .map(symbol -> UnitOfMeasure.of(List.of(new UnitOfMeasure.Factor(symbol, 1))));
  }

  private static List<UnitOfMeasure.Factor> checked(
      List<UnitOfMeasure.Factor> factors, String text) {
    refuseMetresPerSecond(factors, text);
    boolean many = factors.size() > 1 || factors.stream().anyMatch(f -> f.exponent() != 1);
    for (UnitOfMeasure.Factor factor : factors) {
      boolean scale =
          many && UnitOfMeasure.of(List.of(new UnitOfMeasure.Factor(factor.symbol(), 1))).isScale();
      if (scale) {
        String sentence =
            factor.symbol().text() + " is a scale with its own zero; in a product the unit is K.";
        throw new UnitException(
            sentence, 0, text.length(), List.of(text.replace(factor.symbol().text(), "K")));
      }
    }
    return factors;
  }

  /** {@code ms^-1} is per millisecond, and nearly always meant as metres per second. */
  private static void refuseMetresPerSecond(List<UnitOfMeasure.Factor> factors, String text) {
    boolean doubtful =
        factors.size() == 1
            && factors.get(0).symbol().text().equals("ms")
            && factors.get(0).exponent() < 0;
    if (doubtful) {
      String exponent = text.strip().substring(2);
      throw new UnitException(
          "“" + text.strip() + "” is doubtful: per millisecond, or metres per second?",
          0,
          text.length(),
          List.of(
              "m s" + exponent,
              "1/ms" + (factors.get(0).exponent() == -1 ? "" : "^" + -factors.get(0).exponent())));
    }
  }

  private List<UnitOfMeasure.Factor> whole() {
    skipSpace();
    List<UnitOfMeasure.Factor> factors = new ArrayList<>(peek() == '/' ? List.of() : product());
    skipSpace();
    if (peek() == '/') {
      at++;
      factors.addAll(power(factor(), -1));
      skipSpace();
      refuseMoreAfterSolidus();
    }
    if (at < text.length()) {
      throw fault(
          "I cannot read “" + text.substring(at) + "” as part of a unit.", at, text.length());
    }
    return factors;
  }

  private void refuseMoreAfterSolidus() {
    if (at < text.length()) {
      String head = text.substring(0, text.indexOf('/')).strip();
      String tail = text.substring(text.indexOf('/') + 1).strip();
      String under = tail.replaceAll("[/\\s]+", " ");
      throw new UnitException(
          "After one / in a unit a second part is doubtful; brackets tell which part is below the line.",
          0,
          text.length(),
          List.of(head + "/(" + under + ")"));
    }
  }

  private List<UnitOfMeasure.Factor> product() {
    List<UnitOfMeasure.Factor> factors = new ArrayList<>(factor());
    while (true) {
      skipSpace();
      if (peek() == '·' || peek() == '*' || peek() == '.' || peek() == '⋅') {
        at++;
        factors.addAll(factor());
      } else if (at < text.length() && peek() != '/' && peek() != ')') {
        factors.addAll(factor());
      } else {
        return factors;
      }
    }
  }

  private List<UnitOfMeasure.Factor> factor() {
    skipSpace();
    if (peek() == '(') {
      at++;
      List<UnitOfMeasure.Factor> inner = product();
      expectClosing();
      return power(inner, exponent());
    }
    if (peek() == '1') {
      at++;
      return List.of();
    }
    UnitSymbol symbol = symbol();
    return List.of(new UnitOfMeasure.Factor(symbol, exponent()));
  }

  private void expectClosing() {
    skipSpace();
    if (peek() != ')') {
      throw fault("A bracket in this unit is not closed.", at, text.length());
    }
    at++;
  }

  /** Bounds what brackets multiply up: the library fails on exponents of thousands. */
  private List<UnitOfMeasure.Factor> power(List<UnitOfMeasure.Factor> factors, int exponent) {
    return factors.stream()
        .map(f -> new UnitOfMeasure.Factor(f.symbol(), bounded(f.exponent() * exponent, 0)))
        .toList();
  }

  private UnitSymbol symbol() {
    int start = at;
    while (at < text.length() && isSymbolPart(text.charAt(at))) {
      at++;
    }
    String name = text.substring(start, at);
    return UnitTable.standard().find(name).orElseThrow(() -> unknown(name, start));
  }

  private UnitException unknown(String name, int start) {
    if (name.isEmpty() && start < text.length()) {
      String rest = text.substring(start);
      String sentence = "I cannot read “" + rest + "” as part of a unit.";
      return new UnitException(sentence, start, text.length(), NearUnits.slip(rest));
    }
    if (name.isEmpty()) {
      return fault("A unit is missing here.", start, start);
    }
    List<String> near = NearUnits.of(name);
    return new UnitException("I do not know the unit “" + name + "”.", start, at, near);
  }

  /** Whether a character can stand in a unit symbol. */
  public static boolean isSymbolPart(int c) {
    return Character.isLetter(c)
        || c == '°'
        || c == '%'
        || c == '′'
        || c == '″'
        || c == '℃'
        || c == '℉';
  }

  private int exponent() {
    if (peek() == '^') {
      at++;
      return signed();
    }
    boolean signedDigit = peek() == '-' && at + 1 < text.length() && isDigit(text.charAt(at + 1));
    if (isDigit(peek()) || signedDigit) { // s2 and s-2, as UCUM writes them
      return signed();
    }
    int start = at;
    int sign = peek() == '⁻' ? -1 : 1;
    if (sign < 0) {
      at++;
    }
    int value = 0;
    int digits = 0;
    while (at < text.length() && Superscripts.digit(text.charAt(at)) >= 0) {
      value = Math.min(9999, value * 10 + Superscripts.digit(text.charAt(at++)));
      digits++;
    }
    return digits == 0 ? 1 : bounded(sign * value, start);
  }

  private int signed() {
    int start = at;
    int sign = peek() == '-' || peek() == '−' ? -1 : 1;
    if (sign < 0) {
      at++;
    }
    int value = 0;
    int first = at;
    while (at < text.length() && Character.digit(text.charAt(at), 10) >= 0) {
      value = Math.min(9999, value * 10 + Character.digit(text.charAt(at++), 10));
    }
    if (at == first) {
      throw fault(
          "A whole number is missing after ^ in this unit.",
          start,
          Math.min(text.length(), start + 1));
    }
    return bounded(sign * value, start);
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private int bounded(int exponent, int start) {
    if (exponent == 0 || Math.abs(exponent) > HIGHEST_EXPONENT) {
      throw fault("An exponent in a unit runs from −12 to 12 and is not 0.", start, at);
    }
    return exponent;
  }

  private UnitException fault(String sentence, int start, int end) {
    return new UnitException(sentence, start, end, List.of());
  }

  private char peek() {
    return at < text.length() ? text.charAt(at) : '\0';
  }

  private void skipSpace() {
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
  }
}
