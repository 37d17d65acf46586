package plainscale.render;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plainscale.magnitude.Writing;
import plainscale.quantity.Shown;
import plainscale.sheet.DataResult;
import plainscale.units.UnitOfMeasure;

/** Numbers and rows of data in sentences. */
final class DataWords {
  private static final MathContext ENOUGH = MathContext.DECIMAL64;
  private static final MathContext BRIEF = new MathContext(4, RoundingMode.HALF_EVEN);
  private static final int PLAIN = 6;
  private static final int NINES = 2;
  private static final int MOST_PLACES = 8;

  private DataWords() {}

  /** A plain number to so many figures. */
  static String number(double value, int figures, Writing writing) {
    return number(value, figures, UnitOfMeasure.ONE, writing);
  }

  /** A number in a unit to so many figures. */
  static String number(double value, int figures, UnitOfMeasure unit, Writing writing) {
    if (value == 0 || !Double.isFinite(value)) {
      return ValueText.number(new Shown(BigDecimal.ZERO, null, unit), writing);
    }
    BigDecimal rounded = new BigDecimal(value, new MathContext(figures, RoundingMode.HALF_EVEN));
    int missing = figures - rounded.precision();
    BigDecimal padded = missing > 0 ? rounded.setScale(rounded.scale() + missing) : rounded;
    return ValueText.number(new Shown(padded, null, unit), writing);
  }

  /** A number in a list: to four figures, without zeros at its end. */
  static String brief(double value, UnitOfMeasure unit, Writing writing) {
    BigDecimal rounded = new BigDecimal(value, BRIEF).stripTrailingZeros();
    boolean whole = rounded.scale() < 0 && rounded.precision() - rounded.scale() <= PLAIN;
    BigDecimal plain = whole || value == 0 ? rounded.setScale(0) : rounded;
    return ValueText.number(new Shown(plain, null, unit), writing);
  }

  /** A share or a correlation near one keeps two figures of what is missing: 0.999 87. */
  static String share(double share, Writing writing) {
    BigDecimal rest = BigDecimal.ONE.subtract(new BigDecimal(Math.abs(share), ENOUGH)).abs();
    int places = rest.signum() == 0 ? NINES : rest.scale() - rest.precision() + NINES;
    BigDecimal rounded =
        new BigDecimal(share)
            .setScale(Math.max(NINES, Math.min(MOST_PLACES, places)), RoundingMode.HALF_EVEN);
    return ValueText.number(new Shown(rounded, null, UnitOfMeasure.ONE), writing);
  }

  static String percent(double share, Writing writing) {
    return share < 0.001 ? "less than 0.1 %" : number(100 * share, 2, writing) + " %";
  }

  /** Which rows have no value, if any. */
  static Optional<String> leftOut(DataResult.Left left, Writing writing) {
    if (left.count() == 0) {
      return Optional.empty();
    }
    int more = left.count() - left.rows().size();
    String rest = more == 0 ? "" : " and " + DataSections.whole(more, writing) + " more";
    String verb = left.count() == 1 ? " is" : " are";
    return Optional.of(rows(left.rows()) + rest + verb + " left out, for want of a value.");
  }

  /** “Row 3”, “Rows 3, 5 and 9”. */
  static String rows(List<Integer> rows) {
    if (rows.size() == 1) {
      return "Row " + rows.get(0);
    }
    String first =
        rows.subList(0, rows.size() - 1).stream()
            .map(String::valueOf)
            .collect(Collectors.joining(", "));
    return "Rows " + first + " and " + rows.get(rows.size() - 1);
  }
}
