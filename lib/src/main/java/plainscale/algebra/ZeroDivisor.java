package plainscale.algebra;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import plainscale.notation.Expr;
import plainscale.notation.Printer;

/** Finds what an expression divides by and what is zero for the values at hand. */
final class ZeroDivisor implements Expr.Visitor<Optional<Expr>> {
  private final Known known;

  private ZeroDivisor(Known known) {
    this.known = known;
  }

  /** Where the division by zero is, and by what. */
  record Found(int step, String divisor) {
    String why() {
      return divisor + " is zero with these values: you would divide by zero.";
    }
  }

  /** Whether the expression divides by zero. */
  static boolean isIn(Expr expr, Known known) {
    return expr.accept(new ZeroDivisor(known)).isPresent();
  }

  /** The first step that divides by zero, in what it arrives at. */
  static Optional<Found> of(Derivation derivation, Known known) {
    ZeroDivisor search = new ZeroDivisor(known);
    for (Step step : derivation.steps()) {
      Optional<Expr> zero = search.in(step.after().left(), step.after().right());
      if (zero.isPresent()) {
        return Optional.of(new Found(step.number(), Printer.print(zero.get())));
      }
    }
    return Optional.empty();
  }

  private Optional<Expr> in(Expr first, Expr second) {
    return first.accept(this).or(() -> second.accept(this));
  }

  /** The factor that is zero, of a product. */
  private Optional<Expr> zero(Expr divisor) {
    if (divisor instanceof Expr.Binary product && product.operator() == Expr.Operator.TIMES) {
      return Stream.of(product.left(), product.right()).flatMap(e -> zero(e).stream()).findFirst();
    }
    if (divisor instanceof Expr.Binary power && power.operator() == Expr.Operator.POWER) {
      return zero(power.left());
    }
    return isZero(divisor) ? Optional.of(divisor) : Optional.empty();
  }

  /** Whether only rounding keeps the value from zero. */
  private boolean isZero(Expr expr) {
    Map<String, Double> values = new HashMap<>();
    Set<String> names = Mentions.of(List.of(new Equation(expr, expr))).names();
    names.forEach(name -> known.value(name).ifPresent(value -> values.put(name, value)));
    Approximate value = Approximate.of(expr, values);
    return values.keySet().containsAll(names) && Math.abs(value.value()) <= value.error();
  }

  @Override
  public Optional<Expr> binary(Expr.Binary binary) {
    return binary.operator() == Expr.Operator.OVER
        ? zero(binary.right()).or(() -> in(binary.left(), binary.right()))
        : in(binary.left(), binary.right());
  }

  @Override
  public Optional<Expr> literal(Expr.Literal literal) {
    return Optional.empty();
  }

  @Override
  public Optional<Expr> name(Expr.Name name) {
    return Optional.empty();
  }

  @Override
  public Optional<Expr> negation(Expr.Negation negation) {
    return negation.operand().accept(this);
  }

  @Override
  public Optional<Expr> call(Expr.Call call) {
    return call.argument().accept(this);
  }

  @Override
  public Optional<Expr> inUnits(Expr.InUnits inUnits) {
    return inUnits.operand().accept(this);
  }

  @Override
  public Optional<Expr> conversion(Expr.Conversion conversion) {
    return conversion.operand().accept(this);
  }
}
