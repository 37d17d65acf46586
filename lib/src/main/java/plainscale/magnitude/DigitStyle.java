package plainscale.magnitude;

import com.ibm.icu.number.NumberFormatter;
import com.ibm.icu.text.DecimalFormat;
import com.ibm.icu.text.DecimalFormatSymbols;
import com.ibm.icu.text.NumberFormat;
import java.util.Locale;

/**
 * How digits are grouped and marked: {@code DigitStyle.SI} gives 8 700 000 000 000, {@code
 * DigitStyle.of(Locale.forLanguageTag("en-IN"))} gives 87,00,00,00,00,000. The digits themselves
 * are always 0 to 9.
 */
public record DigitStyle(String marker, String separator, Grouping grouping) {

  /**
   * Group sizes: {@code first} beside the decimal marker, {@code next} further left. A part of the
   * number is grouped when it has at least {@code first + minimum} digits (CLDR's "minimum grouping
   * digits"). Only some styles group after the marker as well.
   */
  public record Grouping(int first, int next, int minimum, boolean afterMarker) {}

  /** U+202F, narrow no-break space. The SI Brochure asks for a space and leaves its width open. */
  public static final String THIN_SPACE = "\u202f";

  /**
   * Groups of three by a space on both sides of a decimal point; four digits stay together. SI
   * Brochure, 9th edition, 5.4.4.
   */
  public static final DigitStyle SI = new DigitStyle(".", THIN_SPACE, new Grouping(3, 3, 2, true));

  /**
   * As {@link #SI} with the comma as marker, which the 22nd CGPM, Resolution 10, allows equally.
   */
  public static final DigitStyle SI_COMMA = new DigitStyle(",", THIN_SPACE, SI.grouping);

  /** The everyday style of a locale, from the locale data in ICU4J. */
  public static DigitStyle of(Locale locale) {
    DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(locale);
    String separator = symbols.getGroupingSeparatorString();
    return new DigitStyle(
        symbols.getDecimalSeparatorString(), separator, grouping(locale, separator));
  }

  private static Grouping grouping(Locale locale, String separator) {
    // The locale's minimum is not told, but applied, and only by the newer of the two formatters.
    String four = NumberFormatter.withLocale(locale).format(1000).toString();
    int minimum = four.contains(separator) ? 1 : 2;
    if (!(NumberFormat.getNumberInstance(locale) instanceof DecimalFormat decimal)) {
      return new Grouping(3, 3, minimum, false);
    }
    int first = decimal.getGroupingSize();
    int next = decimal.getSecondaryGroupingSize();
    return new Grouping(first, next > 0 ? next : first, minimum, false);
  }

  /** Whether groups are parted by a space (of whatever width) and not by a visible character. */
  public boolean isSpaced() {
    return separator.codePoints().allMatch(Character::isSpaceChar);
  }

  /** The marker of this style with the thin spaces of the SI Brochure, which never uses commas. */
  public DigitStyle spaced() {
    return new DigitStyle(marker, THIN_SPACE, SI.grouping);
  }

  /** The style with every group marked, for columns: one format throughout (SI Brochure 5.4.4). */
  public DigitStyle uniform() {
    return new DigitStyle(
        marker, separator, new Grouping(grouping.first, grouping.next, 1, grouping.afterMarker));
  }

  /** Whether a separator stands before the last {@code rest} of {@code places} integer digits. */
  boolean separates(int rest, int places) {
    int beyond = rest - grouping.first;
    return rest < places
        && places >= grouping.first + grouping.minimum
        && beyond >= 0
        && beyond % grouping.next == 0;
  }

  /** Whether a separator stands after the first {@code done} of {@code places} decimal digits. */
  boolean separatesAfterMarker(int done, int places) {
    return grouping.afterMarker
        && done > 0
        && done % grouping.first == 0
        && places >= grouping.first + grouping.minimum;
  }
}
