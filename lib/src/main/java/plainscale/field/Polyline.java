package plainscale.field;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** Places in the plane z = 0 joined by straight pieces; a closed one does not repeat its first. */
public record Polyline(List<Vector2D> points, boolean closed) {
  public Polyline {
    points = List.copyOf(points);
  }
}
