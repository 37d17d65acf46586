package plainscale.render;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import plainscale.notation.Greek;

/** TeX as MathJax 2 and 3 both know it, without packages. */
final class TexMarkup implements MathMarkup {
  private static final Map<String, String> SIGNS =
      Map.of("−", "-", "·", "\\cdot", "±", "\\pm", "×", "\\times");

  /** TeX's own names where they differ from the letter's. */
  private static final Map<String, String> LETTERS =
      Map.of("ε", "\\varepsilon", "φ", "\\varphi", "ο", "o", "ħ", "\\hbar", "ϑ", "\\vartheta");

  @Override
  public String number(String digits) {
    return digits.replace(",", "{,}").replaceAll("\\p{Zs}", "\\\\,").replace("−", "-");
  }

  @Override
  public String name(String name) {
    String[] parts = name.split("_", 2);
    String head = letters(parts[0]);
    return parts.length == 1 ? head : head + "_{" + subscript(parts[1]) + "}";
  }

  private static String letters(String text) {
    String tex = text.codePoints().mapToObj(TexMarkup::letter).collect(Collectors.joining());
    return text.codePointCount(0, text.length()) > 1 && isLatin(text)
        ? "\\mathit{" + tex + "}"
        : tex;
  }

  private static boolean isLatin(String text) {
    return text.chars().allMatch(c -> c < 128);
  }

  private static String letter(int c) {
    String letter = Character.toString(c);
    String word = Greek.words().get(letter);
    String known = LETTERS.get(letter);
    if (known != null) {
      return known + " ";
    }
    return word == null ? letter : "\\" + word + " ";
  }

  /** A subscript is a label, so it is upright (ISO 80000-1, 7.1.2). */
  private static String subscript(String text) {
    String safe =
        text.codePoints()
            .mapToObj(TexMarkup::letter)
            .collect(Collectors.joining())
            .replace("_", "\\_");
    return text.matches("\\d+") ? safe : "\\mathrm{" + safe + "}";
  }

  @Override
  public String symbol(String symbol) {
    String tex =
        escape(symbol)
            .replace("°", "{}^{\\circ}")
            .replace("µ", "\\mu ")
            .replace("Ω", "\\Omega ")
            .replace("Å", "\\mathring{A}");
    return "\\mathrm{" + tex + "}";
  }

  /** A UCUM code may hold any sign in an annotation in braces. */
  private static String escape(String text) {
    return text.replace("\\", "\\backslash ")
        .replace("^", "\\wedge ")
        .replace("~", "\\sim ")
        .replaceAll("[{}$&#_%]", "\\\\$0");
  }

  @Override
  public String solidus() {
    return "/";
  }

  @Override
  public String row(List<String> parts) {
    return String.join(" ", parts);
  }

  @Override
  public String sign(String sign) {
    return SIGNS.getOrDefault(sign, sign);
  }

  @Override
  public String gap() {
    return "\\,";
  }

  @Override
  public String fraction(String above, String below) {
    return "\\frac{" + above + "}{" + below + "}";
  }

  @Override
  public String power(String base, String exponent) {
    return "{" + base + "}^{" + exponent + "}";
  }

  @Override
  public String root(String of, int degree) {
    return (degree == 2 ? "\\sqrt{" : "\\sqrt[" + degree + "]{") + of + "}";
  }

  @Override
  public String brackets(String inner) {
    return "\\left(" + inner + "\\right)";
  }

  @Override
  public String function(String name) {
    return "\\operatorname{" + name + "}";
  }
}
