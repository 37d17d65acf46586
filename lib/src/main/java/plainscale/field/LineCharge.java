package plainscale.field;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A straight line of charge of finite length, evenly spread. With the distances r₁, r₂ to its ends
 * and the length L: V = (q/L) ln((r₁ + r₂ + L)/(r₁ + r₂ − L)). The differences are written so that
 * nothing cancels close to the line or far from it.
 */
public record LineCharge(Vector3D start, Vector3D end, double amount) implements Source {
  public LineCharge {
    Checks.finite(start, "The start of a line of charge");
    Checks.finite(end, "The end of a line of charge");
    Checks.finite(amount, "The charge of a line");
    Checks.positive(Vector3D.distance(start, end), "The length of a line of charge");
  }

  /** A place as seen from the line: how far past each end inwards, and how far off. */
  private record View(double fromStart, double fromEnd, Vector3D off) {
    double distanceToStart() {
      return Math.hypot(fromStart, off.getNorm());
    }

    double distanceToEnd() {
      return Math.hypot(fromEnd, off.getNorm());
    }
  }

  private double length() {
    return Vector3D.distance(start, end);
  }

  private Vector3D direction() {
    return end.subtract(start).normalize();
  }

  private View view(Vector3D at) {
    Vector3D along = direction();
    Vector3D seen = at.subtract(start);
    double fromStart = seen.dotProduct(along);
    return new View(fromStart, length() - fromStart, seen.subtract(fromStart, along));
  }

  @Override
  public LineCharge withAmount(double other) {
    return new LineCharge(start, end, other);
  }

  @Override
  public double potential(Vector3D at) {
    View view = view(at);
    double square = view.off.getNormSq();
    double rest =
        excess(view.distanceToStart(), view.fromStart, square)
            + excess(view.distanceToEnd(), view.fromEnd, square);
    return amount / length() * Math.log1p(2 * length() / rest);
  }

  /** The hypotenuse less one leg, without cancelling. */
  private static double excess(double hypotenuse, double leg, double otherSquared) {
    return leg > 0 ? otherSquared / (hypotenuse + leg) : hypotenuse - leg;
  }

  @Override
  public Vector3D field(Vector3D at) {
    View view = view(at);
    double r1 = view.distanceToStart();
    double r2 = view.distanceToEnd();
    double axial = amount * (view.fromStart - view.fromEnd) / (r1 * r2 * (r1 + r2));
    double off = view.off.getNorm();
    Vector3D along = new Vector3D(axial, direction());
    return off == 0 ? along : along.add(across(view, r1, r2, off), view.off);
  }

  /** The field across the line, divided by the distance from its axis. */
  private double across(View view, double r1, double r2, double off) {
    double l1 = view.fromStart;
    double l2 = view.fromEnd;
    if (l1 * l2 > 0) {
      return amount / length() * (l1 / r1 + l2 / r2) / (off * off);
    }
    // Beyond an end l₁ and l₂ have opposite signs, and l₁r₂ + l₂r₁ would cancel.
    double sum = Math.abs(l1) * r2 + Math.abs(l2) * r1;
    return amount * Math.abs(l1 - l2) / (r1 * r2 * sum);
  }

  @Override
  public Standing standing(Vector3D at) {
    boolean on = Checks.same(Vector3D.distance(at, nearest(at)), 0, length());
    return on ? Standing.ON_CHARGE : Standing.FREE;
  }

  @Override
  public Vector3D nearest(Vector3D at) {
    double along = Math.max(0, Math.min(length(), view(at).fromStart));
    return start.add(along, direction());
  }

  @Override
  public List<Footprint> footprints(Frame frame) {
    return Footprint.ofSegment(start, end, amount, frame);
  }

  @Override
  public String name() {
    return "line of charge";
  }
}
