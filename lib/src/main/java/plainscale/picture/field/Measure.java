package plainscale.picture.field;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import plainscale.field.Frame;
import plainscale.magnitude.Digits;
import plainscale.magnitude.PowerOfTen;
import plainscale.magnitude.Prefix;
import plainscale.magnitude.Prefixes;
import plainscale.magnitude.Writing;

/**
 * Numbers in one unit with its prefix: {@code factor} is how many SI units it holds; what is less
 * than {@code dust} (in SI units) is what rounding left of zero.
 */
record Measure(String unit, double factor, double dust, int figures, Writing writing) {
  private static final int FIGURES = 3;
  private static final int MOST_FIGURES = 12;
  private static final double ROUNDING = 1e-9;
  private static final double DUST = 1e-9;
  private static final int LEAST_PLAIN = -4;
  private static final int MOST_PLAIN = 6;

  /** A unit of length is used from twice its size. */
  private static final double FEWEST = 2;

  private record Length(String symbol, int power) {}

  private static final List<Length> LENGTHS =
      List.of(
          new Length("fm", -15),
          new Length("pm", -12),
          new Length("nm", -9),
          new Length("µm", -6),
          new Length("mm", -3),
          new Length("cm", -2),
          new Length("m", 0),
          new Length("km", 3),
          new Length("Mm", 6),
          new Length("Gm", 9),
          new Length("Tm", 12));

  /** The unit of length that suits a frame. */
  static Measure length(Frame frame, Writing writing) {
    double size = Math.max(frame.width(), frame.height());
    double farthest =
        Math.max(
            Math.max(Math.abs(frame.left()), Math.abs(frame.right())),
            Math.max(Math.abs(frame.bottom()), Math.abs(frame.top())));
    return length(size, writing).resolving(farthest, size);
  }

  static Measure length(double size, Writing writing) {
    Length best = LENGTHS.get(0);
    for (Length length : LENGTHS) {
      best = size / Math.pow(10, length.power()) >= FEWEST ? length : best;
    }
    return new Measure(best.symbol(), power(best.power()), DUST * size, FIGURES, writing);
  }

  /** A unit with the prefix that suits a size; kilograms keep theirs. */
  static Measure of(String unit, double size, Writing writing) {
    boolean plain = unit.startsWith("kg") || size == 0 || !Double.isFinite(size);
    Prefix prefix =
        plain
            ? Prefix.NONE
            : Prefixes.choose(new BigDecimal(Math.abs(size)).round(new MathContext(FIGURES)));
    return new Measure(
        prefix.symbol() + unit, power(prefix.power()), DUST * Math.abs(size), FIGURES, writing);
  }

  /** Dividing by a whole power keeps decimals short. */
  private static double power(int exponent) {
    return exponent < 0 ? 1 / Math.pow(10, -exponent) : Math.pow(10, exponent);
  }

  /** With figures enough to tell steps of that size apart in numbers up to a largest. */
  Measure resolving(double largest, double step) {
    double more = Math.ceil(Math.log10(largest / step) - ROUNDING) + 1;
    boolean known = largest > 0 && Double.isFinite(more);
    int enough = known ? (int) Math.max(FIGURES, Math.min(MOST_FIGURES, more)) : FIGURES;
    return new Measure(unit, factor, dust, enough, writing);
  }

  double in(double value) {
    return factor < 1 ? value * Math.rint(1 / factor) : value / factor;
  }

  /** The number alone. */
  String number(double value) {
    return number(Math.abs(value) < dust ? 0 : in(value), figures, writing);
  }

  /** The number with its unit. */
  String text(double value) {
    return Double.isNaN(value) ? "not defined" : number(value) + "\u00a0" + unit;
  }

  /** "(−7 cm, 0 cm)". */
  String place(double x, double y) {
    return "(" + text(x) + ", " + text(y) + ")";
  }

  String place(Vector2D place) {
    return place(place.getX(), place.getY());
  }

  /** A quantity over this unit: "x/cm", "V/(kV/m)". */
  String over(String symbol) {
    return symbol + "/" + (unit.contains("/") ? "(" + unit + ")" : unit);
  }

  /** A number to so many figures, with a power of ten where it is long. */
  static String number(double value, int figures, Writing writing) {
    if (Double.isInfinite(value)) {
      return value > 0 ? "∞" : "−∞";
    }
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(figures)).stripTrailingZeros();
    if (rounded.signum() == 0) {
      return "0";
    }
    int exponent = rounded.precision() - rounded.scale() - 1;
    boolean plain = exponent >= LEAST_PLAIN && exponent <= MOST_PLAIN;
    BigDecimal whole = rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    return plain
        ? Digits.of(whole, writing.digits()).text()
        : PowerOfTen.of(rounded).text(writing.digits());
  }
}
