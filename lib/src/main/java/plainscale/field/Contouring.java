package plainscale.field;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Equipotentials by marching squares: cells whose corners lie on both sides of a level hold a piece
 * of its line. Where the line crosses an edge is found on the potential itself, not on the grid's
 * values. A saddle, where two corners across from each other lie above, is decided by the potential
 * in the middle of the cell. Only one level is worked on at a time.
 */
public final class Contouring {
  private final PotentialGrid grid;
  private final Effort effort;
  private final double level;
  private final Crossings crossings;
  private final Map<Integer, List<Integer>> neighbours = new HashMap<>();

  private Contouring(PotentialGrid grid, double level, double tolerance, Effort effort) {
    this.grid = grid;
    this.level = level;
    this.effort = effort;
    this.crossings = new Crossings(grid, level, tolerance, effort);
  }

  /**
   * The equipotentials of all levels, in their order; a level that the grid misses has no lines.
   */
  public static List<Contour> of(PotentialGrid grid, Levels levels, Effort effort) {
    List<Contour> contours = new ArrayList<>();
    for (double level : levels.values()) {
      double scale = level == 0 ? levels.step() : Math.abs(level);
      contours.add(new Contouring(grid, level, scale, effort).contour());
    }
    return contours;
  }

  private Contour contour() {
    for (int row = 0; row + 1 < grid.rows(); row++) {
      for (int column = 0; column + 1 < grid.columns(); column++) {
        visit(column, row);
      }
    }
    return new Contour(level, lines());
  }

  private boolean isAbove(int column, int row) {
    return grid.value(column, row) >= level;
  }

  /** Joins the edges of one cell that the line crosses. */
  private void visit(int column, int row) {
    boolean here = isAbove(column, row);
    boolean right = isAbove(column + 1, row);
    boolean across = isAbove(column + 1, row + 1);
    boolean up = isAbove(column, row + 1);
    List<Integer> crossed = new ArrayList<>(4);
    addIf(here != right, crossings.horizontal(column, row), crossed);
    addIf(right != across, crossings.vertical(column + 1, row), crossed);
    addIf(across != up, crossings.horizontal(column, row + 1), crossed);
    addIf(up != here, crossings.vertical(column, row), crossed);
    if (crossed.size() == 2) {
      join(crossed.get(0), crossed.get(1));
    } else if (crossed.size() == 4) {
      joinSaddle(crossed, here == isMiddleAbove(column, row));
    }
  }

  private static void addIf(boolean crosses, int edge, List<Integer> crossed) {
    if (crosses) {
      crossed.add(edge);
    }
  }

  /**
   * Bottom, right, top, left: the middle goes together with two corners, the others are cut off.
   */
  private void joinSaddle(List<Integer> edges, boolean middleLikeFirstCorner) {
    int shift = middleLikeFirstCorner ? 0 : 3;
    join(edges.get(shift), edges.get((shift + 1) % 4));
    join(edges.get((shift + 2) % 4), edges.get((shift + 3) % 4));
  }

  private boolean isMiddleAbove(int column, int row) {
    effort.spend(1, grid.configuration());
    double x = (grid.x(column) + grid.x(column + 1)) / 2;
    double y = (grid.y(row) + grid.y(row + 1)) / 2;
    return grid.configuration().potential(new Vector3D(x, y, 0)) >= level;
  }

  private void join(int one, int other) {
    neighbours.computeIfAbsent(one, edge -> new ArrayList<>(2)).add(other);
    neighbours.computeIfAbsent(other, edge -> new ArrayList<>(2)).add(one);
  }

  /** Chains the edges: first the lines that end at the frame, then the closed ones. */
  private List<Polyline> lines() {
    List<Polyline> lines = new ArrayList<>();
    for (int edge : new TreeSet<>(neighbours.keySet())) {
      if (neighbours.containsKey(edge) && neighbours.get(edge).size() == 1) {
        lines.add(crossings.line(chain(edge), false));
      }
    }
    for (int edge : new TreeSet<>(neighbours.keySet())) {
      if (neighbours.containsKey(edge)) {
        lines.add(crossings.line(chain(edge), true));
      }
    }
    lines.removeIf(line -> line.points().size() < 2);
    return lines;
  }

  /** Follows a line from an edge and takes it out of the map. */
  private List<Integer> chain(int start) {
    List<Integer> chain = new ArrayList<>();
    List<Integer> next = List.of(start);
    while (!next.isEmpty()) {
      int edge = next.get(0);
      chain.add(edge);
      List<Integer> around = neighbours.remove(edge);
      next = around == null ? List.of() : around.stream().filter(neighbours::containsKey).toList();
    }
    return chain;
  }
}
