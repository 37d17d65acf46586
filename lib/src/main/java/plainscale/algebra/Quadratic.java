package plainscale.algebra;

import java.util.List;
import java.util.Map;
import org.apache.commons.math3.fraction.BigFraction;
import plainscale.quantity.ElementaryFunction;

/**
 * The formula for quadratic equations. The line has the root with +; if the other one is meant, a
 * second line says so.
 */
final class Quadratic {
  private final Board board;

  Quadratic(Board board) {
    this.board = board;
  }

  /** The equation, what is squared in it, and its two roots. */
  private record Problem(Line line, Sum variable, Polynomial.Coefficients k, Sum plus, Sum minus) {}

  Turn turn(Line line, Sum variable, Polynomial.Coefficients k) {
    Sum discriminant = k.discriminant();
    if (board.sign(discriminant) < 0) {
      return new Turn.End(
          Turn.Kind.NOT_REAL, "the discriminant " + board.text(discriminant) + " is negative");
    }
    Sum root = withoutBars(discriminant.power(BigFraction.ONE_HALF));
    Problem problem = new Problem(line, variable, k, k.root(1, root), k.root(-1, root));
    return discriminant.isZero() ? Turn.Next.of(first(problem, "")) : choose(problem);
  }

  /** |v| may be written v, since both signs follow. */
  private static Sum withoutBars(Sum root) {
    Sum result = Sum.ONE;
    for (Map.Entry<Atom, BigFraction> factor : root.asTerm().factors().entrySet()) {
      boolean bars =
          factor.getKey() instanceof Atom.Applied a && a.function() == ElementaryFunction.ABS;
      Sum base =
          bars ? ((Atom.Applied) factor.getKey()).argument() : Sum.of(Term.of(factor.getKey()));
      result = result.times(base.power(factor.getValue()));
    }
    return result.times(Sum.of(Term.number(root.asTerm().coefficient())));
  }

  /** A positive root is preferred to a negative one; otherwise nothing tells. */
  private Turn choose(Problem problem) {
    String text = board.text(problem.variable());
    int plus = board.sign(problem.plus());
    int minus = board.sign(problem.minus());
    Polynomial.Coefficients k = problem.k();
    boolean hasValue = board.value(problem.plus()).isPresent();
    if (!hasValue && board.sign(k.a()) * board.sign(k.c()) < 0) {
      plus = board.sign(k.a()); // the product of the roots is negative
      minus = -plus;
    }
    if (plus * minus >= 0) {
      Turn.Alternative other = new Turn.Alternative(second(problem, ""), "");
      return new Turn.Next(first(problem, ""), List.of(other));
    }
    String positive = text + " ≥ 0";
    Line taken = plus > 0 ? first(problem, positive) : second(problem, positive);
    Line left = plus > 0 ? second(problem, "") : first(problem, "");
    return new Turn.Next(taken, List.of(Turn.Alternative.negative(left, text)));
  }

  private Line first(Problem problem, String condition) {
    String reason = reason(problem, "+");
    return problem
        .line()
        .then(
            Rule.QUADRATIC_FORMULA,
            problem.variable(),
            problem.plus(),
            Line.Note.of(reason, condition));
  }

  private Line second(Problem problem, String condition) {
    String reason = reason(problem, "−");
    return problem
        .line()
        .then(
            Rule.CHOOSE_ROOT, problem.variable(), problem.minus(), Line.Note.of(reason, condition));
  }

  private String reason(Problem problem, String sign) {
    Polynomial.Coefficients k = problem.k();
    return "{0} is quadratic in %s: coefficients %s, %s and %s. The root with %s is written."
        .formatted(
            board.text(problem.variable()),
            board.text(k.a()),
            board.text(k.b()),
            board.text(k.c()),
            sign);
  }
}
