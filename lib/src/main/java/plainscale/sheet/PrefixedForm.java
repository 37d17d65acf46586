package plainscale.sheet;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainscale.magnitude.Prefix;
import plainscale.magnitude.Prefixes;
import plainscale.quantity.Shown;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitSymbol;
import plainscale.units.UnitTable;

/**
 * The same amount with an SI prefix that brings the number between 1 and 1000: 6.7×10⁻⁸ C as 67 nC.
 */
final class PrefixedForm {
  /** Units whose multiples are in everyday use; years of seconds and kilokelvins are not. */
  private static final Set<String> TAKES_PREFIX =
      Set.of(
          "m", "g", "A", "N", "Pa", "J", "W", "C", "V", "F", "Ω", "S", "Wb", "T", "H", "Hz", "mol",
          "eV", "Bq");

  /** A second is divided by prefixes but not multiplied. */
  private static final String SECOND = "s";

  private static final BigDecimal SMALL = new BigDecimal("0.1");
  private static final BigDecimal LARGE = BigDecimal.valueOf(1000);

  private PrefixedForm() {}

  /** The prefixed form, where it reads better than the plain one. */
  static Optional<Shown> of(Shown shown) {
    List<UnitOfMeasure.Factor> factors = shown.unit().factors();
    if (shown.value().signum() == 0
        || readsWell(shown.value())
        || factors.size() != 1
        || factors.get(0).exponent() != 1) {
      return Optional.empty();
    }
    String symbol = factors.get(0).symbol().text();
    return symbol.equals("kg") ? prefixed(moved(shown, 3), "g") : prefixed(shown, symbol);
  }

  /** Whether a number needs no prefix. */
  static boolean readsWell(BigDecimal number) {
    BigDecimal size = number.abs();
    return size.compareTo(SMALL) >= 0 && size.compareTo(LARGE) < 0;
  }

  private static Optional<Shown> prefixed(Shown shown, String symbol) {
    Prefix prefix = Prefixes.choose(shown.value());
    boolean fits = TAKES_PREFIX.contains(symbol) || (symbol.equals(SECOND) && prefix.power() < 0);
    if (!fits || (prefix.power() == 0 && !symbol.equals("g"))) {
      return Optional.empty();
    }
    if (moved(shown, -prefix.power()).value().scale() < 0) { // 2 × 10¹ ms is no easier than 0.02 s
      return Optional.empty();
    }
    return UnitTable.standard()
        .find(prefix.symbol() + symbol)
        .map(unit -> inUnit(moved(shown, -prefix.power()), unit));
  }

  private static Shown inUnit(Shown shown, UnitSymbol symbol) {
    UnitOfMeasure unit = UnitOfMeasure.of(List.of(new UnitOfMeasure.Factor(symbol, 1)));
    return new Shown(shown.value(), shown.uncertain(), unit);
  }

  private static Shown moved(Shown shown, int power) {
    BigDecimal u = shown.uncertain();
    return new Shown(
        shown.value().scaleByPowerOfTen(power),
        u == null ? null : u.scaleByPowerOfTen(power),
        shown.unit());
  }
}
