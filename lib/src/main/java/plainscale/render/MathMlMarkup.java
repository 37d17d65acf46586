package plainscale.render;

import java.util.List;

/** MathML Core (W3C). */
final class MathMlMarkup implements MathMarkup {
  private static final String INVISIBLE_TIMES = "\u2062";

  @Override
  public String number(String digits) {
    return "<mn>" + Html.escape(digits) + "</mn>";
  }

  @Override
  public String name(String name) {
    String[] parts = name.split("_", 2);
    String head = letters(parts[0]);
    if (parts.length == 1) {
      return head;
    }
    boolean digits = parts[1].matches("\\d+");
    String below = Html.escape(parts[1].replace('_', ' '));
    String subscript = digits ? "<mn>" + below + "</mn>" : label(below);
    return "<msub>" + head + subscript + "</msub>";
  }

  private static String upright(String letter) {
    return "<mi mathvariant=\"normal\">" + letter + "</mi>";
  }

  /** Several letters are upright by themselves. */
  private static String label(String below) {
    return below.codePointCount(0, below.length()) == 1 ? upright(below) : "<mi>" + below + "</mi>";
  }

  /** One letter is italic by itself; of ΔT only the T is. */
  private static String letters(String text) {
    boolean change = text.startsWith("Δ") && text.codePointCount(0, text.length()) == 2;
    return change
        ? group(upright("Δ") + "<mi>" + Html.escape(text.substring(1)) + "</mi>")
        : "<mi>" + Html.escape(text) + "</mi>";
  }

  @Override
  public String symbol(String symbol) {
    return upright(Html.escape(symbol));
  }

  @Override
  public String solidus() {
    return "<mo lspace=\"0\" rspace=\"0\">/</mo>";
  }

  @Override
  public String row(List<String> parts) {
    return "<mrow>" + String.join("", parts) + "</mrow>";
  }

  @Override
  public String sign(String sign) {
    return "<mo>" + sign + "</mo>";
  }

  @Override
  public String gap() {
    return "<mo lspace=\"0.17em\" rspace=\"0\">" + INVISIBLE_TIMES + "</mo>";
  }

  @Override
  public String fraction(String above, String below) {
    return "<mfrac>" + group(above) + group(below) + "</mfrac>";
  }

  @Override
  public String power(String base, String exponent) {
    return "<msup>" + group(base) + group(exponent) + "</msup>";
  }

  @Override
  public String root(String of, int degree) {
    return degree == 2
        ? "<msqrt>" + of + "</msqrt>"
        : "<mroot>" + group(of) + number(Integer.toString(degree)) + "</mroot>";
  }

  @Override
  public String brackets(String inner) {
    return "<mrow><mo>(</mo>" + inner + "<mo>)</mo></mrow>";
  }

  @Override
  public String function(String name) {
    return "<mi>" + name + "</mi><mo>&#x2061;</mo>";
  }

  private static String group(String inner) {
    return "<mrow>" + inner + "</mrow>";
  }
}
