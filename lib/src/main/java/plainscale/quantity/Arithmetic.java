package plainscale.quantity;

import java.math.BigDecimal;
import plainscale.units.UnitException;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/**
 * Computing with quantities as one writes it in Java: with plain numbers, which count as exact, and
 * by the names of functions. Everything is said by the few operations of {@link Quantity}, so
 * units, figures and uncertainties follow its rules; what has no result is told by a {@link
 * QuantityException}.
 *
 * <pre>{@code
 * Quantity h = Quantity.written(new BigDecimal("1.25"), UnitParser.parse("m"));
 * Quantity g = Quantity.written(new BigDecimal("9.81"), UnitParser.parse("m/s^2"));
 * Quantity t = h.times(2).dividedBy(g).sqrt(); // 0.505 s
 * }</pre>
 */
public sealed interface Arithmetic permits Quantity {

  /** The sum; both are of one kind. */
  Quantity plus(Quantity other);

  /** The difference; of two readings of a temperature scale an amount in kelvins. */
  Quantity minus(Quantity other);

  /** The product. */
  Quantity times(Quantity other);

  /** The quotient. */
  Quantity over(Quantity other);

  /** The power; the exponent is a plain number. */
  Quantity power(Quantity exponent);

  /** The value of an elementary function. */
  Quantity apply(ElementaryFunction function);

  /** The same quantity, to be shown in another unit of its kind. */
  Quantity in(UnitOfMeasure unit);

  /** The same quantity, to be shown in another unit of its kind: {@code in("mN")}. */
  default Quantity in(String unit) {
    try {
      return in(UnitParser.parse(unit));
    } catch (UnitException e) {
      throw new QuantityException(
          QuantityException.Fault.UNIT,
          String.valueOf(e.getMessage()),
          e.repairs().toArray(String[]::new));
    }
  }

  /** The sum of a plain number and an exact one. */
  default Quantity plus(double number) {
    return plus(exact(number));
  }

  /** The difference of a plain number and an exact one. */
  default Quantity minus(double number) {
    return minus(exact(number));
  }

  /** So many times as much; the unit stays. */
  default Quantity times(double number) {
    return times(exact(number));
  }

  /** The quotient. */
  default Quantity dividedBy(Quantity other) {
    return over(other);
  }

  /** The quotient by an exact number; the unit stays. */
  default Quantity dividedBy(double number) {
    return over(exact(number));
  }

  /** The power with an exact exponent. */
  default Quantity power(double exponent) {
    return power(exact(exponent));
  }

  /** The square root. */
  default Quantity sqrt() {
    return apply(ElementaryFunction.SQRT);
  }

  /** The cube root. */
  default Quantity cbrt() {
    return apply(ElementaryFunction.CBRT);
  }

  /** The size without its sign. */
  default Quantity abs() {
    return apply(ElementaryFunction.ABS);
  }

  /** The exponential of a plain number. */
  default Quantity exp() {
    return apply(ElementaryFunction.EXP);
  }

  /** The natural logarithm of a plain number. */
  default Quantity ln() {
    return apply(ElementaryFunction.LN);
  }

  /** The logarithm to base ten of a plain number. */
  default Quantity log10() {
    return apply(ElementaryFunction.LOG10);
  }

  /** The sine of an angle. */
  default Quantity sin() {
    return apply(ElementaryFunction.SIN);
  }

  /** The cosine of an angle. */
  default Quantity cos() {
    return apply(ElementaryFunction.COS);
  }

  /** The tangent of an angle. */
  default Quantity tan() {
    return apply(ElementaryFunction.TAN);
  }

  /** The angle from −90° to 90° with this sine. */
  default Quantity asin() {
    return apply(ElementaryFunction.ASIN);
  }

  /** The angle from 0° to 180° with this cosine. */
  default Quantity acos() {
    return apply(ElementaryFunction.ACOS);
  }

  /** The angle between −90° and 90° with this tangent. */
  default Quantity atan() {
    return apply(ElementaryFunction.ATAN);
  }

  /** The hyperbolic sine of a plain number. */
  default Quantity sinh() {
    return apply(ElementaryFunction.SINH);
  }

  /** The hyperbolic cosine of a plain number. */
  default Quantity cosh() {
    return apply(ElementaryFunction.COSH);
  }

  /** The hyperbolic tangent of a plain number. */
  default Quantity tanh() {
    return apply(ElementaryFunction.TANH);
  }

  /** 0.1 means a tenth, whatever its binary form is. */
  private static Quantity exact(double number) {
    if (Double.isFinite(number)) {
      return Quantity.number(new BigDecimal(Double.toString(number)));
    }
    throw new QuantityException(
        QuantityException.Fault.VALUE,
        "A quantity is a finite number; this one is " + number + ".");
  }
}
