package plainscale.field;

/**
 * Complete elliptic integrals by the arithmetic-geometric mean. The general one is R. Bulirsch's
 * cel, "Numerical calculation of elliptic integrals and elliptic functions III", Numerische
 * Mathematik 13:305 (1969): with k′ the complementary modulus,
 *
 * <p>cel(k′, p, a, b) = ∫₀^{π/2} (a cos²φ + b sin²φ) / ((cos²φ + p sin²φ) √(cos²φ + k′² sin²φ)) dφ
 */
final class Elliptic {
  private static final double CLOSE = 1e-8;
  private static final int MOST_ROUNDS = 80;

  private Elliptic() {}

  /** The arithmetic-geometric mean of two positive numbers; zero if one is zero. */
  static double mean(double a, double b) {
    double arithmetic = a;
    double geometric = b;
    for (int round = 0; round < MOST_ROUNDS && geometric != 0; round++) {
      double next = (arithmetic + geometric) / 2;
      if (Math.abs(arithmetic - geometric) <= CLOSE * next) {
        return next;
      }
      geometric = Math.sqrt(arithmetic * geometric);
      arithmetic = next;
    }
    return 0;
  }

  /** K by the complementary modulus k′. */
  static double k(double complement) {
    return cel(complement, 1, 1, 1);
  }

  /** E by the complementary modulus k′. */
  static double e(double complement) {
    return cel(complement, 1, 1, complement * complement);
  }

  /** Bulirsch's integral for k′ &gt; 0 and p = {@code rootOfP}² &gt; 0. */
  static double cel(double complement, double rootOfP, double a, double b) {
    double k = complement;
    double p = rootOfP;
    double product = k;
    double mean = 1;
    double c = a;
    double s = b / p;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double before = c;
      double g = product / p;
      c += s / p;
      s = 2 * (s + before * g);
      p += g;
      double last = mean;
      mean += k;
      if (Math.abs(last - k) <= CLOSE * last) {
        break;
      }
      k = 2 * Math.sqrt(product);
      product = k * mean;
    }
    return Math.PI / 2 * (s + c * mean) / (mean * (mean + p));
  }
}
