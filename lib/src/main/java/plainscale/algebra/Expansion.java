package plainscale.algebra;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.fraction.BigFraction;

/** Multiplying out: sums that are factors with a whole positive exponent. */
final class Expansion {
  private static final int HIGHEST = 8;

  private Expansion() {}

  /** The sum without such factors. */
  static Sum of(Sum sum) {
    Sum before = sum;
    Sum after = once(before);
    while (!after.equals(before)) {
      before = after;
      after = once(before);
    }
    return after;
  }

  private static Sum once(Sum sum) {
    List<Term> all = new ArrayList<>();
    sum.terms().forEach(term -> all.addAll(of(term).terms()));
    return Sum.of(all);
  }

  private static Sum of(Term term) {
    Term rest = term.part(atom -> !opens(atom, term)).times(term.coefficient());
    Sum product = Sum.of(rest);
    for (Map.Entry<Atom, BigFraction> factor : term.factors().entrySet()) {
      if (opens(factor.getKey(), term)) {
        Sum inner = ((Atom.Group) factor.getKey()).sum();
        for (int i = 0; i < factor.getValue().getNumeratorAsInt(); i++) {
          product = product(product, inner);
        }
      }
    }
    return product;
  }

  private static boolean opens(Atom atom, Term term) {
    BigFraction exponent = term.exponent(atom);
    return atom instanceof Atom.Group
        && Rationals.isWhole(exponent)
        && exponent.doubleValue() > 0
        && exponent.doubleValue() <= HIGHEST;
  }

  /** Every term times every term. */
  static Sum product(Sum a, Sum b) {
    List<Term> all = new ArrayList<>();
    a.terms().forEach(left -> b.terms().forEach(right -> all.add(left.times(right))));
    return Sum.of(all);
  }
}
