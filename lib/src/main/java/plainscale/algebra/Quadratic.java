package plainscale.algebra;

import java.util.List;
import org.apache.commons.math3.fraction.BigFraction;

/**
 * The formula for quadratic equations. The line has the root with +; if the other one is meant, a
 * second line says so.
 */
final class Quadratic {
  private final Board board;

  Quadratic(Board board) {
    this.board = board;
  }

  Turn turn(Line line, Sum variable, Polynomial.Coefficients k) {
    Sum discriminant = k.discriminant();
    int sign = board.sign(discriminant);
    if (sign < 0) {
      return new Turn.End(
          Turn.Kind.NOT_REAL, "the discriminant " + board.text(discriminant) + " is negative");
    }
    Board.Bare root = board.withoutBars(discriminant.power(BigFraction.ONE_HALF));
    String text = board.text(variable);
    Line plus = formula(line, variable, k, root);
    if (discriminant.isZero()) {
      return Turn.Next.of(plus);
    }
    Line minus =
        line.then(
            Rule.CHOOSE_ROOT,
            variable,
            k.root(-1, root.sum()),
            Line.Note.of("Take the root of {0} with − before the square root."));
    return choose(plus, minus, k, text);
  }

  private Line formula(Line line, Sum variable, Polynomial.Coefficients k, Board.Bare root) {
    String text = board.text(variable);
    String reason =
        "{0} is quadratic in %s, with a = %s, b = %s, c = %s; the root with + is written."
            .formatted(text, board.text(k.a()), board.text(k.b()), board.text(k.c()));
    Line.Note note = Line.Note.of(reason, root.condition());
    return line.then(Rule.QUADRATIC_FORMULA, variable, k.root(1, root.sum()), note);
  }

  private Turn choose(Line plus, Line minus, Polynomial.Coefficients k, String text) {
    int first = board.sign(plus.right());
    int second = board.sign(minus.right());
    if (board.sign(k.a()) * board.sign(k.c()) < 0) {
      first = board.sign(k.a()); // the product of the roots is negative
      second = -first;
    }
    if (first > 0 && second < 0) {
      return new Turn.Next(
          plus, List.of(new Turn.Alternative(minus, text + " would be negative.")));
    }
    if (first < 0 && second > 0) {
      return new Turn.Next(
          minus, List.of(new Turn.Alternative(plus, text + " would be negative.")));
    }
    return new Turn.Next(plus, List.of(new Turn.Alternative(minus, "")));
  }
}
