package plainscale.field;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The field at the middles of equal squares: its components in the plane. {@code full} is a round
 * strength that few places exceed (the places beside charges, where it has no bound).
 */
public record Arrows(double square, double full, List<Vector> vectors) {
  private static final int ACROSS = 18;
  private static final double MOST_BELOW = 0.8;

  public Arrows {
    vectors = List.copyOf(vectors);
  }

  /** The field at a place, in V/m or N/kg. */
  public record Vector(double x, double y, double across, double up) {
    /** The strength in the plane. */
    public double strength() {
      return Math.hypot(across, up);
    }
  }

  /** About eighteen squares across a frame. */
  public static Arrows of(Configuration configuration, Frame frame, Effort effort) {
    double square = Math.max(frame.width(), frame.height()) / ACROSS;
    int columns = (int) Math.max(1, Math.rint(frame.width() / square));
    int rows = (int) Math.max(1, Math.rint(frame.height() / square));
    List<Vector> vectors = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      effort.spend(columns, configuration);
      for (int column = 0; column < columns; column++) {
        double x = frame.left() + frame.width() * (column + 0.5) / columns;
        double y = frame.bottom() + frame.height() * (row + 0.5) / rows;
        if (configuration.at(new Vector3D(x, y, 0)) instanceof FieldValue.Defined defined) {
          vectors.add(new Vector(x, y, defined.field().getX(), defined.field().getY()));
        }
      }
    }
    return new Arrows(square, full(vectors), vectors);
  }

  private static double full(List<Vector> vectors) {
    List<Double> sizes =
        vectors.stream().map(Vector::strength).filter(size -> size > 0).sorted().toList();
    return sizes.isEmpty()
        ? 0
        : RoundStep.atLeast(sizes.get((int) (MOST_BELOW * (sizes.size() - 1))));
  }
}
