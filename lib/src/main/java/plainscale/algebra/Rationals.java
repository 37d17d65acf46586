package plainscale.algebra;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.math3.fraction.BigFraction;

/** Exact numbers: decimals as fractions, and roots of fractions. */
final class Rationals {
  private static final int LARGEST_PRIME = 1000;
  private static final int MOST_DIGITS = 60;
  private static final int LARGEST_EXPONENT = 60;

  private Rationals() {}

  static BigFraction of(BigDecimal value) {
    BigDecimal plain = value.stripTrailingZeros();
    if (Math.abs(plain.scale()) > MOST_DIGITS || plain.precision() > MOST_DIGITS) {
      throw new TooLargeException("A number has too many digits.");
    }
    return plain.scale() <= 0
        ? new BigFraction(plain.toBigIntegerExact())
        : new BigFraction(plain.unscaledValue(), BigInteger.TEN.pow(plain.scale()));
  }

  static boolean isWhole(BigFraction number) {
    return number.getDenominator().equals(BigInteger.ONE);
  }

  static boolean isEven(BigInteger number) {
    return !number.testBit(0);
  }

  /** A power of a number; what stays under a root becomes atoms, by primes. */
  static Term power(BigFraction base, BigFraction exponent) {
    if (base.equals(BigFraction.ONE)) {
      return Term.ONE;
    }
    if (Math.abs(exponent.doubleValue()) > LARGEST_EXPONENT) {
      throw new TooLargeException("An exponent is too large.");
    }
    if (isWhole(exponent)) {
      return Term.number(base.pow(exponent.getNumeratorAsInt()));
    }
    if (base.equals(BigFraction.ZERO)) {
      return Term.number(BigFraction.ZERO);
    }
    boolean negative = base.getNumerator().signum() < 0;
    boolean odd = negative && !isEven(exponent.getNumerator());
    Term above = power(base.getNumerator().abs(), exponent);
    Term below = power(base.getDenominator(), exponent.negate());
    Term size = above.times(below);
    return odd ? size.times(BigFraction.MINUS_ONE) : size;
  }

  private static Term power(BigInteger base, BigFraction exponent) {
    Term power = Term.ONE;
    for (var factor : primes(base).entrySet()) {
      BigFraction e = exponent.multiply(factor.getValue());
      SortedMap<Atom, BigFraction> whole = new TreeMap<>();
      whole.put(new Atom.Whole(factor.getKey()), e);
      power = power.times(new Term(BigFraction.ONE, whole));
    }
    return power;
  }

  /** Small primes; what is left of a large number counts as one factor. */
  private static SortedMap<BigInteger, Integer> primes(BigInteger number) {
    SortedMap<BigInteger, Integer> primes = new TreeMap<>();
    BigInteger rest = number;
    for (int p = 2; p < LARGEST_PRIME; p++) {
      BigInteger prime = BigInteger.valueOf(p);
      while (rest.mod(prime).signum() == 0) {
        primes.merge(prime, 1, Integer::sum);
        rest = rest.divide(prime);
      }
    }
    if (!rest.equals(BigInteger.ONE)) {
      primes.merge(rest, 1, Integer::sum);
    }
    return primes;
  }
}
