package plainscale.quantity;

import java.math.BigDecimal;

/**
 * How much of a value was written: the number of significant figures, and the worth of one unit of
 * the last written digit in the coherent SI unit. Products keep the smaller number of figures, sums
 * the larger step (the usual school rules; OpenStax College Physics 2e, section 1.3, states both).
 */
public record Figures(int count, double step) {
  /** A number that counts or defines: it limits nothing. */
  public static final Figures EXACT = new Figures(Integer.MAX_VALUE, 0);

  /**
   * The figures of a decimal as written; every written digit counts, so 50 has two and 0.050 has
   * two.
   */
  public static Figures of(BigDecimal written) {
    return new Figures(
        written.signum() == 0 ? 1 : written.precision(), Math.pow(10, -written.scale()));
  }

  /** Whether nothing is limited. */
  public boolean exact() {
    return count == Integer.MAX_VALUE;
  }

  /** The same figures in another unit. */
  public Figures inUnit(double factor) {
    return exact() ? this : new Figures(count, step * Math.abs(factor));
  }

  /** The figures of a product or quotient. */
  static Figures ofProduct(BigDecimal result, Figures x, Figures y) {
    int count = Math.min(x.count, y.count);
    return count == Integer.MAX_VALUE ? EXACT : counted(result, count);
  }

  /** The figures of a sum or difference; a difference may keep none (count zero or less). */
  static Figures ofSum(BigDecimal result, Figures x, Figures y) {
    return x.exact() && y.exact() ? EXACT : stepped(result, Math.max(x.step, y.step));
  }

  /** That many figures of a value. */
  static Figures counted(BigDecimal value, int count) {
    return new Figures(count, Math.pow(10, Decimals.exponent(value) - count + 1));
  }

  /** The figures that are left when the last certain digit is worth {@code step}. */
  static Figures stepped(BigDecimal value, double step) {
    return new Figures(Decimals.exponent(value) - place(step) + 1, step);
  }

  /** The power of ten of a step, with a little room for binary dust. */
  static int place(double step) {
    return (int) Math.floor(Math.log10(step) + 1e-9);
  }
}
