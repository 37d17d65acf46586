package plainscale.algebra;

import java.math.BigDecimal;
import java.util.Map;
import plainscale.notation.Expr;
import plainscale.quantity.ElementaryFunction;

/**
 * A number in binary arithmetic and a bound, to first order, of what rounding did to it. Not a
 * number if it does not exist.
 */
record Approximate(double value, double error) {
  private static final double ROUNDING = 0x1p-52;
  private static final int MOST_DECADES = 200;
  private static final double WORST = 1e-9;

  static Approximate of(double value) {
    return new Approximate(value, Math.abs(value) * ROUNDING);
  }

  private Approximate with(double result, double inherited) {
    return new Approximate(result, inherited + Math.abs(result) * ROUNDING);
  }

  /** Whether enough digits are left to compare. */
  boolean usable() {
    boolean inRange = value == 0 || Math.abs(Math.log10(Math.abs(value))) < MOST_DECADES;
    return Double.isFinite(value) && inRange && error <= WORST * Math.max(Math.abs(value), 1e-300);
  }

  /** Whether both may be the same number. */
  boolean near(Approximate other) {
    double tolerance = 1e3 * (error + other.error) + 1e-12 * Math.abs(value);
    return Math.abs(value - other.value) <= tolerance;
  }

  /** The same for numbers that come from roots, which are known to half the digits at worst. */
  boolean nearly(Approximate other) {
    double tolerance = 1e8 * (error + other.error) + 1e-9 * Math.abs(value);
    return Math.abs(value - other.value) <= tolerance;
  }

  Approximate plus(Approximate other) {
    return with(value + other.value, error + other.error);
  }

  Approximate negate() {
    return new Approximate(-value, error);
  }

  Approximate minus(Approximate other) {
    return plus(other.negate());
  }

  Approximate times(Approximate other) {
    double inherited = Math.abs(value) * other.error + Math.abs(other.value) * error;
    return with(value * other.value, inherited);
  }

  Approximate over(Approximate other) {
    double quotient = other.value == 0 ? Double.NaN : value / other.value;
    return with(quotient, (error + Math.abs(quotient) * other.error) / Math.abs(other.value));
  }

  Approximate power(Approximate exponent) {
    double power = Math.pow(value, exponent.value);
    double byBase = Math.abs(exponent.value * power / value) * error;
    double byExponent = Math.abs(power * Math.log(Math.abs(value)));
    return with(power, value == 0 ? 0 : byBase + byExponent * exponent.error);
  }

  Approximate apply(ElementaryFunction function) {
    if (!function.defined(value)) {
      return new Approximate(Double.NaN, 0);
    }
    double result = function.value(value);
    boolean lost = function == ElementaryFunction.EXP && result == 0; // below the smallest double
    double slope = function.derivative(value);
    double inherited = error == 0 ? 0 : Math.abs(slope) * error;
    return lost ? new Approximate(Double.NaN, 0) : with(result, inherited);
  }

  /** The value of an expression for these values of its names, in coherent SI units. */
  static Approximate of(Expr expr, Map<String, Double> values) {
    return expr.accept(new Evaluation(values));
  }

  private record Evaluation(Map<String, Double> values) implements Expr.Visitor<Approximate> {
    @Override
    public Approximate literal(Expr.Literal literal) {
      BigDecimal value = literal.value();
      return Approximate.of(
          literal.unit().map(unit -> unit.toCoherent(value)).orElse(value).doubleValue());
    }

    @Override
    public Approximate name(Expr.Name name) {
      return Approximate.of(values.getOrDefault(name.text(), Double.NaN));
    }

    @Override
    public Approximate negation(Expr.Negation negation) {
      return negation.operand().accept(this).negate();
    }

    @Override
    public Approximate binary(Expr.Binary binary) {
      Approximate left = binary.left().accept(this);
      Approximate right = binary.right().accept(this);
      return switch (binary.operator()) {
        case PLUS -> left.plus(right);
        case MINUS -> left.minus(right);
        case TIMES -> left.times(right);
        case OVER -> left.over(right);
        case POWER -> left.power(right);
      };
    }

    @Override
    public Approximate call(Expr.Call call) {
      return call.argument().accept(this).apply(call.function());
    }

    @Override
    public Approximate inUnits(Expr.InUnits inUnits) {
      Approximate operand = inUnits.operand().accept(this);
      double factor = inUnits.unit().factor().doubleValue();
      double offset = inUnits.unit().toCoherent(BigDecimal.ZERO).doubleValue();
      return operand.times(Approximate.of(factor)).plus(Approximate.of(offset));
    }

    @Override
    public Approximate conversion(Expr.Conversion conversion) {
      return conversion.operand().accept(this);
    }
  }
}
