package plainscale.algebra;

import static plainscale.quantity.ElementaryFunction.EXP;
import static plainscale.quantity.ElementaryFunction.LN;

import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.fraction.BigFraction;

/** Products on both sides with the unknown in exponents only: their logarithms are sums. */
final class Logarithms {
  private final Board board;
  private final String name;

  Logarithms(Board board, String name) {
    this.board = board;
    this.name = name;
  }

  /** What contains no unknown goes to the right first, so that the logarithm is one of a number. */
  Optional<Line> of(Line line) {
    if (!areExponentials(line.left()) || !areExponentials(line.right())) {
      return Optional.empty();
    }
    Term factor = free(line.left().asTerm());
    return Optional.of(factor.isOne() ? taken(line) : divided(line, factor));
  }

  private boolean areExponentials(Sum side) {
    return side.isSingle()
        && side.asTerm().coefficient().doubleValue() > 0
        && side.asTerm().factors().keySet().stream().allMatch(this::isInExponentOnly);
  }

  private boolean isInExponentOnly(Atom atom) {
    boolean exponential =
        (atom instanceof Atom.Exponential e && !e.base().contains(name))
            || (atom instanceof Atom.Applied a && a.function() == EXP);
    return exponential || !atom.contains(name);
  }

  private Line divided(Line line, Term factor) {
    Sum divisor = Sum.of(factor);
    Sum[] sides = {line.left().over(divisor), line.right().over(divisor)};
    return Peeling.scaled(board, line, factor, sides);
  }

  private Line taken(Line line) {
    Line.Note note = Line.Note.of("Take ln of both sides of {0}.");
    Sum left = logarithm(line.left().asTerm());
    return line.then(Rule.INVERSE_FUNCTION, left, logarithm(line.right().asTerm()), note);
  }

  private Sum logarithm(Term product) {
    Term free = free(product);
    Sum sum = free.isOne() ? Sum.ZERO : Application.of(LN, Sum.of(free));
    for (Map.Entry<Atom, BigFraction> factor : product.factors().entrySet()) {
      if (factor.getKey().contains(name)) {
        Sum times = Sum.of(Term.number(factor.getValue()));
        sum = sum.plus(Expansion.of(logarithm(factor.getKey()).times(times)));
      }
    }
    return sum;
  }

  private static Sum logarithm(Atom atom) {
    if (atom instanceof Atom.Exponential e) {
      return e.exponent().times(Application.of(LN, e.base()));
    }
    return ((Atom.Applied) atom).argument();
  }

  private Term free(Term term) {
    return term.part(atom -> !atom.contains(name)).times(term.coefficient());
  }
}
