package plainscale.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Collectors;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import org.jspecify.annotations.Nullable;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.unit.Units;

/**
 * A unit as a person writes it: symbols with exponents ("N·m²/C²"), and the conversion to the
 * coherent SI unit of the same kind: {@code coherent = value × factor + offset}, the offset being
 * zero except for the temperature scales. Values carry 34 decimal digits (IEEE 754 decimal128).
 */
public final class UnitOfMeasure {
  private static final MathContext DIGITS = MathContext.DECIMAL128;

  /** The unit one, of plain numbers. */
  public static final UnitOfMeasure ONE = of(List.of());

  private final List<Factor> factors;
  private final Unit<?> unit;
  private final Kind kind;
  private final BigDecimal factor;
  private final BigDecimal offset;

  /** A symbol to an integer power, as in the s⁻² of m/s². */
  public record Factor(UnitSymbol symbol, int exponent) {}

  private UnitOfMeasure(List<Factor> factors, Unit<?> unit) {
    this.factors = List.copyOf(factors);
    this.unit = unit;
    this.kind = kindOf(unit);
    UnitConverter converter = toCoherent(unit);
    this.offset = decimal(converter.convert(BigDecimal.ZERO));
    this.factor = decimal(converter.convert(BigDecimal.ONE)).subtract(offset, DIGITS);
  }

  /** The product of these factors. */
  public static UnitOfMeasure of(List<Factor> factors) {
    Unit<?> unit = AbstractUnit.ONE;
    for (Factor f : factors) {
      Unit<?> power = f.exponent() == 1 ? f.symbol().unit() : f.symbol().unit().pow(f.exponent());
      unit = unit == AbstractUnit.ONE ? power : unit.multiply(power);
    }
    return new UnitOfMeasure(factors, unit);
  }

  private static Kind kindOf(Unit<?> unit) {
    return new Kind(unit.getDimension(), unit.getSystemUnit().equals(Units.RADIAN));
  }

  @SuppressWarnings({
    "unchecked",
    "rawtypes"
  }) // the library's types ask for a dimension that is known at run time only
  private static UnitConverter toCoherent(Unit<?> unit) {
    return ((Unit) unit).getConverterTo(unit.getSystemUnit());
  }

  private static BigDecimal decimal(Number number) {
    if (number instanceof RationalNumber rational) {
      return new BigDecimal(rational.getDividend())
          .divide(new BigDecimal(rational.getDivisor()), DIGITS);
    }
    return new BigDecimal(number.toString()).round(DIGITS);
  }

  /** The symbols and their exponents, in the order written. */
  public List<Factor> factors() {
    return factors;
  }

  /** The unit as Indriya knows it. */
  public Unit<?> unit() {
    return unit;
  }

  /** What it measures. */
  public Kind kind() {
    return kind;
  }

  /** Whether its zero is not nothing: degree Celsius and degree Fahrenheit. */
  public boolean isScale() {
    return offset.signum() != 0;
  }

  /** How many coherent SI units one step of this unit is. */
  public BigDecimal factor() {
    return factor;
  }

  /** A reading in this unit in the coherent SI unit. */
  public BigDecimal toCoherent(BigDecimal value) {
    return value.multiply(factor, DIGITS).add(offset, DIGITS);
  }

  /** A value in the coherent SI unit as a reading in this unit. */
  public BigDecimal fromCoherent(BigDecimal value) {
    return value.subtract(offset, DIGITS).divide(factor, DIGITS);
  }

  /**
   * The unit as text, with one solidus at most: "kg·m/s²", "1/mol", "N·m²/C²"; empty for the unit
   * one.
   */
  public String text() {
    String over = join(1);
    String under = join(-1);
    if (under.isEmpty()) {
      return over;
    }
    long below = factors.stream().filter(f -> f.exponent() < 0).count();
    return (over.isEmpty() ? "1" : over) + "/" + (below > 1 ? "(" + under + ")" : under);
  }

  private String join(int sign) {
    return factors.stream()
        .filter(f -> f.exponent() * sign > 0)
        .map(f -> f.symbol().text() + Superscripts.of(Math.abs(f.exponent())))
        .collect(Collectors.joining("·"));
  }

  /**
   * The unit in words: "newton metre squared per coulomb squared"; the first noun in the plural
   * unless {@code one}.
   */
  public String words(boolean one) {
    return UnitWords.of(factors, one);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof UnitOfMeasure unit && unit.factors.equals(factors);
  }

  @Override
  public int hashCode() {
    return factors.hashCode();
  }

  @Override
  public String toString() {
    return text();
  }
}
