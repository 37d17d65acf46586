package plainscale.field;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A thin ring of charge, evenly spread. With the least and greatest distance α, β from the ring to
 * a place, V = q/M(α, β) with Gauss's arithmetic-geometric mean M; on the axis this is q/√(z² +
 * a²). The field is Bulirsch's complete elliptic integral.
 */
public record RingCharge(Vector3D centre, Vector3D axis, double radius, double amount)
    implements Source {
  public RingCharge {
    Checks.finite(centre, "The centre of a ring");
    axis = Checks.unit(axis, "The axis of a ring");
    Checks.positive(radius, "The radius of a ring");
    Checks.finite(amount, "The charge of a ring");
  }

  @Override
  public RingCharge withAmount(double other) {
    return new RingCharge(centre, axis, radius, other);
  }

  @Override
  public double potential(Vector3D at) {
    Axial seen = Axial.of(centre, axis, at);
    return amount / mean(seen, radius);
  }

  /** The mean distance M(α, β) between a place and a ring of that radius. */
  static double mean(Axial seen, double radius) {
    double greatest = Math.hypot(radius + seen.off(), seen.along());
    double least = Math.hypot(radius - seen.off(), seen.along());
    return Elliptic.mean(greatest, least);
  }

  @Override
  public Vector3D field(Vector3D at) {
    return field(Axial.of(centre, axis, at), radius).scalarMultiply(amount);
  }

  /** The field of a unit charge on a ring of that radius. */
  static Vector3D field(Axial seen, double radius) {
    double greatest = Math.hypot(radius + seen.off(), seen.along());
    double least = Math.hypot(radius - seen.off(), seen.along());
    double k = least / greatest;
    double scale = 2 / (Math.PI * greatest * greatest * greatest);
    double along = scale * seen.along() * Elliptic.cel(k, k, 1, 1);
    double out = scale * Elliptic.cel(k, k, seen.off() + radius, seen.off() - radius);
    return seen.vector(along, out);
  }

  @Override
  public Standing standing(Vector3D at) {
    boolean on = Checks.same(Vector3D.distance(at, nearest(at)), 0, radius);
    return on ? Standing.ON_CHARGE : Standing.FREE;
  }

  @Override
  public Vector3D nearest(Vector3D at) {
    return centre.add(radius, Axial.of(centre, axis, at).outward());
  }

  /**
   * Two dots where an upright ring goes through the plane, a disc where it lies in it. (A ring that
   * leans gives none.)
   */
  @Override
  public List<Footprint> footprints(Frame frame) {
    if (!frame.isLevel(centre)) {
      return List.of();
    }
    if (Axial.isFlat(axis)) {
      return List.of(Footprint.dot(centre, radius, amount));
    }
    List<Footprint> dots = new ArrayList<>();
    if (Axial.isUpright(axis)) {
      for (Vector3D end : Axial.diameter(centre, axis, radius)) {
        dots.add(Footprint.dot(end, 0, amount / 2));
      }
    }
    return dots;
  }

  @Override
  public String name() {
    return "ring of charge";
  }
}
