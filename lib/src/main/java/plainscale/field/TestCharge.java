package plainscale.field;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A body that moves in a field without changing it.
 *
 * @param charge what the field acts on: C in an electric field, the mass (kg) in a gravitational
 *     one
 * @param mass its inertia, kg
 * @param place where it starts, m
 * @param velocity how it starts, m/s
 */
public record TestCharge(double charge, double mass, Vector3D place, Vector3D velocity) {
  public TestCharge {
    Checks.finite(charge, "The charge of a test charge");
    Checks.positive(mass, "The mass of a test charge");
    Checks.finite(place, "The start of a test charge");
    Checks.finite(velocity, "The velocity of a test charge");
  }

  /** A body in a gravitational field. */
  public static TestCharge mass(double mass, Vector3D place, Vector3D velocity) {
    return new TestCharge(mass, mass, place, velocity);
  }

  /**
   * The speed from which it gets away from all charges for good, m/s: √(−2 q V/m), zero where it is
   * pushed away. Refused where the potential has no zero at infinity.
   */
  public double escapeSpeed(Configuration configuration) {
    for (Source source : configuration.sources()) {
      if (source instanceof InfiniteLine || source instanceof ChargedSheet) {
        throw new IllegalArgumentException(
            "There is no speed of escape from an " + source.name() + ".");
      }
    }
    return Math.sqrt(Math.max(0, -2 * charge * configuration.potential(place) / mass));
  }
}
