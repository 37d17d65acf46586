package plainscale.picture.plot;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.DoubleStream;
import plainscale.magnitude.Digits;
import plainscale.magnitude.PowerOfTen;
import plainscale.magnitude.Writing;

/**
 * An axis: its title is a quantity over its unit (SI Brochure, 9th edition, 5.4.1), its numbers are
 * those of the title. On a logarithmic axis equal distances are equal ratios.
 */
public record Axis(String title, double low, double high, boolean logarithmic) {
  private static final double AIR = 0.04;
  private static final double FLAT = 1e-12;
  private static final double FEW_DECADES = 3.5;
  private static final int[] WITHIN_DECADE = {1, 2, 5};
  private static final int LARGEST_PLAIN = 6;

  /** A place on the axis that has a tick; without a number where the label is empty. */
  public record Tick(double value, String label) {}

  /** An axis that shows all the numbers, with a little air at both ends. */
  public static Axis linear(String title, DoubleStream numbers) {
    DoubleSummaryStatistics range = numbers.summaryStatistics();
    double low = range.getMin();
    double high = range.getMax();
    double size = Math.max(Math.abs(low), Math.abs(high));
    double air = high - low > FLAT * size ? AIR * (high - low) : size == 0 ? 1 : size / 2;
    return new Axis(title, low - air, high + air, false);
  }

  /** The same with zero on it. */
  public static Axis fromZero(String title, DoubleStream numbers) {
    Axis axis = linear(title, DoubleStream.concat(numbers, DoubleStream.of(0)));
    return new Axis(
        title,
        axis.low < 0 && axis.low > -AIR * 2 * axis.high ? 0 : axis.low,
        axis.high > 0 && axis.high < -AIR * 2 * axis.low ? 0 : axis.high,
        false);
  }

  /** A logarithmic axis; the numbers are above zero. */
  public static Axis logarithmic(String title, DoubleStream numbers) {
    Axis powers = linear(title, numbers.map(Math::log10));
    return new Axis(title, Math.pow(10, powers.low), Math.pow(10, powers.high), true);
  }

  /** Where a value stands: 0 at the low end, 1 at the high one. */
  public double at(double value) {
    return logarithmic
        ? Math.log10(value / low) / Math.log10(high / low)
        : (value - low) / (high - low);
  }

  /** Round places for ticks, so many at most with a number. */
  public List<Tick> ticks(int most, Writing writing) {
    return logarithmic ? powers(most, writing) : multiples(most, writing);
  }

  private List<Tick> multiples(int most, Writing writing) {
    BigDecimal step = Steps.atMost(most, high - low);
    return Steps.multiples(step, low, high).stream()
        .map(value -> new Tick(value.doubleValue(), label(value, writing)))
        .toList();
  }

  /** Whole powers of ten; where there are few of them, 2 and 5 times them too. */
  private List<Tick> powers(int most, Writing writing) {
    int first = (int) Math.floor(Math.log10(low));
    int last = (int) Math.ceil(Math.log10(high));
    boolean fine = Math.log10(high / low) <= FEW_DECADES;
    long every = Math.max(1, (long) Math.ceil((last - first) / (double) most));
    List<Tick> ticks = new ArrayList<>();
    for (int power = first; power <= last; power++) {
      for (int round : WITHIN_DECADE) {
        BigDecimal value = BigDecimal.valueOf(round).scaleByPowerOfTen(power);
        boolean inside = value.doubleValue() >= low && value.doubleValue() <= high;
        if (inside && (fine || round == 1)) {
          boolean named = fine || Math.floorMod(power, every) == 0;
          ticks.add(new Tick(value.doubleValue(), named ? label(value, writing) : ""));
        }
      }
    }
    return ticks;
  }

  /** Plain digits where they are short, else the power of ten. */
  private static String label(BigDecimal value, Writing writing) {
    BigDecimal brief = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
    int power = brief.precision() - brief.scale() - 1;
    if (brief.signum() == 0
        || (Math.abs(power) < LARGEST_PLAIN && brief.scale() <= LARGEST_PLAIN)) {
      BigDecimal plain = brief.scale() < 0 ? brief.setScale(0, RoundingMode.UNNECESSARY) : brief;
      return Digits.of(plain, writing.digits()).text();
    }
    BigDecimal mantissa = brief.scaleByPowerOfTen(-power);
    String ten = PowerOfTen.power(power);
    if (mantissa.compareTo(BigDecimal.ONE) == 0) {
      return ten;
    }
    return Digits.of(mantissa, writing.digits()).text() + "\u00a0×\u00a0" + ten;
  }
}
