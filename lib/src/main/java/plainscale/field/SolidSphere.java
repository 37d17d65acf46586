package plainscale.field;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A sphere with charge spread evenly through its volume: outside like a point charge, inside E = q
 * r/R³ and V = q (3R² − r²)/(2R³).
 */
public record SolidSphere(Vector3D centre, double radius, double amount) implements Source {
  public SolidSphere {
    Checks.finite(centre, "The centre of a sphere");
    Checks.positive(radius, "The radius of a sphere");
    Checks.finite(amount, "The charge of a sphere");
  }

  @Override
  public SolidSphere withAmount(double other) {
    return new SolidSphere(centre, radius, other);
  }

  @Override
  public double potential(Vector3D at) {
    double r = Vector3D.distance(centre, at);
    double ratio = r / radius;
    return r >= radius ? amount / r : amount * (3 - ratio * ratio) / (2 * radius);
  }

  @Override
  public Vector3D field(Vector3D at) {
    Vector3D seen = at.subtract(centre);
    double r = Math.max(radius, seen.getNorm());
    return seen.scalarMultiply(amount / (r * r * r));
  }

  @Override
  public Standing standing(Vector3D at) {
    return Standing.FREE;
  }

  @Override
  public Vector3D nearest(Vector3D at) {
    return SphericalShell.onSphere(centre, radius, at);
  }

  @Override
  public List<Footprint> footprints(Frame frame) {
    return SphericalShell.circle(centre, radius, amount, frame);
  }

  @Override
  public String name() {
    return "charged sphere";
  }
}
