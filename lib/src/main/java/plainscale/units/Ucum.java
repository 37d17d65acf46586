package plainscale.units;

import java.util.Optional;
import java.util.regex.Pattern;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.format.UnitFormat;
import systems.uom.ucum.format.UCUMFormat;

/** The UCUM codes of the unit library, read case-sensitively; loaded when first used. */
final class Ucum {
  private static final String TERM =
      "\\(*(?:[A-Za-z_%'\"]|\\[[^\\[\\]\\s]+\\])+(?:[+-]?(?:1[0-2]|[1-9]))?\\)*";

  /**
   * Units with small exponents (the library fails on large ones) and nothing doubtful after a
   * solidus.
   */
  private static final Pattern UNITS =
      Pattern.compile(
          "(?:TERM(?:\\.TERM)*)?(?:/(?:TERM|\\(TERM(?:[./]TERM)*\\)))?".replace("TERM", TERM));

  /**
   * Codes that the library has wrong: its horsepower lacks the 550 foot pounds-force a second, and
   * its constants of nature are those of 1986 or 2006.
   */
  private static final Pattern WRONG = Pattern.compile("\\[(?:HP|h|k|e|m_e|m_p|G|eps_0|mu_0)\\]");

  private Ucum() {}

  private static final class Holder {
    static final UnitFormat FORMAT = UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE);
  }

  /** The unit of a code that is known to be right. */
  static synchronized Unit<?> parse(String code) {
    return Holder.FORMAT.parse(code);
  }

  /**
   * The unit of a text that may be a code. Only codes with brackets or an underscore are tried:
   * others are either written by our own symbols too, or so rare (the phot, ph) that a slip is
   * likelier.
   */
  static Optional<Unit<?>> find(String text) {
    boolean mayBeCode = text.indexOf('[') >= 0 || text.indexOf('_') >= 0;
    if (!mayBeCode || !UNITS.matcher(text).matches() || WRONG.matcher(text).find()) {
      return Optional.empty();
    }
    try {
      Unit<?> unit = parse(text);
      return isProportional(unit) ? Optional.of(unit) : Optional.empty();
    } catch (RuntimeException notACode) {
      return Optional.empty();
    } catch (Error scannerFailed) {
      // The generated scanner throws an Error, not an exception, at characters outside its
      // alphabet.
      if (scannerFailed instanceof VirtualMachineError) {
        throw scannerFailed;
      }
      return Optional.empty();
    }
  }

  /** Logarithmic units (the bel) have no factor and cannot be computed with. */
  @SuppressWarnings({"unchecked", "rawtypes"})
  private static boolean isProportional(Unit<?> unit) {
    UnitConverter converter = ((Unit) unit).getConverterTo(unit.getSystemUnit());
    double zero = converter.convert(0.0);
    double one = converter.convert(1.0) - zero;
    double two = converter.convert(2.0) - zero;
    return Math.abs(two - 2 * one) <= 1e-9 * Math.abs(one) && one != 0;
  }
}
