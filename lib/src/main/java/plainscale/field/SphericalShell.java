package plainscale.field;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A thin spherical shell with charge spread evenly over it: outside like a point charge, inside no
 * field and the potential q/R.
 */
public record SphericalShell(Vector3D centre, double radius, double amount) implements Source {
  public SphericalShell {
    Checks.finite(centre, "The centre of a shell");
    Checks.positive(radius, "The radius of a shell");
    Checks.finite(amount, "The charge of a shell");
  }

  @Override
  public SphericalShell withAmount(double other) {
    return new SphericalShell(centre, radius, other);
  }

  @Override
  public double potential(Vector3D at) {
    return amount / Math.max(radius, Vector3D.distance(centre, at));
  }

  @Override
  public Vector3D field(Vector3D at) {
    Vector3D seen = at.subtract(centre);
    double r = seen.getNorm();
    double outside = amount / (r * r * r);
    return switch (standing(at)) {
      case ON_SURFACE -> seen.scalarMultiply(outside / 2);
      case FREE, ON_EDGE, ON_CHARGE -> r < radius ? Vector3D.ZERO : seen.scalarMultiply(outside);
    };
  }

  @Override
  public Standing standing(Vector3D at) {
    boolean on = Checks.same(Vector3D.distance(centre, at), radius, radius);
    return on ? Standing.ON_SURFACE : Standing.FREE;
  }

  @Override
  public Vector3D nearest(Vector3D at) {
    return onSphere(centre, radius, at);
  }

  static Vector3D onSphere(Vector3D centre, double radius, Vector3D at) {
    Vector3D seen = at.subtract(centre);
    double r = seen.getNorm();
    return centre.add(radius, r == 0 ? Vector3D.PLUS_I : seen.scalarMultiply(1 / r));
  }

  /** The circle in which the plane z = 0 cuts a sphere. */
  static List<Footprint> circle(Vector3D centre, double radius, double amount, Frame frame) {
    double height = Math.abs(centre.getZ());
    if (height >= radius) {
      return List.of();
    }
    Vector3D foot = new Vector3D(centre.getX(), centre.getY(), 0);
    double cut = Math.sqrt((radius - height) * (radius + height));
    return frame.contains(foot) ? List.of(Footprint.dot(foot, cut, amount)) : List.of();
  }

  @Override
  public List<Footprint> footprints(Frame frame) {
    return circle(centre, radius, amount, frame);
  }

  @Override
  public String name() {
    return "charged shell";
  }
}
