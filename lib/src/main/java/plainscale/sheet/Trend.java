package plainscale.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * What a sequence of numbers does whose distance from the limit falls to a tenth from each to the
 * next. The ratio of successive differences tells the power by which it approaches or grows;
 * Aitken's Δ² extrapolates the limit, and how fast that settles says how well it is known.
 *
 * @param exponent the power of the distance by which it goes to zero or grows
 * @param number the limit, or the last difference of what grows as a logarithm does
 * @param error of the limit, estimated
 */
public record Trend(Kind kind, double exponent, double number, double error) {

  /** The kinds of endings. */
  public enum Kind {
    /** What approaches does not stand in it. */
    NOT_CONTAINED,
    /** It is the same all the way. */
    SAME,
    /** It tends to a number. */
    LIMIT,
    /** It goes to zero by a power. */
    ZERO,
    /** It goes to zero faster than by a power. */
    QUICKLY_ZERO,
    /** It grows by a power. */
    GROWS,
    /** It grows faster than by a power. */
    QUICKLY_GROWS,
    /** It grows by as much in every row, as a logarithm does. */
    SLOWLY,
    /** Nothing can be said. */
    UNCLEAR
  }

  /** A number, and by how much rounding may have moved it. */
  record Sample(double value, double noise) {}

  private static final Trend UNCLEAR = new Trend(Kind.UNCLEAR, Double.NaN, Double.NaN, Double.NaN);
  private static final int FEWEST = 4;
  private static final double SAME = 1e-12;
  private static final double ROUNDING = 1e-14; // functions keep fifteen digits
  private static final double ABOVE_NOISE = 10;
  private static final double SETTLED = 0.02;

  /** Differences that fall so fast add up to less than the last of them, by whatever law. */
  private static final double CONTRACTING = 0.2;

  private static final double PLACE = 5;
  private static final double STEEP = 12;
  private static final double STEEPER = 1.5;

  /** The trend of the samples, the farthest first. */
  static Trend of(List<Sample> samples) {
    double[] f = samples.stream().mapToDouble(Sample::value).toArray();
    Kind quickly = quickly(f);
    if (quickly != Kind.UNCLEAR) {
      return new Trend(quickly, Double.NaN, Double.NaN, Double.NaN);
    }
    if (f.length < FEWEST) {
      return UNCLEAR;
    }
    if (isSame(f)) {
      return new Trend(Kind.SAME, 0, f[f.length - 1], 0);
    }
    int last = lastDifference(samples);
    return last == f.length - 2 ? bySettling(samples, f) : settled(samples, f, last);
  }

  private static boolean isSame(double[] f) {
    double largest = 0;
    double spread = 0;
    for (double value : f) {
      largest = Math.max(largest, Math.abs(value));
      spread = Math.max(spread, Math.abs(value - f[0]));
    }
    return spread <= SAME * largest;
  }

  /** By a power that itself grows from row to row. */
  private static Kind quickly(double[] f) {
    List<Double> powers = new ArrayList<>();
    for (int i = 1; i < f.length; i++) {
      powers.add(exponent(f[i] / f[i - 1]));
    }
    int n = powers.size();
    double last = n > 0 ? powers.get(n - 1) : Double.NaN;
    boolean steep = Math.abs(last) >= STEEP;
    boolean steeper = n < 2 || Math.abs(last) > STEEPER * Math.abs(powers.get(n - 2));
    if (!steep || !steeper) {
      return Kind.UNCLEAR;
    }
    return last > 0 ? Kind.QUICKLY_ZERO : Kind.QUICKLY_GROWS;
  }

  /** The power of the distance by which something changes by that factor in one row. */
  private static double exponent(double ratio) {
    return -Math.log10(Math.abs(ratio));
  }

  /** The index of the last difference that is more than rounding; −1 if none is. */
  private static int lastDifference(List<Sample> samples) {
    int last = -1;
    for (int i = 0; i + 1 < samples.size(); i++) {
      Sample one = samples.get(i);
      Sample next = samples.get(i + 1);
      double size = Math.max(Math.abs(one.value()), Math.abs(next.value()));
      double rounding = ABOVE_NOISE * (one.noise() + next.noise()) + ROUNDING * size;
      last = Math.abs(next.value() - one.value()) > rounding ? i : last;
    }
    return last;
  }

