package plainscale.field;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * An infinite straight line of charge with {@code amount} C/m: E = 2λ/ρ, V = −2λ ln(ρ/ρ₀). Its
 * potential has no zero at infinity; it is zero at the distance {@code zeroAt} (ρ₀, metres) from
 * the line.
 */
public record InfiniteLine(Vector3D through, Vector3D direction, double zeroAt, double amount)
    implements Source {
  public InfiniteLine {
    Checks.finite(through, "A point of an infinite line of charge");
    direction = Checks.unit(direction, "An infinite line of charge");
    Checks.positive(zeroAt, "The distance where the potential of an infinite line is zero");
    Checks.finite(amount, "The charge per length of a line");
  }

  @Override
  public InfiniteLine withAmount(double other) {
    return new InfiniteLine(through, direction, zeroAt, other);
  }

  private Vector3D off(Vector3D at) {
    Vector3D seen = at.subtract(through);
    return seen.subtract(seen.dotProduct(direction), direction);
  }

  @Override
  public double potential(Vector3D at) {
    return -2 * amount * Math.log(off(at).getNorm() / zeroAt);
  }

  @Override
  public Vector3D field(Vector3D at) {
    Vector3D off = off(at);
    return off.scalarMultiply(2 * amount / off.getNormSq());
  }

  @Override
  public Standing standing(Vector3D at) {
    double scale = zeroAt + Vector3D.distance(at, through);
    return Checks.same(off(at).getNorm(), 0, scale) ? Standing.ON_CHARGE : Standing.FREE;
  }

  @Override
  public Vector3D nearest(Vector3D at) {
    return at.subtract(off(at));
  }

  @Override
  public List<Footprint> footprints(Frame frame) {
    double reach = frame.diagonal() + Vector3D.distance(through, frame.centre());
    Vector3D start = through.subtract(reach, direction);
    Vector3D end = through.add(reach, direction);
    return Footprint.ofSegment(start, end, 2 * reach * amount, frame);
  }

  @Override
  public String name() {
    return "infinite line of charge";
  }
}
