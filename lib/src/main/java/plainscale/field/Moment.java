package plainscale.field;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** A test charge at a time: seconds, metres, metres per second, joules. */
public record Moment(
    double time, Vector3D place, Vector3D velocity, double kinetic, double potential) {

  /** The sum of kinetic and potential energy, J. */
  public double total() {
    return kinetic + potential;
  }
}
