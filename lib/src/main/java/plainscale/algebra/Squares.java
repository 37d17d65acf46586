package plainscale.algebra;

import static plainscale.quantity.ElementaryFunction.COS;
import static plainscale.quantity.ElementaryFunction.SIN;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.fraction.BigFraction;
import plainscale.quantity.ElementaryFunction;

/** Two lines with the sine and the cosine of one angle: squared and added the angle goes. */
final class Squares {
  private final Board board;
  private final String name;

  /** The lines are to be freed of an angle that contains the name. */
  Squares(Board board, String name) {
    this.board = board;
    this.name = name;
  }

  /** One side is a factor times a sine or cosine, the other does not contain the name. */
  private record Leg(Line line, Term factor, ElementaryFunction function, Sum angle, Sum other) {
    boolean goesWith(Leg leg) {
      return angle.equals(leg.angle) && function != leg.function;
    }

    Sum square() {
      return Sum.of(factor.power(BigFraction.TWO));
    }

    Sum squaredSide() {
      Term function2 = Term.of(new Atom.Applied(function, angle), BigFraction.TWO);
      return square().times(Sum.of(function2));
    }

    Sum squaredOther() {
      return other.power(BigFraction.TWO);
    }

    boolean isOnTheRight() {
      return line.left().equals(other);
    }
  }

  Optional<Line> of(Line first, Line second) {
    Optional<Leg> a = leg(first);
    Optional<Leg> b = a.flatMap(leg -> leg(second));
    return b.filter(leg -> leg.goesWith(a.orElseThrow())).map(leg -> joined(a.orElseThrow(), leg));
  }

  private Optional<Leg> leg(Line line) {
    boolean once = line.left().contains(name) != line.right().contains(name);
    Sum side = line.side(name);
    if (!once || !side.isSingle()) {
      return Optional.empty();
    }
    Term part = side.asTerm().part(atom -> atom.contains(name));
    Atom atom = part.factors().firstKey();
    boolean alone = part.equals(Term.of(atom));
    if (alone && atom instanceof Atom.Applied a && (a.function() == SIN || a.function() == COS)) {
      Term factor = side.asTerm().over(part);
      return Optional.of(new Leg(line, factor, a.function(), a.argument(), line.opposite(side)));
    }
    return Optional.empty();
  }

  private Line joined(Leg a, Leg b) {
    return a.square().equals(b.square()) ? added(a, b) : added(alone(a), alone(b));
  }

  /** With different factors each sine or cosine must stand alone first. */
  private Leg alone(Leg leg) {
    if (leg.factor().isOne()) {
      return leg;
    }
    Sum function = Sum.of(Term.of(new Atom.Applied(leg.function(), leg.angle())));
    Sum other = leg.other().over(Sum.of(leg.factor()));
    Line line = Peeling.scaled(board, leg.line(), leg.factor(), new Sum[] {function, other});
    return new Leg(line, Term.ONE, leg.function(), leg.angle(), other);
  }

  private Line added(Leg a, Leg b) {
    Sum functions = a.squaredSide().plus(b.squaredSide());
    Sum others = a.squaredOther().plus(b.squaredOther());
    boolean right = a.isOnTheRight() && b.isOnTheRight();
    Line sum =
        Line.by(
            Rule.SQUARE_AND_ADD,
            List.of(a.line(), b.line()),
            right ? others : functions,
            right ? functions : others,
            Line.Note.of("Square {0} and {1} and add them."));
    String reason = "In {0}, sin(%1$s)^2 + cos(%1$s)^2 = 1.".formatted(board.text(a.angle()));
    return sum.then(
        Rule.IDENTITY,
        right ? others : a.square(),
        right ? a.square() : others,
        Line.Note.of(reason));
  }
}
