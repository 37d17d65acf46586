package plainscale.units;

import javax.measure.Dimension;
import tech.units.indriya.unit.UnitDimension;

/**
 * The kind of a quantity: its dimension, and whether it is an angle. SI counts the radian as the
 * number one; here an angle is told from a plain number, so that degrees and radians cannot be
 * mixed without notice. In a product with anything else than a plain number the radian is one again
 * (arc = radius × angle).
 */
public record Kind(Dimension dimension, boolean angle) {

  /** A plain number. */
  public static final Kind NUMBER = new Kind(UnitDimension.NONE, false);

  /** A plane angle. */
  public static final Kind ANGLE = new Kind(UnitDimension.NONE, true);

  /** The kind of these dimensions that is not an angle. */
  public static Kind of(Dimension dimension) {
    return new Kind(dimension, false);
  }

  /** Whether it is a plain number (an angle is not). */
  public boolean isNumber() {
    return equals(NUMBER);
  }

  /** The kind of a product. */
  public Kind times(Kind other) {
    boolean oneAngle = angle != other.angle && (angle ? other.isNumber() : isNumber());
    return oneAngle ? ANGLE : of(dimension.multiply(other.dimension));
  }

  /** The kind of a quotient. */
  public Kind over(Kind other) {
    return angle && other.isNumber() ? ANGLE : of(dimension.divide(other.dimension));
  }

  /** The kind of the power {@code numerator/denominator}; a root may leave broken exponents. */
  public Kind power(int numerator, int denominator) {
    if (numerator == denominator) {
      return this;
    }
    return of(dimension.pow(numerator).root(denominator));
  }
}
