package plainscale.quantity;

import static plainscale.quantity.QuantityException.Fault.UNIT;
import static plainscale.quantity.QuantityException.Fault.VALUE;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plainscale.units.Kind;
import plainscale.units.Kinds;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/**
 * A physical quantity: a value in the coherent SI unit of its kind (a temperature in kelvin, an
 * angle in radians), its uncertainty by source, the figures that were written, and the unit in
 * which it was written or asked for.
 *
 * <p>A reading of a temperature scale (°C, °F) is a point on the scale, not an amount: two readings
 * have a difference but no sum, and no product until they are turned into kelvins.
 *
 * <p>Every operation throws {@link QuantityException} with a sentence where it has no result.
 */
public final class Quantity implements Arithmetic {
  private static final UnitOfMeasure DEGREE = UnitParser.parse("°");

  private final BigDecimal value;
  private final Kind kind;
  private final Uncertainty uncertainty;
  private final Figures figures;
  private final @Nullable UnitOfMeasure unit;
  private final @Nullable Shown asWritten;

  private Quantity(
      BigDecimal value,
      Kind kind,
      Uncertainty uncertainty,
      Figures figures,
      @Nullable UnitOfMeasure unit) {
    this(Decimals.inRange(value), kind, uncertainty, figures, unit, null);
  }

  private Quantity(
      BigDecimal value,
      Kind kind,
      Uncertainty uncertainty,
      Figures figures,
      @Nullable UnitOfMeasure unit,
      @Nullable Shown asWritten) {
    this.value = value;
    this.kind = kind;
    this.uncertainty = uncertainty;
    this.figures = figures;
    this.unit = unit;
    this.asWritten = asWritten;
  }

  /** An exact plain number. */
  public static Quantity number(BigDecimal value) {
    return new Quantity(value, Kind.NUMBER, Uncertainty.NONE, Figures.EXACT, null);
  }

  /**
   * An exact plain number that is shown as it was written: 4.70E+13 with three figures, 0.50 with
   * two. What is computed from it is exact.
   */
  public static Quantity literal(BigDecimal value) {
    BigDecimal inRange = Decimals.inRange(value);
    Shown shown = new Shown(value, null, UnitOfMeasure.ONE);
    boolean whole = value.scale() == 0;
    return new Quantity(
        inRange, Kind.NUMBER, Uncertainty.NONE, Figures.EXACT, null, whole ? null : shown);
  }

  /** A root that was found by numbers, in the coherent unit of its kind. */
  public static Quantity solved(double value, Kind kind) {
    return new Quantity(Decimals.from(value), kind, Uncertainty.NONE, Figures.EXACT, null);
  }

  /** The same value with the figures that a product of these inputs would keep. */
  public Quantity keeping(List<Quantity> inputs) {
    Figures kept = figures;
    for (Quantity input : inputs) {
      kept = Figures.ofProduct(value, kept, input.figures);
    }
    return new Quantity(value, kind, uncertainty, kept, unit);
  }

  /** The same value with an uncertainty that comes from elsewhere. */
  public Quantity because(Uncertainty other) {
    return new Quantity(value, kind, other, figures, unit);
  }

  /** The same number of the coherent unit of another kind; a reading becomes kelvins. */
  public Quantity asKind(Kind other) {
    return new Quantity(value, other, uncertainty, figures, null);
  }

  /**
   * The same measurement under another name, which is what a budget then calls it by; what is
   * computed from others stays as it is.
   */
  public Quantity called(String name) {
    return new Quantity(value, kind, uncertainty.called(name), figures, unit, asWritten);
  }

  /** An exact amount of a unit. */
  public static Quantity exact(BigDecimal value, UnitOfMeasure unit) {
    return new Quantity(unit.toCoherent(value), unit.kind(), Uncertainty.NONE, Figures.EXACT, unit);
  }

  /** A value as written, without stated uncertainty: its figures are its digits. */
  public static Quantity written(BigDecimal value, UnitOfMeasure unit) {
    Shown shown = new Shown(value, null, unit);
    BigDecimal coherent = Decimals.inRange(unit.toCoherent(value));
    Figures inUnit = Figures.of(value).inUnit(unit.factor().doubleValue());
    Figures figures = unit.isScale() ? ofReading(coherent, inUnit.step()) : inUnit;
    return new Quantity(coherent, unit.kind(), Uncertainty.NONE, figures, unit, shown);
  }

