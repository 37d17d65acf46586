package plainscale.lessons;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * The numbers in a text or a page, however they are written. A number is its significant digits:
 * 0.0265, 2.65 × 10⁻², 26.5 and 26 500 are all “265”, with thin spaces, commas or nothing between
 * groups. A number of one figure is left out, since such numbers count steps, raise units and
 * number lists. A power of ten is “10^k”.
 */
final class PageNumbers {
  private static final Pattern STYLE = Pattern.compile("(?s)<style.*?</style>");
  private static final Pattern DATA = Pattern.compile("data:[\\w/+.-]*;base64,([A-Za-z0-9+/=]+)");
  private static final Pattern GEOMETRY =
      Pattern.compile(
          " (?:x|y|x1|x2|y1|y2|cx|cy|r|rx|ry|d|dx|dy|points|width|height|viewBox|xmlns|font-size|"
              + "stroke-width|stroke-dasharray|fill|stroke|font-weight|lspace|rspace|colspan|style)"
              + "=\"[^\"]*\"");
  private static final Pattern ATTRIBUTE = Pattern.compile("[\\w:-]+=\"([^\"]*)\"");
  private static final Pattern MATH_POWER =
      Pattern.compile(
          "<msup>(?:<mrow>)?<mn>10</mn>(?:</mrow>)?(?:<mrow>)?<mn>([−-]?\\d+)</mn>(?:</mrow>)?</msup>");
  private static final Pattern SVG_POWER =
      Pattern.compile("10<tspan dy=\"[^\"]*\" font-size=\"[^\"]*\">([−-]?\\d+)</tspan>");
  private static final Pattern TEX_POWER = Pattern.compile("10\\^\\{([−-]?\\d+)\\}");
  private static final Pattern RAISED_POWER = Pattern.compile("10([⁰¹²³⁴⁵⁶⁷⁸⁹⁻]+)");
  private static final Pattern POWER = Pattern.compile("10\\^(-?\\d+)|(?<=\\d)[eE]([+-]?\\d+)");
  private static final Pattern INLINE = Pattern.compile("</?(?:b|span|wbr|tspan)\\b[^>]*>");
  private static final Pattern GROUPED = Pattern.compile("(?<=\\d)[\\u2009\\u202f,](?=\\d)");
  private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)*");
  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹⁻";
  private static final String LEVEL = "0123456789-";

  private PageNumbers() {}

  /** Of a plain text. */
  static Set<String> ofText(String text) {
    return numbers(powers(text));
  }

  /** Of what an HTML page says, to the eye or otherwise: texts, attributes, pictures in it. */
  static Set<String> ofPage(String html) {
    Set<String> found = new TreeSet<>();
    DATA.matcher(html)
        .results()
        .map(data -> Base64.getDecoder().decode(data.group(1)))
        .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
        .forEach(inner -> found.addAll(ofPage(inner)));
    String page = powers(STYLE.matcher(DATA.matcher(html).replaceAll("")).replaceAll(""));
    String said = GEOMETRY.matcher(page).replaceAll("");
    ATTRIBUTE
        .matcher(said)
        .results()
        .map(attribute -> attribute.group(1))
        .forEach(words -> found.addAll(numbers(decoded(words))));
    found.addAll(numbers(text(page)));
    return found;
  }

  /** The text of a page: marks within a line are nothing, other elements part words. */
  static String text(String html) {
    String bare = STYLE.matcher(html).replaceAll("");
    return decoded(INLINE.matcher(bare).replaceAll("").replaceAll("<[^>]*>", " "));
  }

  private static String decoded(String text) {
    return text.replaceAll("&#x?[0-9a-fA-F]+;", " ")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&amp;", "&");
  }

  /** All ways to write a power of ten as one. */
  private static String powers(String text) {
    String one = text;
    for (Pattern pattern : new Pattern[] {MATH_POWER, SVG_POWER, TEX_POWER}) {
      one =
          pattern.matcher(one).replaceAll(power -> " 10^" + power.group(1).replace('−', '-') + " ");
    }
    return RAISED_POWER.matcher(one).replaceAll(power -> " 10^" + level(power) + " ");
  }

  private static String level(MatchResult power) {
    StringBuilder level = new StringBuilder();
    power.group(1).chars().forEach(c -> level.append(LEVEL.charAt(RAISED.indexOf(c))));
    return level.toString();
  }

  private static Set<String> numbers(String text) {
    Set<String> numbers = new TreeSet<>();
    POWER
        .matcher(text)
        .results()
        .map(power -> power.group(1) == null ? power.group(2) : power.group(1))
        .forEach(exponent -> numbers.add("10^" + Integer.parseInt(exponent)));
    String rest = GROUPED.matcher(POWER.matcher(text).replaceAll(" ")).replaceAll("");
    NUMBER.matcher(rest).results().map(n -> significant(n.group())).forEach(numbers::add);
    numbers.removeIf(number -> number.length() < 2);
    return numbers;
  }

  private static String significant(String number) {
    return number.replace(".", "").replaceAll("^0+|0+$", "");
  }

  /** The number itself and what it is rounded to any two or more figures. */
  static Set<String> rounded(String number) {
    Set<String> all = new TreeSet<>(Set.of(number));
    if (!number.startsWith("10^")) {
      BigDecimal value = new BigDecimal(number);
      for (int figures = 2; figures < number.length(); figures++) {
        MathContext to = new MathContext(figures, RoundingMode.HALF_EVEN);
        all.add(significant(value.round(to).toPlainString()));
      }
    }
    all.removeIf(n -> n.length() < 2);
    return all;
  }
}
