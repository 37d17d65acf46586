package plainscale.field;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.PegasusSolver;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** Where the line of one level crosses the edges of a grid; each edge has a number. */
final class Crossings {
  private static final double ACCURACY = 1e-7;
  private static final double PLACE = 1e-15;
  private static final int MOST_EVALUATIONS = 200;
  private static final double BOUND = 1e6;

  /** Points closer than this share of a cell say nothing new and would spoil the direction. */
  private static final double NEAR = 0.02;

  private final PotentialGrid grid;
  private final double level;
  private final double scale;
  private final Effort effort;

  /** Unlike Brent's, it stops as soon as the value is close enough. */
  private final PegasusSolver solver;

  Crossings(PotentialGrid grid, double level, double scale, Effort effort) {
    this.grid = grid;
    this.level = level;
    this.scale = scale;
    this.effort = effort;
    this.solver = new PegasusSolver(PLACE, PLACE, ACCURACY * scale);
  }

  /** The edge from a node to its neighbour on the right. */
  int horizontal(int column, int row) {
    return 2 * (row * grid.columns() + column);
  }

  /** The edge from a node to its neighbour above. */
  int vertical(int column, int row) {
    return horizontal(column, row) + 1;
  }

  /** The polyline through the crossings of those edges. */
  Polyline line(List<Integer> edges, boolean closed) {
    double near = NEAR * Math.min(grid.x(1) - grid.x(0), grid.y(1) - grid.y(0));
    List<Vector2D> points = new ArrayList<>();
    for (int edge : edges) {
      Vector2D point = at(edge);
      if (points.isEmpty() || Vector2D.distance(points.get(points.size() - 1), point) > near) {
        points.add(point);
      }
    }
    while (closed
        && points.size() > 1
        && Vector2D.distance(points.get(0), points.get(points.size() - 1)) <= near) {
      points.remove(points.size() - 1);
    }
    return new Polyline(points, closed);
  }

  private Vector2D at(int edge) {
    int node = edge / 2;
    int column = node % grid.columns();
    int row = node / grid.columns();
    boolean upright = edge % 2 == 1;
    int nextColumn = upright ? column : column + 1;
    int nextRow = upright ? row + 1 : row;
    double share = share(column, row, nextColumn, nextRow);
    double x = (1 - share) * grid.x(column) + share * grid.x(nextColumn);
    double y = (1 - share) * grid.y(row) + share * grid.y(nextRow);
    return new Vector2D(x, y);
  }

  /** How far along an edge the level is crossed. */
  private double share(int column, int row, int nextColumn, int nextRow) {
    double start = bounded(grid.value(column, row) - level);
    double end = bounded(grid.value(nextColumn, nextRow) - level);
    if (start == 0 || end == 0) {
      return start == 0 ? 0 : 1;
    }
    Vector3D from = new Vector3D(grid.x(column), grid.y(row), 0);
    Vector3D to = new Vector3D(grid.x(nextColumn), grid.y(nextRow), 0);
    UnivariateFunction over = t -> over(new Vector3D(1 - t, from, t, to));
    return solver.solve(MOST_EVALUATIONS, over, 0, 1);
  }

  private double over(Vector3D at) {
    effort.spend(1, grid.configuration());
    return bounded(grid.configuration().potential(at) - level);
  }

  /** Beside a charge the potential may be infinite, which a search for a root cannot use. */
  private double bounded(double difference) {
    double bound = BOUND * scale;
    // Where infinite ones of both signs meet it counts as below, as it does for the corners.
    return Double.isNaN(difference) ? -bound : Math.max(-bound, Math.min(bound, difference));
  }
}
