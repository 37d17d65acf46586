package plainscale.field;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * Where the plane z = 0 cuts a charge: all places within {@code radius} of a segment, which may be
 * a single point. {@code amount} is what the cut stands for, in C.
 */
public record Footprint(Vector2D from, Vector2D to, double radius, double amount) {

  static Footprint dot(Vector3D centre, double radius, double amount) {
    return new Footprint(flat(centre), flat(centre), radius, amount);
  }

  /**
   * The cut of a straight piece of charge: its part inside the frame if it lies in the plane, a dot
   * if it goes through. Of a piece longer than the frame's diagonal that goes through, the dot
   * stands for as much as is as long as the diagonal.
   */
  static List<Footprint> ofSegment(Vector3D start, Vector3D end, double amount, Frame frame) {
    if (frame.isLevel(start) && frame.isLevel(end)) {
      return lying(flat(start), flat(end), amount, frame).stream().toList();
    }
    if (start.getZ() * end.getZ() > 0) {
      return List.of();
    }
    double share = start.getZ() / (start.getZ() - end.getZ());
    Vector3D foot = new Vector3D(1 - share, start, share, end);
    double seen = Math.min(1, frame.diagonal() / Vector3D.distance(start, end));
    return frame.contains(foot) ? List.of(dot(foot, 0, amount * seen)) : List.of();
  }

  private static Optional<Footprint> lying(Vector2D from, Vector2D to, double q, Frame frame) {
    return frame
        .clip(from, to)
        .map(
            part ->
                new Footprint(
                    new Vector2D(1 - part.start(), from, part.start(), to),
                    new Vector2D(1 - part.end(), from, part.end(), to),
                    0,
                    q * part.share()));
  }

  private static Vector2D flat(Vector3D place) {
    return new Vector2D(place.getX(), place.getY());
  }

  Footprint grown(double by) {
    return new Footprint(from, to, radius + by, amount);
  }

  /** How far outside it a place is; negative inside. */
  double distance(double x, double y) {
    return toAxis(x, y) - radius;
  }

  private double toAxis(double x, double y) {
    double dx = to.getX() - from.getX();
    double dy = to.getY() - from.getY();
    double length = dx * dx + dy * dy;
    double along = (x - from.getX()) * dx + (y - from.getY()) * dy;
    double share = length == 0 ? 0 : Math.max(0, Math.min(1, along / length));
    return Math.hypot(x - from.getX() - share * dx, y - from.getY() - share * dy);
  }

  /** How far two footprints that do not cross are apart. */
  double gap(Footprint other) {
    double mine = Math.min(other.toAxis(from), other.toAxis(to));
    double theirs = Math.min(toAxis(other.from), toAxis(other.to));
    return Math.min(mine, theirs) - radius - other.radius;
  }

  private double toAxis(Vector2D place) {
    return toAxis(place.getX(), place.getY());
  }

  /**
   * The place on its rim at a share of the way round (anticlockwise). The round of a dot starts in
   * the direction of an angle, that of a segment at the tip of its first end, so that places at (i
   * + ½)/n lie opposite one another on both sides.
   */
  Vector2D rim(double share, double angle) {
    double side = length();
    if (side == 0) {
      return turned(from, angle + 2 * Math.PI * share);
    }
    double cap = Math.PI * radius;
    double around = share * 2 * (side + cap);
    double heading = Math.atan2(to.getY() - from.getY(), to.getX() - from.getX());
    boolean isSecondHalf = around > side + cap;
    double past = (isSecondHalf ? around - side - cap : around) - cap / 2;
    double forward = isSecondHalf ? heading + Math.PI : heading;
    Vector2D first = isSecondHalf ? to : from;
    Vector2D second = isSecondHalf ? from : to;
    double along = Math.max(0, Math.min(1, past / side));
    // Before the straight side the end cap turns towards it, after it away from it.
    double turn = (past - along * side) / radius;
    Vector2D foot = new Vector2D(1 - along, first, along, second);
    return turned(foot, forward - Math.PI / 2 + turn);
  }

  /** How far two places on the rim are apart, where one side counts as far from the other. */
  double apart(Vector2D one, Vector2D other) {
    boolean isOneSide = side(one) * side(other) >= 0;
    return Vector2D.distance(one, other) + (isOneSide ? 0 : length());
  }

  private double side(Vector2D place) {
    return (to.getX() - from.getX()) * (place.getY() - from.getY())
        - (to.getY() - from.getY()) * (place.getX() - from.getX());
  }

  private double length() {
    return Vector2D.distance(from, to);
  }

  private Vector2D turned(Vector2D centre, double angle) {
    return new Vector2D(
        centre.getX() + radius * Math.cos(angle), centre.getY() + radius * Math.sin(angle));
  }
}
