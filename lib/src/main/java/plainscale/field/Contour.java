package plainscale.field;

import java.util.List;

/**
 * The lines on which the potential has one level. Each point satisfies it to 1e-6 of the level (of
 * the step for level zero). A loop that is smaller than a cell of the grid is not found.
 */
public record Contour(double level, List<Polyline> lines) {
  public Contour {
    lines = List.copyOf(lines);
  }
}