  /** A degree Fahrenheit, 5/9 K, counts as one kelvin and not as tenths. */
  private static Figures ofReading(BigDecimal kelvins, double step) {
    return Figures.stepped(kelvins, Math.pow(10, Math.rint(Math.log10(step))));
  }

  /**
   * A measured value with its standard uncertainty, both in {@code unit}. The measurement becomes a
   * source of uncertainty of that name; its figures are covered by the uncertainty.
   */
  public static Quantity measured(
      String name, BigDecimal value, BigDecimal uncertainty, UnitOfMeasure unit) {
    double standard = uncertainty.doubleValue() * Math.abs(unit.factor().doubleValue());
    Source source = new Source(name, standard);
    BigDecimal coherent = Decimals.inRange(unit.toCoherent(value));
    Shown shown = Shown.asWritten(value, uncertainty, unit).orElse(null);
    Uncertainty by = standard == 0 ? Uncertainty.NONE : Uncertainty.of(source);
    return new Quantity(coherent, unit.kind(), by, Figures.EXACT, unit, shown);
  }

  /** An estimate whose possible values have limits at that half-width, both in its unit. */
  public static Quantity limited(Estimate estimate, Distribution distribution) {
    UnitOfMeasure unit = estimate.unit();
    double written = estimate.halfWidth().doubleValue() * Math.abs(unit.factor().doubleValue());
    Source source = new Source(estimate.name(), distribution.standard(written), distribution);
    Uncertainty by = written == 0 ? Uncertainty.NONE : Uncertainty.of(source);
    return estimated(estimate.value(), by, unit);
  }

  /** A named value and the half-width of its limits, both in {@code unit}. */
  public record Estimate(String name, BigDecimal value, BigDecimal halfWidth, UnitOfMeasure unit) {}

  /**
   * A value in {@code unit} whose uncertainty is known by source in the coherent SI unit; its
   * figures are covered by it.
   */
  public static Quantity estimated(BigDecimal value, Uncertainty by, UnitOfMeasure unit) {
    return new Quantity(unit.toCoherent(value), unit.kind(), by, Figures.EXACT, unit);
  }

  /** The value in the coherent SI unit. */
  public BigDecimal value() {
    return value;
  }

  /** The value as a number of some unit of its kind, for computing in doubles. */
  public double valueIn(String unit) {
    Quantity other = in(unit);
    return other.displayUnit().fromCoherent(value).doubleValue();
  }

  /** The standard uncertainty as a number of some unit of its kind; 0 if it has none. */
  public double uncertaintyIn(String unit) {
    return uncertainty.standard() / Math.abs(in(unit).displayUnit().factor().doubleValue());
  }

  /** What is measured. */
  public Kind kind() {
    return kind;
  }

  /** The uncertainty by source. */
  public Uncertainty uncertainty() {
    return uncertainty;
  }

  /** The figures that the written inputs justify, stated uncertainties aside. */
  public Figures figures() {
    return figures;
  }

  /** The unit in which it was written or asked for. */
  public Optional<UnitOfMeasure> unit() {
    return Optional.ofNullable(unit);
  }

  /** Whether it is a point on a temperature scale. */
  public boolean isReading() {
    return unit != null && unit.isScale();
  }

  /** Rounded for display, in its own unit or else in the usual one of its kind. */
  public Shown shown() {
    return asWritten != null ? asWritten : Rounding.shown(this, displayUnit());
  }

  /** The unit of {@link #shown()}. */
  public UnitOfMeasure displayUnit() {
    return unit != null ? unit : coherentUnit();
  }

  private UnitOfMeasure coherentUnit() {
    return kind.angle() ? DEGREE : Kinds.of(kind).unit();
  }

  /** Rounded to that many figures, the inputs notwithstanding. */
  public Shown shown(int toFigures) {
    UnitOfMeasure in = displayUnit();
    double u = uncertainty.standard() / Math.abs(in.factor().doubleValue());
    return Rounding.toFigures(
        in.fromCoherent(value), u == 0 ? null : Decimals.from(u), in, toFigures);
  }

  /**
   * The same quantity, to be shown in another unit of its kind; a scale reading becomes an amount
   * in kelvins.
   */
  @Override
  public Quantity in(UnitOfMeasure other) {
    if (other.equals(unit) || (asWritten != null && other.equals(displayUnit()))) {
      return this;
    }
    if (!kind.equals(other.kind())) {
      throw Mismatch.conversion(this, other);
    }
    return new Quantity(value, kind, uncertainty, figures, other);
  }

