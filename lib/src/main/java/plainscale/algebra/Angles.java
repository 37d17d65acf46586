package plainscale.algebra;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.fraction.BigFraction;
import plainscale.notation.Expr;
import plainscale.notation.Span;
import plainscale.quantity.ElementaryFunction;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/** The two angles of a sine: x and 180° − x. */
final class Angles {
  private static final Span NOWHERE = new Span(0, 0);
  private static final UnitOfMeasure DEGREE = UnitParser.parse("°");
  private static final BigFraction STRAIGHT = new BigFraction(180);

  private Angles() {}

  /** How often the unknown stands in an angle that is nothing but a multiple of it. */
  static Optional<BigFraction> multiple(Sum angle, String name) {
    boolean single = angle.isSingle() && angle.names().size() == 1;
    return single && angle.equals(Sum.symbol(name).times(number(angle)))
        ? Optional.of(angle.asTerm().coefficient())
        : Optional.empty();
  }

  private static Sum number(Sum angle) {
    return Sum.of(Term.number(angle.asTerm().coefficient()));
  }

  /** Whether a function of an angle has the name in a sum with nothing but a number before it. */
  static boolean isAngle(List<Line> lines, String name) {
    return lines.stream().anyMatch(line -> isIn(line.left(), name) || isIn(line.right(), name));
  }

  private static boolean isIn(Sum sum, String name) {
    return sum.terms().stream()
        .flatMap(term -> term.factors().keySet().stream())
        .anyMatch(atom -> isIn(atom, name));
  }

  private static boolean isIn(Atom atom, String name) {
    if (atom instanceof Atom.Group group) {
      return isIn(group.sum(), name);
    }
    return atom instanceof Atom.Applied a
        && a.function().takes() == ElementaryFunction.Takes.ANGLE
        && a.argument().terms().stream().anyMatch(t -> multiple(Sum.of(t), name).isPresent());
  }

  /** 180° − x, with the degrees written so that a division by the multiple leaves one number. */
  static Sum supplement(Sum angle, BigFraction multiple) {
    BigFraction part = STRAIGHT.divide(multiple);
    boolean whole = part.getDenominator().bitLength() == 1;
    Sum straight = whole ? degrees(part).times(Sum.of(Term.number(multiple))) : degrees(STRAIGHT);
    return straight.minus(angle);
  }

  private static Sum degrees(BigFraction number) {
    BigDecimal value = new BigDecimal(number.getNumerator());
    Expr written = new Expr.Literal(NOWHERE, value, DEGREE, true);
    return Sum.of(Term.of(Atom.Constant.of(written, true)));
  }
}
