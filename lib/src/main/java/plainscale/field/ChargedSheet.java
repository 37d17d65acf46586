package plainscale.field;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * An infinite plane sheet with {@code amount} C/m²: E = 2πσ on both sides, away from it, and V =
 * −2πσ·distance, zero on the sheet itself (it has no zero at infinity).
 */
public record ChargedSheet(Vector3D through, Vector3D normal, double amount) implements Source {
  public ChargedSheet {
    Checks.finite(through, "A point of a charged sheet");
    normal = Checks.unit(normal, "The normal of a charged sheet");
    Checks.finite(amount, "The charge per area of a sheet");
  }

  /**
   * Two parallel plates {@code gap} apart with opposite densities, the positive one where the
   * normal starts. The field between them is 4πσ along the normal and zero outside; the potential
   * is zero in the middle.
   */
  public static List<Source> plates(Vector3D middle, Vector3D normal, double gap, double density) {
    Checks.positive(gap, "The gap between two plates");
    Vector3D half = Checks.unit(normal, "The normal of two plates").scalarMultiply(gap / 2);
    return List.of(
        new ChargedSheet(middle.subtract(half), normal, density),
        new ChargedSheet(middle.add(half), normal, -density));
  }

  @Override
  public ChargedSheet withAmount(double other) {
    return new ChargedSheet(through, normal, other);
  }

  private double height(Vector3D at) {
    return at.subtract(through).dotProduct(normal);
  }

  @Override
  public double potential(Vector3D at) {
    return -2 * Math.PI * amount * Math.abs(height(at));
  }

  @Override
  public Vector3D field(Vector3D at) {
    return normal.scalarMultiply(2 * Math.PI * amount * Math.signum(height(at)));
  }

  @Override
  public Standing standing(Vector3D at) {
    double scale = Vector3D.distance(at, through);
    return Checks.same(height(at), 0, scale) ? Standing.ON_SURFACE : Standing.FREE;
  }

  @Override
  public Vector3D nearest(Vector3D at) {
    return at.subtract(height(at), normal);
  }

  /**
   * The line in which an upright sheet cuts the plane z = 0, weighed as a strip as wide as the
   * frame.
   */
  @Override
  public List<Footprint> footprints(Frame frame) {
    if (!Axial.isUpright(normal)) {
      return List.of();
    }
    Vector3D foot = nearest(frame.centre());
    double reach = frame.diagonal();
    List<Vector3D> ends = Axial.diameter(foot, normal, reach);
    return Footprint.ofSegment(
        ends.get(0), ends.get(1), 2 * reach * frame.diagonal() * amount, frame);
  }

  @Override
  public String name() {
    return "infinite charged sheet";
  }
}
