package plainscale.field;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * Places in the plane z = 0 where the field in the plane is zero: cells of a grid in which both
 * components change their sign, then Newton's method on the field. A place counts if the field
 * there is a millionth of that at the corners of its cell. Two that share a cell can be missed.
 */
final class Nulls {
  private static final int ACROSS = 64;
  private static final int ROUNDS = 30;
  private static final double ZERO = 1e-6;
  private static final double STEP = 1e-4;
  private static final int MOST = 12;

  private final Configuration configuration;
  private final Frame frame;
  private final Effort effort;
  private final double cell;

  private Nulls(Configuration configuration, Frame frame, Effort effort) {
    this.configuration = configuration;
    this.frame = frame;
    this.effort = effort;
    this.cell = Math.max(frame.width(), frame.height()) / ACROSS;
  }

  /** The places, at most twelve. */
  static List<Vector2D> of(Configuration configuration, Frame frame, Effort effort) {
    return configuration.sources().isEmpty()
        ? List.of()
        : new Nulls(configuration, frame, effort).places();
  }

  private List<Vector2D> places() {
    List<Vector2D> places = new ArrayList<>();
    // Half a cell off the edges of the frame, so that a null on an axis of symmetry is inside one.
    for (double y = frame.bottom() - cell / 3; y < frame.top(); y += cell) {
      for (double x = frame.left() - cell / 3; x < frame.right(); x += cell) {
        add(x, y, places);
      }
    }
    return places;
  }

  private Vector2D field(double x, double y) {
    effort.spend(1, configuration);
    Vector3D field = configuration.field(new Vector3D(x, y, 0));
    return new Vector2D(field.getX(), field.getY());
  }

  private void add(double x, double y, List<Vector2D> places) {
    List<Vector2D> corners =
        List.of(field(x, y), field(x + cell, y), field(x, y + cell), field(x + cell, y + cell));
    boolean bothTurn =
        turns(corners.stream().map(Vector2D::getX).toList())
            && turns(corners.stream().map(Vector2D::getY).toList());
    if (!bothTurn || places.size() >= MOST) {
      return;
    }
    double around = corners.stream().mapToDouble(Vector2D::getNorm).max().orElse(0);
    Vector2D found = newton(x + cell / 2, y + cell / 2);
    boolean near =
        Math.abs(found.getX() - x - cell / 2) <= cell
            && Math.abs(found.getY() - y - cell / 2) <= cell;
    boolean isNull = field(found.getX(), found.getY()).getNorm() <= ZERO * around;
    boolean known = places.stream().anyMatch(other -> Vector2D.distance(other, found) < cell / 2);
    if (near && isNull && !known && frame.margin(found.getX(), found.getY()) >= 0) {
      places.add(found);
    }
  }

  private static boolean turns(List<Double> components) {
    double least = components.stream().mapToDouble(c -> c).min().orElse(0);
    double greatest = components.stream().mapToDouble(c -> c).max().orElse(0);
    return least < 0 && greatest > 0;
  }

  private Vector2D newton(double x, double y) {
    Vector2D at = new Vector2D(x, y);
    double h = STEP * cell;
    for (int round = 0; round < ROUNDS; round++) {
      Vector2D here = field(at.getX(), at.getY());
      Vector2D byX = slope(at.getX() - h, at.getY(), at.getX() + h, at.getY(), h);
      Vector2D byY = slope(at.getX(), at.getY() - h, at.getX(), at.getY() + h, h);
      double determinant = byX.getX() * byY.getY() - byY.getX() * byX.getY();
      if (determinant == 0 || Double.isNaN(determinant)) {
        return at;
      }
      double dx = (here.getX() * byY.getY() - here.getY() * byY.getX()) / determinant;
      double dy = (here.getY() * byX.getX() - here.getX() * byX.getY()) / determinant;
      at = at.subtract(new Vector2D(dx, dy));
    }
    return at;
  }

  private Vector2D slope(double x1, double y1, double x2, double y2, double h) {
    return field(x2, y2).subtract(field(x1, y1)).scalarMultiply(1 / (2 * h));
  }
}
