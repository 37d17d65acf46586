package plainscale.field;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** The part of the plane z = 0 that is looked at, in metres. */
public record Frame(double left, double bottom, double right, double top) {
  private static final double LEVEL = 1e-12;

  public Frame {
    Checks.finite(left, "The left of a frame");
    Checks.finite(bottom, "The bottom of a frame");
    Checks.positive(right - left, "The width of a frame");
    Checks.positive(top - bottom, "The height of a frame");
  }

  public double width() {
    return right - left;
  }

  public double height() {
    return top - bottom;
  }

  public double diagonal() {
    return Math.hypot(width(), height());
  }

  Vector3D centre() {
    return new Vector3D((left + right) / 2, (bottom + top) / 2, 0);
  }

  /** How far inside the nearest edge a place is; negative outside. */
  double margin(double x, double y) {
    return Math.min(Math.min(x - left, right - x), Math.min(y - bottom, top - y));
  }

  boolean contains(Vector3D place) {
    return margin(place.getX(), place.getY()) >= 0;
  }

  /** In the plane z = 0, wherever in it. */
  boolean isLevel(Vector3D place) {
    return Math.abs(place.getZ()) <= LEVEL * diagonal();
  }

  boolean isInPlane(Vector3D place) {
    return isLevel(place) && contains(place);
  }

  /** The share of a segment that lies inside, by Liang and Barsky's clipping. */
  Optional<Part> clip(Vector2D from, Vector2D to) {
    double dx = to.getX() - from.getX();
    double dy = to.getY() - from.getY();
    return Optional.of(new Part(0, 1))
        .flatMap(part -> part.upTo(-dx, from.getX() - left))
        .flatMap(part -> part.upTo(dx, right - from.getX()))
        .flatMap(part -> part.upTo(-dy, from.getY() - bottom))
        .flatMap(part -> part.upTo(dy, top - from.getY()));
  }

  /** A piece of a segment, as fractions of its length. */
  record Part(double start, double end) {
    double share() {
      return end - start;
    }

    /** What is left of it where {@code step}·t ≤ {@code room}. */
    private Optional<Part> upTo(double step, double room) {
      if (step == 0) {
        return room < 0 ? Optional.empty() : Optional.of(this);
      }
      double at = room / step;
      Part left =
          step > 0 ? new Part(start, Math.min(end, at)) : new Part(Math.max(start, at), end);
      return left.start < left.end ? Optional.of(left) : Optional.empty();
    }
  }
}