  /** From some row on there are no differences but those of rounding. */
  private static Trend settled(List<Sample> samples, double[] f, int last) {
    boolean falling = last < 1 || Math.abs(f[last + 1] - f[last]) < Math.abs(f[last] - f[last - 1]);
    if (!falling) {
      return UNCLEAR;
    }
    double limit = f[last + 1];
    double error = ABOVE_NOISE * samples.get(last + 1).noise() + ROUNDING * Math.abs(limit);
    for (int i = last + 1; i + 1 < f.length; i++) {
      error = Math.max(error, 2 * Math.abs(f[i + 1] - limit));
    }
    return limited(limit, error);
  }

  private static Trend limited(double limit, double error) {
    return error < 0.5 * Math.abs(limit) ? new Trend(Kind.LIMIT, 0, limit, error) : UNCLEAR;
  }

  private static Trend bySettling(List<Sample> samples, double[] f) {
    int n = f.length;
    double before = (f[n - 2] - f[n - 3]) / (f[n - 3] - f[n - 4]);
    double ratio = (f[n - 1] - f[n - 2]) / (f[n - 2] - f[n - 3]);
    double exponent = exponent(ratio);
    boolean settles = before > 0 && ratio > 0 && near(exponent(before), exponent);
    if (!settles) {
      boolean contracting = Math.abs(before) < CONTRACTING && Math.abs(ratio) < CONTRACTING;
      double error = Math.abs(f[n - 1] - f[n - 2]) + noise(samples, f);
      return contracting ? limited(f[n - 1], error) : UNCLEAR;
    }
    if (exponent < -SETTLED) {
      return new Trend(Kind.GROWS, exponent, Double.NaN, Double.NaN);
    }
    if (exponent <= SETTLED) {
      return new Trend(Kind.SLOWLY, 0, f[n - 1] - f[n - 2], 0);
    }
    double limit = extrapolated(f, n - 1);
    double error = 2 * extrapolationError(f) + noise(samples, f) / (1 - ratio);
    Trend zero = zero(f, limit, error);
    return zero.kind() == Kind.ZERO ? zero : limited(limit, error);
  }

  private static boolean near(double one, double other) {
    return Math.abs(one - other) <= SETTLED;
  }

  private static double noise(List<Sample> samples, double[] f) {
    int n = f.length;
    return ABOVE_NOISE * samples.get(n - 1).noise() + ROUNDING * Math.abs(f[n - 1]);
  }

  /** A limit that is no more than its error, while the values fall by one power. */
  private static Trend zero(double[] f, double limit, double error) {
    int n = f.length;
    double before = exponent(f[n - 2] / f[n - 3]);
    double power = exponent(f[n - 1] / f[n - 2]);
    boolean falls = power > SETTLED && near(before, power);
    boolean small = Math.abs(limit) <= 2 * error && error < 0.1 * Math.abs(f[n - 1]);
    return falls && small ? new Trend(Kind.ZERO, power, 0, error) : UNCLEAR;
  }

  /** Aitken's Δ² from three values, the last of which is at that index. */
  private static double extrapolated(double[] f, int last) {
    double first = f[last - 1] - f[last - 2];
    double second = f[last] - f[last - 1];
    return f[last] - second * second / (second - first);
  }

  /** Each extrapolation is nearer than the one before by about the same factor. */
  private static double extrapolationError(double[] f) {
    int n = f.length;
    double step = Math.abs(extrapolated(f, n - 1) - extrapolated(f, n - 2));
    if (n < FEWEST + 1) {
      return step;
    }
    double before = Math.abs(extrapolated(f, n - 2) - extrapolated(f, n - 3));
    return before > step ? step * step / before : step;
  }

  /** The figures that the error leaves: their last place is five times as large at least. */
  int figures() {
    double places = Math.log10(Math.abs(number)) - Math.log10(PLACE * error);
    return error == 0 ? Integer.MAX_VALUE : (int) Math.floor(places) + 1;
  }
}
