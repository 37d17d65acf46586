package plainscale.algebra;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.math3.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import plainscale.quantity.ElementaryFunction;

/**
 * The normal form of an expression: products added up, like ones joined. Sums that are factors stay
 * factors until they are expanded.
 */
final class Sum {
  static final Sum ZERO = of(List.of());
  static final Sum ONE = of(Term.ONE);
  private static final int MOST_TERMS = 200;
  private static final int LONGEST_KEY = 20_000;

  private final List<Term> terms;
  private final String key;
  private final Set<String> names;

  private Sum(List<Term> terms) {
    this.terms = List.copyOf(terms);
    StringBuilder text = new StringBuilder();
    Set<String> all = new TreeSet<>();
    for (Term term : terms) {
      text.append(term.coefficient()).append('*').append(term.key()).append('+');
      term.factors().keySet().forEach(atom -> all.addAll(atom.names()));
    }
    this.key = text.toString();
    this.names = Collections.unmodifiableSet(all);
    if (terms.size() > MOST_TERMS || key.length() > LONGEST_KEY) {
      throw new TooLargeException("The formulas became too long.");
    }
  }

  static Sum of(Term... terms) {
    return of(Arrays.asList(terms));
  }

  static Sum of(Collection<Term> terms) {
    Map<String, Term> like = new TreeMap<>();
    terms.forEach(term -> add(like, term));
    List<Term> kept = new ArrayList<>(like.values());
    kept.removeIf(term -> term.coefficient().equals(BigFraction.ZERO));
    return new Sum(kept);
  }

  /** A number times a sum is spread out. */
  private static void add(Map<String, Term> like, Term term) {
    if (term.factors().size() == 1
        && term.factors().firstKey() instanceof Atom.Group group
        && term.exponent(group).equals(BigFraction.ONE)) {
      group.sum().terms.forEach(inner -> add(like, inner.times(term.coefficient())));
      return;
    }
    like.merge(
        term.key(), term, (a, b) -> new Term(a.coefficient().add(b.coefficient()), a.factors()));
  }

  static Sum number(int number) {
    return of(Term.number(new BigFraction(number)));
  }

  static Sum symbol(String name) {
    return of(Term.of(new Atom.Symbol(name)));
  }

  List<Term> terms() {
    return terms;
  }

  String key() {
    return key;
  }

  Set<String> names() {
    return names;
  }

  /** Whether the function stands anywhere in it. */
  boolean applies(ElementaryFunction function) {
    return key.contains(Atom.Applied.opening(function));
  }

  boolean contains(String name) {
    return names.contains(name);
  }

  boolean isZero() {
    return terms.isEmpty();
  }

  boolean isSingle() {
    return terms.size() == 1;
  }

  /** The only term; of a longer sum, the sum as a factor. */
  Term asTerm() {
    return isSingle() ? terms.get(0) : isZero() ? Term.number(BigFraction.ZERO) : group();
  }

  /** The number, if it is one. */
  Optional<BigFraction> number() {
    if (isZero()) {
      return Optional.of(BigFraction.ZERO);
    }
    return isSingle() && terms.get(0).isNumber()
        ? Optional.of(terms.get(0).coefficient())
        : Optional.empty();
  }

  boolean isSymbol(String name) {
    return equals(symbol(name));
  }

  Sum plus(Sum other) {
    List<Term> all = new ArrayList<>(terms);
    all.addAll(other.terms);
    return of(all);
  }

  Sum minus(Sum other) {
    return plus(other.negate());
  }

  Sum negate() {
    return of(terms.stream().map(term -> term.times(BigFraction.MINUS_ONE)).toList());
  }

  Sum times(Sum other) {
    if (isZero() || other.isZero()) {
      return ZERO;
    }
    return of(asTerm().times(other.asTerm()));
  }

  Sum over(Sum other) {
    return times(other.power(BigFraction.MINUS_ONE));
  }

  /** A power with a numeric exponent. */
  Sum power(BigFraction exponent) {
    if (exponent.equals(BigFraction.ONE)) {
      return this;
    }
    if (isZero() && exponent.doubleValue() <= 0) {
      throw new ArithmeticException("A division by zero.");
    }
    if (isZero() || isSingle()) {
      return isZero() ? this : of(terms.get(0).power(exponent));
    }
    return Rationals.isWhole(exponent) ? of(group().power(exponent)) : root(exponent);
  }

  /** Of the common factors, those leave the root whose exponent is whole outside of it. */
  private Sum root(BigFraction exponent) {
    Term content = group().part(atom -> !(atom instanceof Atom.Group));
    Term atoms = content.part(atom -> Rationals.isWhole(content.exponent(atom).multiply(exponent)));
    BigFraction root = Rationals.power(group().coefficient().abs(), exponent).coefficient();
    boolean exact = Rationals.power(root, exponent.reciprocal()).isNumber();
    BigFraction number = exact ? root : BigFraction.ONE;
    Term outside = atoms.power(exponent).times(number);
    Term removed = atoms.times(Rationals.power(number, exponent.reciprocal()));
    Sum inside = Expansion.of(over(of(removed)));
    return of(outside.times(Term.of(new Atom.Group(inside), exponent)));
  }

  /** The sum as content times a group without common factor, the first term of it positive. */
  private Term group() {
    Term content = terms.get(0);
    for (Term term : terms) {
      content = Term.common(content, term);
    }
    if (terms.get(0).coefficient().doubleValue() < 0) {
      content = content.times(BigFraction.MINUS_ONE);
    }
    Term inverse = content.power(BigFraction.MINUS_ONE);
    Sum rest = of(terms.stream().map(inverse::times).toList());
    if (rest.isZero() || rest.isSingle()) { // brackets may cancel only when they are opened
      return content.times(rest.asTerm());
    }
    if (rest.terms.get(0).coefficient().doubleValue() < 0) {
      content = content.times(BigFraction.MINUS_ONE);
      rest = rest.negate();
    }
    return content.times(Term.of(new Atom.Group(rest)));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Sum sum && sum.key.equals(key);
  }

  @Override
  public int hashCode() {
    return key.hashCode();
  }

  @Override
  public String toString() {
    return key;
  }
}
