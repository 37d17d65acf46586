package plainscale.field;

import java.util.Arrays;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;

/**
 * The potential at the nodes of a regular grid over a frame, the edges included: {@code columns} ×
 * {@code rows} nodes. Values on charges are infinite.
 */
public final class PotentialGrid {
  /** The most nodes. */
  public static final int MOST_NODES = 1_000_000;

  private final Configuration configuration;
  private final Frame frame;
  private final int columns;
  private final int rows;
  private final double[] values;

  private PotentialGrid(Configuration configuration, Frame frame, int columns, int rows) {
    this.configuration = configuration;
    this.frame = frame;
    this.columns = columns;
    this.rows = rows;
    this.values = new double[columns * rows];
  }

  /** Computes the potential at all nodes; at least 2 × 2, at most {@link #MOST_NODES}. */
  public static PotentialGrid of(
      Configuration configuration, Frame frame, int columns, int rows, Effort effort) {
    if (columns < 2 || rows < 2 || (long) columns * rows > MOST_NODES) {
      throw new IllegalArgumentException(
          "A grid of "
              + columns
              + " by "
              + rows
              + " nodes cannot be computed; the least is 2 by 2,"
              + " the most "
              + MOST_NODES
              + " in all.");
    }
    PotentialGrid grid = new PotentialGrid(configuration, frame, columns, rows);
    for (int row = 0; row < rows; row++) {
      effort.spend(columns, configuration);
      grid.fill(row);
    }
    return grid;
  }

  private void fill(int row) {
    for (int column = 0; column < columns; column++) {
      values[row * columns + column] = configuration.potential(new Vector3D(x(column), y(row), 0));
    }
  }

  public Configuration configuration() {
    return configuration;
  }

  public Frame frame() {
    return frame;
  }

  public int columns() {
    return columns;
  }

  public int rows() {
    return rows;
  }

  /** The x of a column, counted from the left. */
  public double x(int column) {
    return frame.left() + frame.width() * column / (columns - 1);
  }

  /** The y of a row, counted from the bottom. */
  public double y(int row) {
    return frame.bottom() + frame.height() * row / (rows - 1);
  }

  /** The potential at a node. */
  public double value(int column, int row) {
    return values[row * columns + column];
  }

  /** The value that a share of all finite nodes do not exceed: 0 the least, 1 the greatest. */
  public double quantile(double share) {
    double[] finite = Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
    if (finite.length == 0) {
      throw new IllegalStateException("The potential is infinite at every node of the grid.");
    }
    return finite[(int) Math.round(share * (finite.length - 1))];
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PotentialGrid grid
        && columns == grid.columns
        && configuration.equals(grid.configuration)
        && frame.equals(grid.frame)
        && Arrays.equals(values, grid.values);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(values);
  }
}
