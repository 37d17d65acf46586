package plainscale.units;

import java.util.Optional;
import javax.measure.Unit;
import javax.measure.format.UnitFormat;
import systems.uom.ucum.format.UCUMFormat;

/** The UCUM codes of the unit library, read case-sensitively; loaded when first used. */
final class Ucum {
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
