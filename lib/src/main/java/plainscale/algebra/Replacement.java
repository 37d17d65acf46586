package plainscale.algebra;

import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.fraction.BigFraction;

/** Puts a sum in the place of a power of an atom, wherever that stands. */
final class Replacement {
  private final Atom atom;
  private final BigFraction exponent;
  private final Sum value;

  private Replacement(Atom atom, BigFraction exponent, Sum value) {
    this.atom = atom;
    this.exponent = exponent;
    this.value = value;
  }

  /** The sum after {@code atom^exponent} became {@code value}. */
  static Sum in(Sum sum, Term power, Sum value) {
    Atom atom = power.factors().firstKey();
    return new Replacement(atom, power.exponent(atom), value).in(sum);
  }

  private Sum in(Sum sum) {
    Sum result = Sum.ZERO;
    for (Term term : sum.terms()) {
      Sum product = Sum.of(Term.number(term.coefficient()));
      for (Map.Entry<Atom, BigFraction> factor : term.factors().entrySet()) {
        product = product.times(in(factor.getKey(), factor.getValue()));
      }
      result = result.plus(product);
    }
    return result;
  }

  private Sum in(Atom other, BigFraction power) {
    if (other.compareTo(atom) == 0) {
      BigFraction times = power.divide(exponent);
      if (Rationals.isWhole(times) || exponent.equals(BigFraction.ONE)) {
        return value.power(times);
      }
    }
    return inside(other).orElseGet(() -> Sum.of(Term.of(other))).power(power);
  }

  private Optional<Sum> inside(Atom other) {
    if (other instanceof Atom.Group group) {
      return Optional.of(in(group.sum()));
    }
    if (other instanceof Atom.Applied applied) {
      return Optional.of(Application.of(applied.function(), in(applied.argument())));
    }
    if (other instanceof Atom.Exponential e) {
      return Optional.of(NormalForm.power(in(e.base()), in(e.exponent())));
    }
    return Optional.empty();
  }
}
