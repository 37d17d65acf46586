package plainscale.algebra;

import org.apache.commons.math3.fraction.BigFraction;

/** Differences in products turned so that few minus signs are left: −(a − b) is b − a. */
final class Signs {
  private Signs() {}

  static Term tidy(Term term) {
    Term result = term;
    for (Atom atom : term.factors().keySet()) {
      if (minuses(atom, term) > 0) {
        result = turned(result, atom);
      }
    }
    for (Atom atom : result.factors().keySet()) {
      if (result.coefficient().doubleValue() < 0 && isDifference(atom, result)) {
        result = turned(result, atom);
      }
    }
    return result;
  }

  /** How many more of the terms of an odd power of a sum have a minus than a plus. */
  private static int minuses(Atom atom, Term term) {
    if (!isOddGroup(atom, term)) {
      return 0;
    }
    int minuses = 0;
    for (Term inner : ((Atom.Group) atom).sum().terms()) {
      minuses += inner.coefficient().doubleValue() < 0 ? 1 : -1;
    }
    return minuses;
  }

  private static boolean isDifference(Atom atom, Term term) {
    return isOddGroup(atom, term) && minuses(atom, term) == 0;
  }

  private static boolean isOddGroup(Atom atom, Term term) {
    BigFraction exponent = term.exponent(atom);
    boolean odd = Rationals.isWhole(exponent) && !Rationals.isEven(exponent.getNumerator());
    return atom instanceof Atom.Group group && odd && group.sum().terms().size() > 1;
  }

  private static Term turned(Term term, Atom atom) {
    BigFraction exponent = term.exponent(atom);
    Atom other = new Atom.Group(((Atom.Group) atom).sum().negate());
    Term rest = term.part(a -> a.compareTo(atom) != 0);
    Term turned = rest.times(Term.of(other, exponent));
    return turned.times(term.coefficient().negate());
  }
}
