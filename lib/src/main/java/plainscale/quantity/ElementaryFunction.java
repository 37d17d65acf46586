package plainscale.quantity;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * The elementary functions, one row each: name, what goes in and comes out, value, derivative,
 * domain. Angles are in radians here. A new row is checked against a central difference without
 * further work.
 */
public enum ElementaryFunction {
  SIN("sin", Takes.ANGLE, Gives.NUMBER, Math::sin, Math::cos, null, ""),
  COS("cos", Takes.ANGLE, Gives.NUMBER, Math::cos, x -> -Math.sin(x), null, ""),
  TAN(
      "tan",
      Takes.ANGLE,
      Gives.NUMBER,
      Math::tan,
      x -> 1 / (Math.cos(x) * Math.cos(x)),
      x -> Math.abs(Math.cos(x)) > 1e-15,
      "The tangent has no value at a right angle."),
  ASIN(
      "asin",
      Takes.NUMBER,
      Gives.ANGLE,
      Math::asin,
      x -> 1 / Math.sqrt(1 - x * x),
      x -> Math.abs(x) <= 1,
      "No angle has a sine above 1 or below −1."),
  ACOS(
      "acos",
      Takes.NUMBER,
      Gives.ANGLE,
      Math::acos,
      x -> -1 / Math.sqrt(1 - x * x),
      x -> Math.abs(x) <= 1,
      "No angle has a cosine above 1 or below −1."),
  ATAN("atan", Takes.NUMBER, Gives.ANGLE, Math::atan, x -> 1 / (1 + x * x), null, ""),
  SINH("sinh", Takes.NUMBER, Gives.NUMBER, Math::sinh, Math::cosh, null, ""),
  COSH("cosh", Takes.NUMBER, Gives.NUMBER, Math::cosh, Math::sinh, null, ""),
  TANH(
      "tanh",
      Takes.NUMBER,
      Gives.NUMBER,
      Math::tanh,
      x -> 1 / (Math.cosh(x) * Math.cosh(x)),
      null,
      ""),
  EXP("exp", Takes.NUMBER, Gives.NUMBER, Math::exp, Math::exp, null, ""),
  LN(
      "ln",
      Takes.NUMBER,
      Gives.NUMBER,
      Math::log,
      x -> 1 / x,
      x -> x > 0,
      "A logarithm exists for positive numbers only."),
  LOG10(
      "log10",
      Takes.NUMBER,
      Gives.NUMBER,
      Math::log10,
      x -> 1 / (x * Math.log(10)),
      x -> x > 0,
      "A logarithm exists for positive numbers only."),
  SQRT(
      "sqrt",
      Takes.ANY,
      Gives.SQUARE_ROOT,
      Math::sqrt,
      x -> 0.5 / Math.sqrt(x),
      x -> x >= 0,
      "A negative quantity has no square root here."),
  CBRT(
      "cbrt",
      Takes.ANY,
      Gives.CUBE_ROOT,
      Math::cbrt,
      x -> 1 / (3 * Math.pow(Math.cbrt(x), 2)),
      null,
      ""),
  ABS("abs", Takes.ANY, Gives.SAME, Math::abs, Math::signum, null, "");

  /** What the argument must be. */
  public enum Takes {
    ANGLE,
    NUMBER,
    ANY
  }

  /** What the result is. */
  public enum Gives {
    NUMBER,
    ANGLE,
    SAME,
    SQUARE_ROOT,
    CUBE_ROOT
  }

  private final String text;
  private final Takes takes;
  private final Gives gives;
  private final DoubleUnaryOperator value;
  private final DoubleUnaryOperator derivative;
  private final @Nullable DoublePredicate domain;
  private final String outside;

  ElementaryFunction(
      String text,
      Takes takes,
      Gives gives,
      DoubleUnaryOperator value,
      DoubleUnaryOperator derivative,
      @Nullable DoublePredicate domain,
      String outside) {
    this.text = text;
    this.takes = takes;
    this.gives = gives;
    this.value = value;
    this.derivative = derivative;
    this.domain = domain;
    this.outside = outside;
  }

  /** The function of that name as written in a cell. */
  public static Optional<ElementaryFunction> named(String name) {
    return Arrays.stream(values()).filter(f -> f.text.equals(name)).findFirst();
  }

  /** The name as written in a cell. */
  public String text() {
    return text;
  }

  /** What the argument must be. */
  public Takes takes() {
    return takes;
  }

  /** What the result is. */
  public Gives gives() {
    return gives;
  }

  /** f(x). */
  public double value(double x) {
    return value.applyAsDouble(x);
  }

  /** f′(x). */
  public double derivative(double x) {
    return derivative.applyAsDouble(x);
  }

  /** Whether the function has a value at x. */
  public boolean defined(double x) {
    return domain == null || domain.test(x);
  }

  /** Why there is no value outside the domain. */
  public String outside() {
    return outside;
  }
}
