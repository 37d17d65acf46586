package plainscale.algebra;

import java.math.BigInteger;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.apache.commons.math3.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import plainscale.quantity.ElementaryFunction;

/** A product: a rational number times powers of atoms with rational exponents. */
final class Term {
  static final Term ONE = number(BigFraction.ONE);
  private static final int MOST_BITS = 512;

  private final BigFraction coefficient;
  private final SortedMap<Atom, BigFraction> factors;

  /** The product without its number; made when it is first asked for, since many terms are not. */
  private @Nullable String key;

  Term(BigFraction coefficient, SortedMap<Atom, BigFraction> factors) {
    this.coefficient = coefficient;
    this.factors = Collections.unmodifiableSortedMap(factors);
    if (coefficient.getNumerator().bitLength() + coefficient.getDenominator().bitLength()
        > MOST_BITS) {
      throw new TooLargeException("The numbers became too long.");
    }
  }

  static Term number(BigFraction number) {
    return new Term(number, new TreeMap<>());
  }

  static Term of(Atom atom, BigFraction exponent) {
    return new Term(BigFraction.ONE, new TreeMap<>(Map.of(atom, exponent)));
  }

  static Term of(Atom atom) {
    return of(atom, BigFraction.ONE);
  }

  boolean isNumber() {
    return factors.isEmpty();
  }

  boolean isOne() {
    return isNumber() && coefficient.equals(BigFraction.ONE);
  }

  boolean contains(String name) {
    return factors.keySet().stream().anyMatch(atom -> atom.contains(name));
  }

  /** The exponent of an atom; zero if it is no factor. */
  BigFraction exponent(Atom atom) {
    return factors.getOrDefault(atom, BigFraction.ZERO);
  }

  BigFraction coefficient() {
    return coefficient;
  }

  SortedMap<Atom, BigFraction> factors() {
    return factors;
  }

  /** The product without its number, as a text that is the same for equal products only. */
  String key() {
    String made = key;
    if (made == null) {
      StringBuilder text = new StringBuilder();
      factors.forEach((atom, e) -> text.append(atom.key()).append('^').append(e).append(' '));
      made = text.toString();
      key = made;
    }
    return made;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Term term
        && coefficient.equals(term.coefficient)
        && key().equals(term.key());
  }

  @Override
  public int hashCode() {
    return 31 * coefficient.hashCode() + key().hashCode();
  }

  @Override
  public String toString() {
    return coefficient + "*" + key();
  }

  Term times(BigFraction number) {
    return new Term(coefficient.multiply(number), factors);
  }

  Term times(Term other) {
    SortedMap<Atom, BigFraction> product = new TreeMap<>(factors);
    other.factors.forEach((atom, e) -> product.merge(atom, e, BigFraction::add));
    product.values().removeIf(BigFraction.ZERO::equals);
    return withoutWholePowers(coefficient.multiply(other.coefficient), product);
  }

  /** The part of the exponent of a whole number that is whole goes to the coefficient. */
  private static Term withoutWholePowers(
      BigFraction coefficient, SortedMap<Atom, BigFraction> factors) {
    BigFraction number = coefficient;
    for (Map.Entry<Atom, BigFraction> factor : Map.copyOf(factors).entrySet()) {
      if (factor.getKey() instanceof Atom.Whole whole) {
        int floor = (int) Math.floor(factor.getValue().doubleValue());
        number = number.multiply(new BigFraction(whole.number()).pow(floor));
        BigFraction rest = factor.getValue().subtract(floor);
        if (rest.equals(BigFraction.ZERO)) {
          factors.remove(whole);
        } else {
          factors.put(whole, rest);
        }
      }
    }
    return new Term(number, factors);
  }

  Term over(Term other) {
    return times(other.power(BigFraction.MINUS_ONE));
  }

  /** The factors that pass the test, without the number. */
  Term part(Predicate<Atom> test) {
    SortedMap<Atom, BigFraction> part = new TreeMap<>(factors);
    part.keySet().removeIf(test.negate());
    return new Term(BigFraction.ONE, part);
  }

  /** The power of the product, for exponents that are whole numbers, roots, or both. */
  Term power(BigFraction exponent) {
    if (isNumber() && coefficient.equals(BigFraction.ZERO) && exponent.doubleValue() <= 0) {
      throw new ArithmeticException("A division by zero.");
    }
    if (coefficient.doubleValue() < 0 && Rationals.isEven(exponent.getDenominator())) {
      return of(new Atom.Group(Sum.of(this)), exponent);
    }
    Term power = Rationals.power(coefficient, exponent);
    for (Map.Entry<Atom, BigFraction> factor : factors.entrySet()) {
      power = power.times(power(factor.getKey(), factor.getValue(), exponent));
    }
    return power;
  }

  /** (a²)^½ is |a|. */
  private static Term power(Atom atom, BigFraction inner, BigFraction outer) {
    BigFraction exponent = inner.multiply(outer);
    boolean losesSign =
        Rationals.isWhole(inner)
            && Rationals.isEven(inner.getNumerator())
            && !(Rationals.isWhole(exponent) && Rationals.isEven(exponent.getNumerator()));
    if (!losesSign || atom.positive()) {
      return of(atom, exponent);
    }
    Sum argument = Sum.of(of(atom));
    return of(new Atom.Applied(ElementaryFunction.ABS, argument), exponent);
  }

  /** The least exponents of two products: their common factors over their common denominator. */
  static Term common(Term a, Term b) {
    SortedMap<Atom, BigFraction> common = new TreeMap<>();
    for (Term term : List.of(a, b)) {
      for (Atom atom : term.factors.keySet()) {
        BigFraction e = a.exponent(atom);
        BigFraction other = b.exponent(atom);
        common.put(atom, e.compareTo(other) <= 0 ? e : other);
      }
    }
    common.values().removeIf(BigFraction.ZERO::equals);
    BigInteger above =
        a.coefficient.getNumerator().gcd(b.coefficient.getNumerator()).max(BigInteger.ONE);
    BigInteger below = a.coefficient.getDenominator().gcd(b.coefficient.getDenominator());
    BigInteger lcm =
        a.coefficient.getDenominator().divide(below).multiply(b.coefficient.getDenominator());
    common.keySet().removeIf(Atom.Whole.class::isInstance);
    return new Term(new BigFraction(above, lcm), common);
  }
}
