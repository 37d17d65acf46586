package plainscale.algebra;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.commons.math3.fraction.BigFraction;

/** Makes an answer shorter: over one denominator, and sums that divide one another exactly. */
final class Tidying {
  private static final int MOST_TERMS = 12;

  private Tidying() {}

  /** The line with a shorter right side, if there is one. */
  static Optional<Line> of(Board board, Line line) {
    Sum before = line.right();
    Sum together = together(before);
    Sum after = divided(together);
    if (board.text(after).length() >= board.text(before).length()) {
      return Optional.empty();
    }
    Term cancelled = after.equals(together) ? Term.ONE : brackets(together.asTerm());
    String reason = "Put the right side of {0} over one denominator and cancel.";
    Line.Note note = Line.Note.of(reason, board.notZero(cancelled));
    return Optional.of(line.then(Rule.EXPAND, line.left(), after, note));
  }

  /** The brackets above the line. */
  private static Term brackets(Term term) {
    return term.part(
        atom -> atom instanceof Atom.Group && term.exponent(atom).equals(BigFraction.ONE));
  }

  private static Sum together(Sum sum) {
    if (sum.isZero() || sum.isSingle() || sum.terms().size() > MOST_TERMS) {
      return sum;
    }
    Term content = sum.terms().stream().reduce(Term::common).orElse(Term.ONE);
    if (content.factors().values().stream().allMatch(e -> e.doubleValue() > 0)) {
      return sum; // no denominator: a factor taken out is no gain
    }
    Sum rest = Sum.of(sum.terms().stream().map(term -> term.over(content)).toList());
    return Sum.of(content).times(Expansion.of(rest));
  }

  /** a - b goes into a² - b²: the quotient a + b takes its place. */
  private static Sum divided(Sum sum) {
    if (!sum.isSingle()) {
      return sum;
    }
    Term term = sum.asTerm();
    for (Map.Entry<Atom, BigFraction> above : term.factors().entrySet()) {
      for (Map.Entry<Atom, BigFraction> below : term.factors().entrySet()) {
        if (isBracket(above, BigFraction.ONE) && isBracket(below, BigFraction.MINUS_ONE)) {
          Sum dividend = ((Atom.Group) below.getKey()).sum();
          Optional<Sum> quotient = quotient(dividend, ((Atom.Group) above.getKey()).sum());
          if (quotient.isPresent()) {
            Term rest = term.part(atom -> atom != above.getKey() && atom != below.getKey());
            return Sum.of(rest.times(term.coefficient())).over(quotient.get());
          }
        }
      }
    }
    return sum;
  }

  private static boolean isBracket(Map.Entry<Atom, BigFraction> factor, BigFraction exponent) {
    return factor.getKey() instanceof Atom.Group && factor.getValue().equals(exponent);
  }

  /** The quotient of two sums, if the division leaves nothing: leading terms are divided. */
  private static Optional<Sum> quotient(Sum dividend, Sum divisor) {
    List<Term> quotient = new ArrayList<>();
    Sum rest = dividend;
    for (int i = 0; i < MOST_TERMS && !rest.isZero(); i++) {
      Term next = leading(rest).over(leading(divisor));
      quotient.add(next);
      rest = rest.minus(Expansion.product(Sum.of(next), divisor));
    }
    boolean whole =
        quotient.stream()
            .flatMap(term -> term.factors().values().stream())
            .allMatch(e -> e.doubleValue() > 0);
    return rest.isZero() && whole ? Optional.of(Sum.of(quotient)) : Optional.empty();
  }

  /** The greatest by the exponents of the atoms in their order. */
  private static Term leading(Sum sum) {
    TreeSet<Atom> atoms = new TreeSet<>();
    sum.terms().forEach(term -> atoms.addAll(term.factors().keySet()));
    Comparator<Term> order = Comparator.comparing(term -> BigFraction.ZERO);
    for (Atom atom : atoms) {
      order = order.thenComparing(term -> term.exponent(atom));
    }
    return sum.terms().stream().max(order).orElseThrow();
  }
}
