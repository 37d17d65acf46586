package plainscale.magnitude;

import java.math.BigDecimal;

/** How well a landmark's value is known. */
public sealed interface Known {

  /** Known without a stated uncertainty. */
  enum Roughly implements Known {
    /** By definition, or by counting. */
    EXACT,
    /** To about a unit of the last figure. */
    ROUNDED,
    /** To a factor of a few. */
    ORDER
  }

  /** Known with this standard uncertainty, in the unit of the value. */
  record Within(BigDecimal uncertainty) implements Known {
    /** An uncertainty is more than nothing. */
    public Within {
      if (uncertainty.signum() <= 0) {
        throw new IllegalArgumentException("no uncertainty: " + uncertainty);
      }
    }
  }

  /** Reads "exact", "rounded", "order", or a standard uncertainty such as "1.3E+20". */
  static Known parse(String text) {
    return switch (text) {
      case "exact" -> Roughly.EXACT;
      case "rounded" -> Roughly.ROUNDED;
      case "order" -> Roughly.ORDER;
      default -> new Within(new BigDecimal(text));
    };
  }
}
