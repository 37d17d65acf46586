package plainscale.notation;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plainscale.units.Superscripts;

/**
 * Numbers: {@code 2.70}, {@code 8 700} with thin or no-break spaces between groups, {@code 3.0e-9},
 * {@code 3.0×10⁻⁹}, {@code 3.0·10^-9}, {@code 2.70(5)}, {@code 6.67430(15)e-11}.
 */
final class NumberScanner {
  private static final String SPACE = "[\\u00A0\\u2009\\u202F]";
  private static final String GROUP = "(?:" + SPACE + "\\d{3})*";
  private static final String SHORT_GROUP = "(?:" + SPACE + "\\d{1,2}(?!\\d))?";
  private static final Pattern NUMBER =
      Pattern.compile(
          "(?<whole>\\d+"
              + GROUP
              + ")(?<part>\\.\\d+"
              + GROUP
              + SHORT_GROUP
              + "|\\.(?![\\d.]))?"
              + "(?:\\((?<concise>\\d{1,6})\\))?"
              + "(?<exponent>[eE][+-]?\\d+|\\h?[×·⋅]\\h?10(?:\\^[-−+]?\\d+|[⁻]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+))?");
  private static final int LONGEST_EXPONENT = 6;

  private final String source;

  NumberScanner(String source) {
    this.source = source;
  }

  /** The number that starts at {@code from}; a digit stands there. */
  Token at(int from, int to, boolean space) {
    Matcher matcher = NUMBER.matcher(source).region(from, to);
    if (!matcher.lookingAt()) {
      throw new IllegalStateException("no digit at " + from);
    }
    Span span = new Span(from, matcher.end());
    refuseGlued(span, to);
    return new Token(Token.Type.NUMBER, matcher.group(), span, space, literal(matcher, span));
  }

  private Token.Literal literal(Matcher matcher, Span span) {
    String part = matcher.group("part");
    String exponent = matcher.group("exponent");
    String mantissa = digits(matcher.group("whole")) + (part == null ? "" : digits(part));
    int power = exponent == null ? 0 : power(exponent, span);
    BigDecimal value = decimal(mantissa, span).scaleByPowerOfTen(power);
    String concise = matcher.group("concise");
    BigDecimal last =
        concise == null ? null : new BigDecimal(new java.math.BigInteger(concise), value.scale());
    return new Token.Literal(value, last, part == null && exponent == null);
  }

  private BigDecimal decimal(String mantissa, Span span) {
    if (mantissa.length() > 120) {
      throw fault(
          Problem.Kind.LIMIT, "This number has more digits than a sheet can use.", span, List.of());
    }
    return new BigDecimal(mantissa);
  }

  private static String digits(String text) {
    return text.replaceAll(SPACE, "");
  }

  private int power(String exponent, Span span) {
    StringBuilder plain = new StringBuilder();
    int from = exponent.matches("[eE].*") ? 1 : exponent.indexOf("10") + 2;
    for (char c : exponent.substring(from).replace("^", "").toCharArray()) {
      int raised = Superscripts.digit(c);
      plain.append(raised >= 0 ? (char) ('0' + raised) : c == '⁻' || c == '−' ? '-' : c);
    }
    if (plain.length() > LONGEST_EXPONENT || Math.abs(Integer.parseInt(plain.toString())) > 300) {
      throw fault(
          Problem.Kind.LIMIT,
          "A sheet computes with numbers from 10⁻³⁰⁰ to 10³⁰⁰.",
          span,
          List.of());
    }
    return Integer.parseInt(plain.toString());
  }

  /** A decimal comma, a second decimal point: said at once, with the repair. */
  private void refuseGlued(Span span, int to) {
    int next = span.end();
    if (next + 1 < to && source.charAt(next) == ',' && isDigit(next + 1)) {
      throw comma(span, digitsFrom(next + 1, to));
    }
    if (next + 1 < to && source.charAt(next) == '.' && isDigit(next + 1)) {
      throw fault(
          Problem.Kind.SYNTAX,
          "This number has two decimal points.",
          new Span(span.start(), next + 1),
          List.of());
    }
  }

  private ProblemException comma(Span before, String after) {
    String whole = source.substring(before.start(), before.end());
    Span span = new Span(before.start(), before.end() + 1 + after.length());
    if (whole.contains(".")) {
      String sentence = "After the comma between two readings comes a space.";
      return fault(Problem.Kind.SYNTAX, sentence, span, List.of("5.007, 4.994, 5.005 V"));
    }
    boolean grouped = after.length() == 3 && whole.length() <= 3;
    return grouped
        ? fault(
            Problem.Kind.SYNTAX,
            "A comma in a number is doubtful.",
            span,
            List.of(whole + after, whole + "." + after))
        : fault(
            Problem.Kind.SYNTAX,
            "A number is written with a decimal point here, not a comma.",
            span,
            List.of(whole + "." + after));
  }

  private String digitsFrom(int from, int to) {
    int end = from;
    while (end < to && isDigit(end)) {
      end++;
    }
    return source.substring(from, end);
  }

  private boolean isDigit(int at) {
    return source.charAt(at) >= '0' && source.charAt(at) <= '9';
  }

  private ProblemException fault(
      Problem.Kind kind, String sentence, Span span, List<String> repairs) {
    return new ProblemException(new Problem(kind, sentence, source, span, repairs));
  }
}