  /** The sum. */
  @Override
  public Quantity plus(Quantity other) {
    Mismatch.refuse("adding", "to", this, other);
    if (isReading() && other.isReading()) {
      throw new QuantityException(
          UNIT,
          "You are adding two readings of a temperature scale; they have no sum.",
          "write one of them as a difference, in K");
    }
    return sum(other, 1, isReading() ? unit : other.isReading() ? other.unit : common(other));
  }

  /** The difference; of two scale readings it is an amount in kelvins. */
  @Override
  public Quantity minus(Quantity other) {
    Mismatch.refuse("subtracting", "from", other, this);
    UnitOfMeasure in =
        other.isReading() ? Kinds.of(kind).unit() : isReading() ? unit : common(other);
    return sum(other, -1, in);
  }

  private Quantity sum(Quantity other, int sign, @Nullable UnitOfMeasure in) {
    BigDecimal result = Decimals.sum(value, sign > 0 ? other.value : other.value.negate());
    Uncertainty by = Uncertainty.combine(1, uncertainty, sign, other.uncertainty);
    return new Quantity(result, kind, by, Figures.ofSum(result, figures, other.figures), in);
  }

  /** The unit that both were written in, if it is one and the same. */
  private @Nullable UnitOfMeasure common(Quantity other) {
    return unit != null && unit.equals(other.unit) ? unit : null;
  }

  /** The product. */
  @Override
  public Quantity times(Quantity other) {
    refuseReading();
    other.refuseReading();
    BigDecimal result = value.multiply(other.value, Decimals.DIGITS);
    Uncertainty by =
        Uncertainty.combine(asDouble(other.value), uncertainty, asDouble(value), other.uncertainty);
    Figures kept = Figures.ofProduct(result, figures, other.figures);
    return new Quantity(result, kind.times(other.kind), by, kept, keptUnit(other));
  }

  /** A plain exact factor leaves the unit: twice 14.0 cm is 28.0 cm. */
  private @Nullable UnitOfMeasure keptUnit(Quantity other) {
    if (other.kind.isNumber() && other.figures.exact() && other.unit == null) {
      return unit;
    }
    return kind.isNumber() && figures.exact() && unit == null ? other.unit : null;
  }

  /** The quotient. */
  @Override
  public Quantity over(Quantity other) {
    refuseReading();
    other.refuseReading();
    if (other.value.signum() == 0) {
      throw new QuantityException(VALUE, "You are dividing by zero.");
    }
    BigDecimal result = value.divide(other.value, Decimals.DIGITS);
    double y = asDouble(other.value);
    Uncertainty by =
        Uncertainty.combine(1 / y, uncertainty, -asDouble(result) / y, other.uncertainty);
    Figures kept = Figures.ofProduct(result, figures, other.figures);
    boolean plain = other.kind.isNumber() && other.figures.exact() && other.unit == null;
    return new Quantity(result, kind.over(other.kind), by, kept, plain ? unit : null);
  }

  /** The opposite. */
  public Quantity negate() {
    refuseReading();
    return new Quantity(value.negate(), kind, uncertainty.times(-1), figures, unit);
  }

  /** The power; {@link Powers} has the rules. */
  @Override
  public Quantity power(Quantity exponent) {
    refuseReading();
    exponent.refuseReading();
    return Powers.of(this, exponent);
  }

  /** The value of an elementary function. */
  @Override
  public Quantity apply(ElementaryFunction function) {
    refuseReading();
    return Functions.apply(function, this);
  }

  private void refuseReading() {
    if (isReading()) {
      String reading = shown().value().toPlainString() + " " + displayUnit();
      throw new QuantityException(
          UNIT,
          reading + " is a point on a scale; a product or a power of it has no meaning.",
          "as an absolute temperature, in brackets: (… in K)",
          "as a difference of temperatures: write it in K");
    }
  }

  static Quantity computed(BigDecimal value, Kind kind, Uncertainty uncertainty, Figures figures) {
    return new Quantity(value, kind, uncertainty, figures, null);
  }

  private static double asDouble(BigDecimal value) {
    return value.doubleValue();
  }

  @Override
  public String toString() {
    return PlainText.of(shown());
  }
}
