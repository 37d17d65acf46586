package plainscale.field;

import java.util.List;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A thin disc of charge, evenly spread. Near it the closed form: across the disc the field is the
 * density times the solid angle of the disc, along it the density times the mean of the outward
 * direction over the rim, both complete elliptic integrals. The potential follows from the field,
 * since at a fixed density it grows as the size of the whole figure (Euler's theorem on homogeneous
 * functions): V = 2q/M(α, β) − r·E, where M is that of the rim. Far away these terms would cancel;
 * there the disc is a sum over rings by Gauss's rule, exact to rounding.
 */
public record DiscCharge(Vector3D centre, Vector3D axis, double radius, double amount)
    implements Source {
  private static final double FAR = 3;
  private static final int RINGS = 10;
  private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(RINGS, 0, 1);

  public DiscCharge {
    Checks.finite(centre, "The centre of a disc");
    axis = Checks.unit(axis, "The axis of a disc");
    Checks.positive(radius, "The radius of a disc");
    Checks.finite(amount, "The charge of a disc");
  }

  @Override
  public DiscCharge withAmount(double other) {
    return new DiscCharge(centre, axis, radius, other);
  }

  private boolean isFar(Axial seen) {
    return Math.hypot(seen.along(), seen.off()) > FAR * radius;
  }

  private double density() {
    return amount / (Math.PI * radius * radius);
  }

  @Override
  public double potential(Vector3D at) {
    Axial seen = Axial.of(centre, axis, at);
    return isFar(seen) ? farPotential(seen) : nearPotential(seen);
  }

  private double nearPotential(Axial seen) {
    if (isOnRim(seen)) {
      return 4 * density() * radius;
    }
    double rim = 2 * amount / RingCharge.mean(seen, radius);
    return rim - seen.along() * nearAlong(seen) - seen.off() * nearOut(seen);
  }

  private double farPotential(Axial seen) {
    return 2 * amount * RULE.integrate(share -> share / RingCharge.mean(seen, share * radius));
  }

  @Override
  public Vector3D field(Vector3D at) {
    Axial seen = Axial.of(centre, axis, at);
    return isFar(seen) ? farField(seen) : seen.vector(nearAlong(seen), nearOut(seen));
  }

  private Vector3D farField(Axial seen) {
    Vector3D sum = Vector3D.ZERO;
    for (int i = 0; i < RULE.getNumberOfPoints(); i++) {
      double share = RULE.getPoint(i);
      sum = sum.add(RULE.getWeight(i) * share, RingCharge.field(seen, share * radius));
    }
    return sum.scalarMultiply(2 * amount);
  }

  private double nearAlong(Axial seen) {
    return Math.signum(seen.along()) * density() * solidAngle(seen);
  }

  /** By the form of N. Derby and S. Olbert, "Cylindrical magnets and ideal solenoids" (2010). */
  private double solidAngle(Axial seen) {
    double height = Math.abs(seen.along());
    double width = radius + seen.off();
    double greatest = Math.hypot(width, height);
    double complement = Math.hypot(radius - seen.off(), height) / greatest;
    double ratio = (radius - seen.off()) / width;
    // Above the rim itself p is zero and the integral is K.
    double integral =
        ratio == 0 ? Elliptic.k(complement) : Elliptic.cel(complement, Math.abs(ratio), 1, ratio);
    double whole = Math.PI * (1 + Math.signum(ratio));
    return whole - 4 * radius / width * height / greatest * integral;
  }

  private double nearOut(Axial seen) {
    double greatest = Math.hypot(radius + seen.off(), seen.along());
    double complement = Math.hypot(radius - seen.off(), seen.along()) / greatest;
    return 4 * density() * radius / greatest * Elliptic.cel(complement, 1, -1, 1);
  }

  private boolean isOnRim(Axial seen) {
    return isInPlane(seen) && Checks.same(seen.off(), radius, radius);
  }

  private boolean isInPlane(Axial seen) {
    return Checks.same(seen.along(), 0, radius);
  }

  @Override
  public Standing standing(Vector3D at) {
    Axial seen = Axial.of(centre, axis, at);
    if (isOnRim(seen)) {
      return Standing.ON_EDGE;
    }
    boolean on = isInPlane(seen) && seen.off() < radius;
    return on ? Standing.ON_SURFACE : Standing.FREE;
  }

  @Override
  public Vector3D nearest(Vector3D at) {
    Axial seen = Axial.of(centre, axis, at);
    return centre.add(Math.min(radius, seen.off()), seen.outward());
  }

  /** A segment where an upright disc cuts the plane, a disc where it lies in it. */
  @Override
  public List<Footprint> footprints(Frame frame) {
    if (!frame.isLevel(centre)) {
      return List.of();
    }
    if (Axial.isFlat(axis)) {
      return List.of(Footprint.dot(centre, radius, amount));
    }
    List<Vector3D> ends = Axial.diameter(centre, axis, radius);
    return Axial.isUpright(axis)
        ? Footprint.ofSegment(ends.get(0), ends.get(1), amount, frame)
        : List.of();
  }

  @Override
  public String name() {
    return "disc of charge";
  }
}
