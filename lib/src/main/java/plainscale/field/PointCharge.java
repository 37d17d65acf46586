package plainscale.field;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** A point charge: V = q/r, E = q/r² (times the constant of the field). */
public record PointCharge(Vector3D place, double amount) implements Source {
  /** Below it, in metres, the cube of the distance is no number any more. */
  private static final double LEAST_DISTANCE = 1e-100;

  public PointCharge {
    Checks.finite(place, "The place of a point charge");
    Checks.finite(amount, "A point charge");
  }

  /** A point charge in the plane z = 0. */
  public static PointCharge at(double x, double y, double amount) {
    return new PointCharge(new Vector3D(x, y, 0), amount);
  }

  @Override
  public PointCharge withAmount(double other) {
    return new PointCharge(place, other);
  }

  @Override
  public double potential(Vector3D at) {
    return amount / Vector3D.distance(place, at);
  }

  @Override
  public Vector3D field(Vector3D at) {
    double x = at.getX() - place.getX();
    double y = at.getY() - place.getY();
    double z = at.getZ() - place.getZ();
    double square = x * x + y * y + z * z;
    double scale = amount / (square * Math.sqrt(square));
    return new Vector3D(scale * x, scale * y, scale * z);
  }

  @Override
  public Standing standing(Vector3D at) {
    return Vector3D.distance(place, at) < LEAST_DISTANCE ? Standing.ON_CHARGE : Standing.FREE;
  }

  @Override
  public Vector3D nearest(Vector3D at) {
    return place;
  }

  @Override
  public List<Footprint> footprints(Frame frame) {
    return frame.isInPlane(place) ? List.of(Footprint.dot(place, 0, amount)) : List.of();
  }

  @Override
  public String name() {
    return "point charge";
  }
}
