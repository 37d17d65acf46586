package plainscale.algebra;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import plainscale.notation.Expr;
import plainscale.notation.Printer;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;
import plainscale.quantity.Quantity;
import plainscale.quantity.QuantityException;
import plainscale.units.UnitException;

/** Evaluates an expression; what has no result becomes a problem at its place in the source. */
public final class Evaluator implements Expr.Visitor<Quantity> {
  private final String source;
  private final Scope scope;
  private final Budget budget;

  /** An evaluator of expressions that stand in {@code source}. */
  public Evaluator(String source, Scope scope, Budget budget) {
    this.source = source;
    this.scope = scope;
    this.budget = budget;
  }

  /**
   * The value of the expression.
   *
   * @throws ProblemException with the sentence, the place and the repairs
   */
  public Quantity evaluate(Expr expr) {
    budget.spend(source, expr.span());
    return expr.accept(this);
  }

  @Override
  public Quantity literal(Expr.Literal literal) {
    return at(
        literal.span(),
        () ->
            literal
                .unit()
                .map(u -> measured(literal))
                .orElseGet(() -> Quantity.literal(literal.value())));
  }

  private static Quantity measured(Expr.Literal literal) {
    return literal.exact()
        ? Quantity.exact(literal.value(), literal.unit().orElseThrow())
        : Quantity.written(literal.value(), literal.unit().orElseThrow());
  }

  @Override
  public Quantity name(Expr.Name name) {
    return scope.value(name, source);
  }

  @Override
  public Quantity negation(Expr.Negation negation) {
    if (negation.operand() instanceof Expr.Literal literal) { // −40 °C is one reading
      return literal(
          new Expr.Literal(
              negation.span(), literal.value().negate(), literal.after(), literal.exact()));
    }
    Quantity operand = evaluate(negation.operand());
    return at(negation.span(), operand::negate);
  }

  @Override
  public Quantity binary(Expr.Binary binary) {
    Quantity left = evaluate(binary.left());
    Quantity right = evaluate(binary.right());
    return switch (binary.operator()) {
      case PLUS -> sum(binary, left, right, () -> left.plus(right));
      case MINUS -> sum(binary, left, right, () -> left.minus(right));
      case TIMES -> at(binary.span(), () -> left.times(right));
      case OVER -> at(binary.right().span(), () -> left.over(right));
      case POWER -> at(binary.span(), () -> left.power(right));
    };
  }

  /**
   * A sum of two kinds gets the sign as its place, and what the sheet has of the left kind as
   * repairs.
   */
  private Quantity sum(Expr.Binary binary, Quantity left, Quantity right, Supplier<Quantity> sum) {
    try {
      return sum.get();
    } catch (UnitException e) {
      throw problem(e, source, binary.at());
    } catch (QuantityException e) {
      List<String> repairs = new ArrayList<>(e.repairs());
      List<String> alike =
          scope.ofKind(left.kind()).stream()
              .filter(n -> !n.equals(Printer.print(binary.left())))
              .toList();
      if (repairs.isEmpty() && !left.kind().equals(right.kind()) && !alike.isEmpty()) {
        repairs.add(
            "on the right, a quantity of the kind on the left: " + String.join(", ", alike));
      }
      throw problem(e, binary.at(), repairs);
    }
  }

  @Override
  public Quantity call(Expr.Call call) {
    Quantity argument = evaluate(call.argument());
    return at(call.span(), () -> argument.apply(call.function()));
  }

  @Override
  public Quantity inUnits(Expr.InUnits inUnits) {
    Quantity operand = evaluate(inUnits.operand());
    return at(inUnits.span(), () -> operand.times(Quantity.exact(BigDecimal.ONE, inUnits.unit())));
  }

  @Override
  public Quantity conversion(Expr.Conversion conversion) {
    Quantity operand = evaluate(conversion.operand());
    return at(conversion.span(), () -> operand.in(conversion.unit()));
  }

  private Quantity at(Span span, Supplier<Quantity> operation) {
    return at(source, span, operation);
  }

  /** Runs an operation and gives its complaint the place. */
  public static <T> T at(String source, Span span, Supplier<T> operation) {
    try {
      return operation.get();
    } catch (QuantityException e) {
      throw problem(e, source, span, e.repairs());
    } catch (UnitException e) {
      throw problem(e, source, span);
    }
  }

  private static ProblemException problem(UnitException e, String source, Span span) {
    String sentence = String.valueOf(e.getMessage());
    return new ProblemException(
        new Problem(Problem.Kind.UNIT, sentence, source, span, e.repairs()));
  }

  private ProblemException problem(QuantityException e, Span span, List<String> repairs) {
    return problem(e, source, span, repairs);
  }

  private static ProblemException problem(
      QuantityException e, String source, Span span, List<String> repairs) {
    Problem.Kind kind =
        switch (e.fault()) {
          case UNIT -> Problem.Kind.UNIT;
          case VALUE -> Problem.Kind.VALUE;
          case LIMIT -> Problem.Kind.LIMIT;
        };
    return new ProblemException(new Problem(kind, e.sentence(), source, span, repairs));
  }
}
