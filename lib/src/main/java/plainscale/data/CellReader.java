package plainscale.data;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plainscale.quantity.Decimals;

/**
 * Reads a cell of a column of numbers: {@code 14.0}, {@code 14,0}, {@code 1.40e1}, {@code
 * 1.4×10^1}, {@code 14.0 ± 0.5} (also {@code +-} and {@code +/-}), {@code 14.0(5)}. A cell that
 * would be a formula in a spreadsheet is never computed.
 */
final class CellReader {
  private static final Set<String> MISSING =
      Set.of("", "-", "–", "—", "−", "?", "n/a", "na", "nan", "null", "none", ".", "…", "...");
  private static final Pattern FORMULA =
      Pattern.compile("[=@].*|[+\\-−](?=.*[=|!@*/(+]).*|[+\\-−]\\s*\\p{Alpha}.*", Pattern.DOTALL);
  private static final String SPACE = "[\\u00A0\\u2009\\u202F ]";
  private static final String EXPONENT =
      "(?:[eE](?<%1$se>[+\\-−]?\\d{1,6})|\\s?[×·x*]\\s?10\\^?(?<%1$sp>[+\\-−]?\\d{1,6}))?";
  private static final String NUMBER =
      "(?<%1$ssign>[+\\-−]?)\\s?(?<%1$swhole>\\d*(?:"
          + SPACE
          + "\\d{3})*)(?:(?<%1$smark>[.,])(?<%1$spart>\\d*))?";
  private static final Pattern PLAIN =
      Pattern.compile((NUMBER + "(?:\\s?\\((?<concise>\\d{1,6})\\))?" + EXPONENT).formatted("v"));
  private static final Pattern WITH_UNCERTAINTY =
      Pattern.compile(
          "\\(?"
              + (NUMBER + EXPONENT).formatted("v")
              + "\\s?(?:±|\\+/?[\\-−])\\s?"
              + (NUMBER + EXPONENT).formatted("u")
              + "\\)?");
  private static final Pattern BOTH_MARKS = Pattern.compile("[+\\-−]?[\\d.,]*\\d[.,][\\d.,]*");
  private static final Pattern NUMBER_AND_MORE = Pattern.compile("([+\\-−]?[\\d.,]+)\\s*\\D.*");

  /** The complaint about a formula. */
  static final Cell.Fault IS_FORMULA =
      new Cell.Fault(
          Remark.Kind.FORMULA,
          "This looks like a formula of a spreadsheet; it is not computed here.",
          List.of("write its value"));

  private static final Pattern SPACES = Pattern.compile(SPACE);
  private static final Pattern SHORT_WHOLE = Pattern.compile("[1-9]\\d{0,2}");
  private static final Pattern LIKE_NUMBER =
      Pattern.compile("[+\\-−]?[\\d.,]*\\d[\\d.,]*(?:[(eE×±].*)?");
  private static final int MOST_DIGITS = 120;

  private final DecimalMark mark;

  CellReader(DecimalMark mark) {
    this.mark = mark;
  }

  /** Whether the text says that there is no value. */
  static boolean isMissing(String text) {
    return MISSING.contains(text.toLowerCase(Locale.ROOT));
  }

  /** Whether a spreadsheet would compute the text. */
  static boolean isFormula(String text) {
    return FORMULA.matcher(text).matches();
  }

  /** Whether the text is a number or was meant to be one, if a doubtful one. */
  static boolean isLikeNumber(String text) {
    return LIKE_NUMBER.matcher(text).matches();
  }

  /** What the cell holds. */
  Cell read(String text) {
    if (isMissing(text)) {
      return Cell.wrong(Remark.Kind.MISSING, "There is no value here.");
    }
    Matcher plain = PLAIN.matcher(text);
    if (plain.matches()) {
      return number(plain, text);
    }
    Matcher both = WITH_UNCERTAINTY.matcher(text);
    if (both.matches()) {
      return withUncertainty(both, text);
    }
    return isFormula(text) ? new Cell(null, null, IS_FORMULA) : unreadable(text);
  }

  private Cell number(Matcher m, String text) {
    Cell fault = doubt(m, "v");
    BigDecimal value = fault == null ? decimal(m, "v") : null;
    if (value == null) {
      return fault != null ? fault : unreadable(text);
    }
    String concise = m.group("concise");
    return Cell.of(
        value, concise == null ? null : new BigDecimal(new BigInteger(concise), value.scale()));
  }

  private Cell withUncertainty(Matcher m, String text) {
    Cell fault = doubt(m, "v") != null ? doubt(m, "v") : doubt(m, "u");
    if (fault != null) {
      return fault;
    }
    BigDecimal value = decimal(m, "v");
    BigDecimal uncertainty = decimal(m, "u");
    return value == null || uncertainty == null || uncertainty.signum() < 0
        ? unreadable(text)
        : Cell.of(value, uncertainty);
  }

  /** 1,234 may be a thousand or a little more than one. */
  private @Nullable Cell doubt(Matcher m, String of) {
    String found = m.group(of + "mark");
    String whole = m.group(of + "whole");
    String part = m.group(of + "part");
    boolean thousands = found != null && part.length() == 3 && SHORT_WHOLE.matcher(whole).matches();
    return thousands && mark.doubtful(found)
        ? Cell.wrong(
            Remark.Kind.UNREADABLE,
            "“%s%s%s” is doubtful: thousands or decimals?".formatted(whole, found, part),
            whole + part,
            whole + "." + part)
        : null;
  }

  /** Nothing where there is no digit, where there are too many, or beyond 10^±300. */
  private static @Nullable BigDecimal decimal(Matcher m, String of) {
    String part = m.group(of + "part") == null ? "" : m.group(of + "part");
    String digits = SPACES.matcher(m.group(of + "whole")).replaceAll("") + part;
    if (digits.isEmpty() || digits.length() > MOST_DIGITS) {
      return null;
    }
    BigInteger unscaled = new BigInteger(digits);
    boolean negative = !m.group(of + "sign").isEmpty() && !m.group(of + "sign").equals("+");
    BigDecimal value =
        new BigDecimal(negative ? unscaled.negate() : unscaled, part.length() - power(m, of));
    boolean inRange = Math.abs(Decimals.exponent(value)) <= Decimals.LARGEST_EXPONENT;
    return inRange && Math.abs(value.scale()) < 2 * Decimals.LARGEST_EXPONENT ? value : null;
  }

  private static int power(Matcher m, String of) {
    String written = m.group(of + "e") != null ? m.group(of + "e") : m.group(of + "p");
    return written == null ? 0 : Integer.parseInt(written.replace('−', '-'));
  }

  private static Cell unreadable(String text) {
    Matcher more = NUMBER_AND_MORE.matcher(text);
    if (BOTH_MARKS.matcher(text).matches()) {
      return Cell.wrong(
          Remark.Kind.UNREADABLE, "This number has more than one mark.", withOneMark(text));
    }
    if (more.matches()) {
      return Cell.wrong(
          Remark.Kind.UNREADABLE,
          "After the number stands something else; the unit belongs in the heading.",
          more.group(1));
    }
    return Cell.wrong(
        Remark.Kind.UNREADABLE, "This is not a number.", "write a number, or leave the cell empty");
  }

  /** The last mark is the decimal one: 1.234,5 is 1234.5. */
  private static String withOneMark(String text) {
    int last = Math.max(text.lastIndexOf('.'), text.lastIndexOf(','));
    String whole = text.substring(0, last).replaceAll("[.,]", "");
    return whole + "." + text.substring(last + 1);
  }
}
