package plainscale.units;

import java.util.Optional;
import java.util.regex.Pattern;
import javax.measure.Unit;
import javax.measure.format.UnitFormat;
import systems.uom.ucum.format.UCUMFormat;

/** The UCUM codes of the unit library, read case-sensitively; loaded when first used. */
final class Ucum {
  private static final String TERM =
      "\\(*(?:[A-Za-z_%'\"]|\\[[^\\[\\]\\s]+\\])+(?:[+-]?(?:1[0-2]|[1-9]))?\\)*";

  /** Units with small exponents, and nothing doubtful after a solidus. */
  private static final Pattern UNITS =
      Pattern.compile(
          "(?:TERM(?:\\.TERM)*)?(?:/(?:TERM|\\(TERM(?:[./]TERM)*\\)))?".replace("TERM", TERM));

  private Ucum() {}

  private static final class Holder {
    static final UnitFormat FORMAT = UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE);
  }

  /** The unit of a code that is known to be right. */
  static synchronized Unit<?> parse(String code) {
    return Holder.FORMAT.parse(code);
  }

  /** The unit of a text that may be a code. */
  static Optional<Unit<?>> find(String text) {
    if (!UNITS.matcher(text).matches()) {
      return Optional.empty(); // the library would also read numbers, and huge exponents
    }
    try {
      return Optional.of(parse(text));
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
}
