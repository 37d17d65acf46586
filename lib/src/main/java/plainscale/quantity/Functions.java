package plainscale.quantity;

import static plainscale.quantity.QuantityException.Fault.UNIT;
import static plainscale.quantity.QuantityException.Fault.VALUE;

import java.math.BigDecimal;
import plainscale.units.Kind;
import plainscale.units.Kinds;

/**
 * Applies the rows of {@link ElementaryFunction} to quantities: kinds checked, then value, slope
 * and figures.
 */
final class Functions {
  /**
   * Where sine or cosine of an ordinary angle is below this, it is zero that binary arithmetic
   * missed.
   */
  private static final double DUST = 1e-15;

  /** Below this an exponential is zero, since its square would leave the range. */
  private static final double SMALLEST = Math.pow(10, -Decimals.LARGEST_EXPONENT / 2.0);

  private Functions() {}

  static Quantity apply(ElementaryFunction function, Quantity x) {
    checkKind(function, x);
    double argument = x.value().doubleValue();
    if (!function.defined(argument)) {
      throw new QuantityException(VALUE, function.outside());
    }
    BigDecimal value = value(function, x, argument);
    double slope = function.derivative(argument);
    Uncertainty by =
        x.uncertainty().derivatives().isEmpty() ? Uncertainty.NONE : uncertain(function, x, slope);
    return Quantity.computed(
        value, kind(function, x.kind()), by, figures(function, x, value, slope));
  }

  private static void checkKind(ElementaryFunction function, Quantity x) {
    String f = function.text();
    if (function.takes() == ElementaryFunction.Takes.ANGLE && !x.kind().angle()) {
      if (x.kind().isNumber()) {
        throw new QuantityException(
            UNIT,
            f + " takes an angle, and this is a plain number: degrees or radians?",
            f + "(… [°])",
            f + "(… [rad])");
      }
      throw new QuantityException(
          UNIT, f + " takes an angle; this is " + Kinds.of(x.kind()).withArticle() + ".");
    }
    if (function.takes() == ElementaryFunction.Takes.NUMBER && !x.kind().isNumber()) {
      throw new QuantityException(
          UNIT,
          f + " takes a plain number; this is " + Kinds.of(x.kind()).withArticle() + ".",
          "divide by a quantity of the same kind first");
    }
  }

  private static BigDecimal value(ElementaryFunction function, Quantity x, double argument) {
    return switch (function) {
      case SQRT -> x.value().sqrt(Decimals.DIGITS);
      case ABS -> x.value().abs();
      case EXP -> Decimals.from(withoutUnderflow(function.value(argument)));
      default -> Decimals.from(withoutDust(function.value(argument), argument));
    };
  }

  /** A small exponential (a Boltzmann factor, a charge that leaks away) is no dust. */
  private static double withoutUnderflow(double value) {
    return value < SMALLEST ? 0 : value;
  }

  private static double withoutDust(double value, double argument) {
    return Math.abs(value) < DUST && Math.abs(argument) > 1e-3 ? 0 : value;
  }

  private static Kind kind(ElementaryFunction function, Kind kind) {
    return switch (function.gives()) {
      case NUMBER -> Kind.NUMBER;
      case ANGLE -> Kind.ANGLE;
      case SAME -> kind;
      case SQUARE_ROOT -> kind.isNumber() ? kind : kind.power(1, 2);
      case CUBE_ROOT -> kind.isNumber() ? kind : kind.power(1, 3);
    };
  }

  private static Uncertainty uncertain(ElementaryFunction function, Quantity x, double slope) {
    if (!Double.isFinite(slope)) {
      throw new QuantityException(
          VALUE,
          "The uncertainty of "
              + function.text()
              + " is not defined here, where its slope is infinite.");
    }
    return x.uncertainty().times(slope);
  }

  /** Roots keep the number of figures; elsewhere the last digit moves by slope × step. */
  private static Figures figures(
      ElementaryFunction function, Quantity x, BigDecimal value, double slope) {
    Figures written = x.figures();
    if (written.exact()) {
      return Figures.EXACT;
    }
    double step = Math.abs(slope) * written.step();
    boolean keeps =
        function.takes() == ElementaryFunction.Takes.ANY || !(step > 0) || Double.isInfinite(step);
    return keeps ? Figures.counted(value, written.count()) : Figures.stepped(value, step);
  }
}
