package plainscale.picture.field;

import java.util.ArrayList;
import java.util.List;
import plainscale.field.Levels;
import plainscale.field.Relief;
import plainscale.picture.Point;
import plainscale.picture.Shade;
import plainscale.picture.Shape;
import plainscale.picture.Stroke;

/**
 * The surface of a relief as shaded facets with contour lines, from the back to the front, so that
 * what is nearer covers what is behind it. In a strip of equal depth the facets are drawn from the
 * sides towards the middle, over which the eye is; neighbours of one shade are one facet.
 */
final class Surface {
  /** The height of the relief in widths of the ground. */
  static final double HIGH = 0.36;

  private static final int SHADES = 14;
  private static final double DARKEST = 0.42;
  private static final double BRIGHTEST = 0.96;

  /** The direction of the light, from the left, the front and above; a unit vector. */
  private static final double[] LIGHT = {-0.55, -0.45, 0.704};

  private static final Stroke CONTOUR = Stroke.solid(Shade.SOFT, 0.8);
  private static final Stroke ZERO = Stroke.solid(Shade.INK, 1.6);

  private final Relief relief;
  private final Levels levels;
  private final Perspective view;
  private final int columns;
  private final int rows;
  private final double depth;
  private final List<Shape> shapes = new ArrayList<>();

  Surface(Relief relief, Levels levels, Perspective view) {
    this.relief = relief;
    this.levels = levels;
    this.view = view;
    this.columns = relief.grid().columns();
    this.rows = relief.grid().rows();
    this.depth = relief.grid().frame().height() / relief.grid().frame().width();
  }

  List<Shape> shapes() {
    for (int row = rows - 2; row >= 0; row--) {
      facets(row);
      contours(row);
    }
    return shapes;
  }

  private double up(int column, int row) {
    return up(relief.height(column, row));
  }

  private double up(double potential) {
    return HIGH * (potential - relief.lowest()) / (relief.highest() - relief.lowest());
  }

  private double across(double column) {
    return column / (columns - 1) - 0.5;
  }

  private double deep(double row) {
    return depth * row / (rows - 1);
  }

  /** The projected node. */
  Point node(int column, int row) {
    return view.at(across(column), deep(row), up(column, row));
  }

  private void facets(int row) {
    int middle = (columns - 1) / 2;
    int column = 0;
    while (column < middle) {
      int end = run(column, middle, row);
      facet(column, end, row);
      column = end;
    }
    List<int[]> right = new ArrayList<>();
    while (column < columns - 1) {
      int end = run(column, columns - 1, row);
      right.add(new int[] {column, end});
      column = end;
    }
    for (int i = right.size() - 1; i >= 0; i--) {
      facet(right.get(i)[0], right.get(i)[1], row);
    }
  }

  /** Where the run of equal shade that begins at a column ends. */
  private int run(int column, int end, int row) {
    int shade = shade(column, row);
    int next = column + 1;
    while (next < end && shade(next, row) == shade) {
      next++;
    }
    return next;
  }

  private void facet(int from, int to, int row) {
    List<Point> front = new ArrayList<>();
    List<Point> back = new ArrayList<>();
    for (int column = from; column <= to; column++) {
      front.add(node(column, row));
      back.add(0, node(column, row + 1));
    }
    List<Point> around = new ArrayList<>(Thinning.of(front));
    around.addAll(Thinning.of(back));
    double share = (double) shade(from, row) / (SHADES - 1);
    shapes.add(new Shape.Facet(around, DARKEST + share * (BRIGHTEST - DARKEST)));
  }

  /** By the cosine between the normal of the cell and the light (Lambert). */
  private int shade(int column, int row) {
    double dx = 1.0 / (columns - 1);
    double dy = depth / (rows - 1);
    double left = (up(column, row) + up(column, row + 1)) / 2;
    double right = (up(column + 1, row) + up(column + 1, row + 1)) / 2;
    double near = (up(column, row) + up(column + 1, row)) / 2;
    double far = (up(column, row + 1) + up(column + 1, row + 1)) / 2;
    double slopeX = (right - left) / dx;
    double slopeY = (far - near) / dy;
    double cosine =
        (-slopeX * LIGHT[0] - slopeY * LIGHT[1] + LIGHT[2])
            / Math.sqrt(1 + slopeX * slopeX + slopeY * slopeY);
    return (int) Math.rint(Math.max(0, cosine) * (SHADES - 1));
  }

  private void contours(int row) {
    for (double level : levels.values()) {
      Stroke stroke = Math.abs(level) < levels.step() / 2 ? ZERO : CONTOUR;
      Point last = null;
      List<Point> line = new ArrayList<>();
      for (int column = 0; column + 1 < columns; column++) {
        List<Point> piece = piece(column, row, level);
        if (piece.size() == 2) {
          boolean goesOn = last != null && last.equals(piece.get(0));
          if (!goesOn) {
            close(line, stroke);
            line = new ArrayList<>(List.of(piece.get(0)));
          }
          line.add(piece.get(1));
          last = piece.get(1);
        } else {
          last = null;
        }
      }
      close(line, stroke);
    }
  }

  private void close(List<Point> line, Stroke stroke) {
    if (line.size() > 1) {
      shapes.add(new Shape.Curve(Thinning.of(line), stroke));
    }
  }

  /** Where a level crosses a cell, from left to right: at its edges, in which heights are even. */
  private List<Point> piece(int column, int row, double level) {
    List<Point> ends = new ArrayList<>(2);
    cross(column, row, column, row + 1, level, ends);
    cross(column, row, column + 1, row, level, ends);
    cross(column, row + 1, column + 1, row + 1, level, ends);
    cross(column + 1, row, column + 1, row + 1, level, ends);
    return ends;
  }

  private void cross(int c1, int r1, int c2, int r2, double level, List<Point> ends) {
    double one = relief.height(c1, r1) - level;
    double other = relief.height(c2, r2) - level;
    if (one >= 0 != other >= 0) {
      double share = one / (one - other);
      double column = c1 + share * (c2 - c1);
      double row = r1 + share * (r2 - r1);
      ends.add(view.at(across(column), deep(row), up(level)));
    }
  }
}
