package plainscale.sheet;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plainscale.algebra.Budget;
import plainscale.algebra.Evaluator;
import plainscale.algebra.Scope;
import plainscale.notation.Expr;
import plainscale.notation.Rewriting;
import plainscale.notation.Span;
import plainscale.quantity.ElementaryFunction;
import plainscale.quantity.Quantity;
import plainscale.units.Kind;

/**
 * What follows from relations, computed with the numbers of all quantities in coherent SI units: a
 * reading in °C counts as its kelvins, a volume may be raised to a measured exponent. Whether the
 * units fit was found from the relations themselves, so that the kind of the result is known.
 * Functions keep their rules: a sine takes an angle.
 */
final class CoherentNumbers extends Rewriting implements Scope {
  private static final Span NOWHERE = new Span(0, 0);

  private final Wave wave;
  private final Budget budget;
  private final String source;
  private final Map<String, Quantity> literals = new HashMap<>();

  private CoherentNumbers(Wave wave, Budget budget, String source) {
    this.wave = wave;
    this.budget = budget;
    this.source = source;
  }

  /** The number of an expression, with its uncertainty and its figures; an angle in radians. */
  static Quantity of(Expr expr, Wave wave, Budget budget, String source) {
    CoherentNumbers numbers = new CoherentNumbers(wave, budget, source);
    return numbers.evaluate(expr.accept(numbers), numbers);
  }

  private Quantity evaluate(Expr expr, Scope scope) {
    return new Evaluator(source, scope, budget).evaluate(expr);
  }

  @Override
  public Quantity value(Expr.Name name, String source) {
    Quantity literal = literals.get(name.text());
    return literal != null ? literal : number(wave.value(name, source));
  }

  @Override
  public List<String> ofKind(Kind kind) {
    return List.of();
  }

  private static Quantity number(Quantity quantity) {
    return quantity.kind().isNumber() ? quantity : quantity.asKind(Kind.NUMBER);
  }

  @Override
  public Expr literal(Expr.Literal literal) {
    return literal.unit().isEmpty() ? literal : named(literal);
  }

  /** A number with a unit under a name that nobody can write. */
  private Expr named(Expr expr) {
    return named(number(evaluate(expr, wave)));
  }

  private Expr named(Quantity quantity) {
    String name = "number " + literals.size();
    literals.put(name, quantity);
    return new Expr.Name(NOWHERE, name);
  }

  @Override
  public Expr call(Expr.Call call) {
    Expr argument = call.argument();
    boolean angle = call.function().takes() == ElementaryFunction.Takes.ANGLE;
    Quantity taken =
        NumbersNeeded.in(argument, wave)
            ? evaluate(argument.accept(this), this).asKind(angle ? Kind.ANGLE : Kind.NUMBER)
            : evaluate(argument, wave);
    Expr of = new Expr.Call(call.span(), call.function(), named(taken));
    return named(number(evaluate(of, this)));
  }

  @Override
  public Expr inUnits(Expr.InUnits inUnits) {
    Expr one = new Expr.Literal(NOWHERE, BigDecimal.ONE, inUnits.unit(), true);
    Expr operand = inUnits.operand().accept(this);
    return new Expr.Binary(NOWHERE, Expr.Operator.TIMES, operand, named(one), NOWHERE);
  }

  @Override
  public Expr conversion(Expr.Conversion conversion) {
    return conversion.operand().accept(this);
  }

  /** A zero in a sum has any unit. */
  @Override
  public Expr binary(Expr.Binary binary) {
    boolean sum =
        binary.operator() == Expr.Operator.PLUS || binary.operator() == Expr.Operator.MINUS;
    if (sum && isZero(binary.right())) {
      return binary.left().accept(this);
    }
    if (sum && isZero(binary.left())) {
      Expr right = binary.right().accept(this);
      return binary.operator() == Expr.Operator.PLUS ? right : new Expr.Negation(NOWHERE, right);
    }
    return super.binary(binary);
  }

  private static boolean isZero(Expr expr) {
    return expr instanceof Expr.Literal literal
        && literal.unit().isEmpty()
        && literal.value().signum() == 0;
  }
}
