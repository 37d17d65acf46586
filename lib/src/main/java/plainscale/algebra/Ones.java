package plainscale.algebra;

import static plainscale.quantity.ElementaryFunction.COS;
import static plainscale.quantity.ElementaryFunction.SIN;

import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.fraction.BigFraction;

/** The same factor before the square of a sine and that of the cosine: the factor alone is left. */
final class Ones {
  private Ones() {}

  /** The sum after that, also in sums that are factors; the same if there is nothing to do. */
  static Sum in(Sum sum, String name) {
    if (!sum.applies(SIN) || !sum.applies(COS)) {
      return sum;
    }
    Sum result = Sum.ZERO;
    for (Term term : sum.terms()) {
      result = result.plus(in(term, name));
    }
    Optional<Sum> shorter = pair(result, name);
    return shorter.isPresent() ? in(shorter.get(), name) : result;
  }

  private static Sum in(Term term, String name) {
    Sum product = Sum.of(Term.number(term.coefficient()));
    for (Map.Entry<Atom, BigFraction> factor : term.factors().entrySet()) {
      boolean opens = factor.getKey() instanceof Atom.Group && factor.getKey().contains(name);
      Sum base =
          opens ? in(((Atom.Group) factor.getKey()).sum(), name) : Sum.of(Term.of(factor.getKey()));
      product = product.times(base.power(factor.getValue()));
    }
    return product;
  }

  private static Optional<Sum> pair(Sum sum, String name) {
    for (Term term : sum.terms()) {
      for (Atom atom : term.factors().keySet()) {
        if (atom instanceof Atom.Applied sine
            && sine.function() == SIN
            && sine.contains(name)
            && term.exponent(sine).equals(BigFraction.TWO)) {
          Term factor = term.over(Term.of(sine, BigFraction.TWO));
          Term square = Term.of(new Atom.Applied(COS, sine.argument()), BigFraction.TWO);
          Term other = factor.times(square);
          if (sum.terms().contains(other)) {
            return Optional.of(sum.minus(Sum.of(term, other)).plus(Sum.of(factor)));
          }
        }
      }
    }
    return Optional.empty();
  }
}
