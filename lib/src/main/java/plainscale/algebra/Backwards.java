package plainscale.algebra;

import static java.util.Map.entry;
import static plainscale.quantity.ElementaryFunction.ABS;
import static plainscale.quantity.ElementaryFunction.ACOS;
import static plainscale.quantity.ElementaryFunction.ASIN;
import static plainscale.quantity.ElementaryFunction.ATAN;
import static plainscale.quantity.ElementaryFunction.CBRT;
import static plainscale.quantity.ElementaryFunction.COS;
import static plainscale.quantity.ElementaryFunction.EXP;
import static plainscale.quantity.ElementaryFunction.LN;
import static plainscale.quantity.ElementaryFunction.LOG10;
import static plainscale.quantity.ElementaryFunction.SIN;
import static plainscale.quantity.ElementaryFunction.SQRT;
import static plainscale.quantity.ElementaryFunction.TAN;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import plainscale.notation.Expr;
import plainscale.quantity.ElementaryFunction;

/**
 * Finds by numbers what a name must be for an equation to hold, if it stands there once: what was
 * done to it last is undone first. Much faster than a search; of several roots it knows one, a
 * positive one where a square is undone. Not a number where there is none.
 */
final class Backwards implements Expr.Visitor<Double> {
  private static final Map<ElementaryFunction, DoubleUnaryOperator> INVERSE =
      Map.ofEntries(
          entry(SIN, Math::asin),
          entry(COS, Math::acos),
          entry(TAN, Math::atan),
          entry(ASIN, Math::sin),
          entry(ACOS, Math::cos),
          entry(ATAN, Math::tan),
          entry(EXP, Math::log),
          entry(LN, Math::exp),
          entry(LOG10, y -> Math.pow(10, y)),
          entry(SQRT, y -> y < 0 ? Double.NaN : y * y),
          entry(CBRT, y -> y * y * y),
          entry(ABS, y -> y < 0 ? Double.NaN : y));

  private final String name;
  private final Map<String, Double> values;
  private final double target;

  private Backwards(String name, Map<String, Double> values, double target) {
    this.name = name;
    this.values = values;
    this.target = target;
  }

  /** A root of the equation; empty if the name stands in several places, or no root is found so. */
  static OptionalDouble root(Equation equation, String name, Map<String, Double> values) {
    int left = Mentions.count(equation.left(), name);
    if (left + Mentions.count(equation.right(), name) != 1) {
      return OptionalDouble.empty();
    }
    Expr side = left == 1 ? equation.left() : equation.right();
    Expr other = left == 1 ? equation.right() : equation.left();
    double root = side.accept(new Backwards(name, values, value(other, values)));
    return holds(equation, name, root, values) ? OptionalDouble.of(root) : OptionalDouble.empty();
  }

  private static boolean holds(
      Equation equation, String name, double root, Map<String, Double> values) {
    Map<String, Double> at = new HashMap<>(values);
    at.put(name, root);
    Approximate left = Approximate.of(equation.left(), at);
    return left.nearly(Approximate.of(equation.right(), at));
  }

  private static double value(Expr expr, Map<String, Double> values) {
    return Approximate.of(expr, values).value();
  }

  private double value(Expr expr) {
    return value(expr, values);
  }

  private double into(Expr expr, double newTarget) {
    return expr.accept(new Backwards(name, values, newTarget));
  }

  @Override
  public Double literal(Expr.Literal literal) {
    return Double.NaN;
  }

  @Override
  public Double name(Expr.Name found) {
    return target;
  }

  @Override
  public Double negation(Expr.Negation negation) {
    return into(negation.operand(), -target);
  }

  @Override
  public Double binary(Expr.Binary binary) {
    boolean left = Mentions.count(binary.left(), name) == 1;
    Expr inside = left ? binary.left() : binary.right();
    double other = value(left ? binary.right() : binary.left());
    double undone =
        switch (binary.operator()) {
          case PLUS -> target - other;
          case MINUS -> left ? target + other : other - target;
          case TIMES -> target / other;
          case OVER -> left ? target * other : other / target;
          case POWER -> left ? base(other) : Math.log(target) / Math.log(other);
        };
    return into(inside, undone);
  }

  /** An odd power keeps the sign, of an even one the positive root is taken. */
  private double base(double exponent) {
    double size = Math.pow(Math.abs(target), 1 / exponent);
    boolean odd = exponent % 2 != 0 && exponent == Math.rint(exponent);
    return target >= 0 ? size : odd ? -size : Double.NaN;
  }

  @Override
  public Double call(Expr.Call call) {
    DoubleUnaryOperator inverse = INVERSE.getOrDefault(call.function(), y -> Double.NaN);
    return into(call.argument(), inverse.applyAsDouble(target));
  }

  @Override
  public Double inUnits(Expr.InUnits inUnits) {
    double zero = inUnits.unit().toCoherent(BigDecimal.ZERO).doubleValue();
    double factor = inUnits.unit().factor().doubleValue();
    return into(inUnits.operand(), (target - zero) / factor);
  }

  @Override
  public Double conversion(Expr.Conversion conversion) {
    return into(conversion.operand(), target);
  }
}
