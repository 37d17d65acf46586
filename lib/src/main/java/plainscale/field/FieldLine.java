package plainscale.field;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** A field line in the plane z = 0; its points follow the direction of the field. */
public record FieldLine(List<Vector2D> points, LineEnd start, LineEnd end) {
  public FieldLine {
    points = List.copyOf(points);
  }

  /** The same line the other way round. */
  FieldLine reversed() {
    List<Vector2D> back = new ArrayList<>(points);
    Collections.reverse(back);
    return new FieldLine(back, end, start);
  }
}
