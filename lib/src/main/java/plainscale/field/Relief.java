package plainscale.field;

/**
 * The potential as a landscape: a grid cut off at a lowest and a highest value, since it has no
 * bound beside a charge. The numbers of nodes that were cut are kept, so that it can be told.
 */
public record Relief(
    PotentialGrid grid, double lowest, double highest, int cutBelow, int cutAbove) {

  /** Cuts a grid at two heights, in the unit of the potential. */
  public static Relief of(PotentialGrid grid, double lowest, double highest) {
    Checks.positive(highest - lowest, "The height of a relief");
    int below = 0;
    int above = 0;
    for (int row = 0; row < grid.rows(); row++) {
      for (int column = 0; column < grid.columns(); column++) {
        double value = grid.value(column, row);
        below += value < lowest ? 1 : 0;
        above += value > highest ? 1 : 0;
      }
    }
    return new Relief(grid, lowest, highest, below, above);
  }

  /** The height at a node, within the two limits; where it is not defined, the middle. */
  public double height(int column, int row) {
    double value = grid.value(column, row);
    return Double.isNaN(value)
        ? (lowest + highest) / 2
        : Math.max(lowest, Math.min(highest, value));
  }

  /** Whether anything was cut off. */
  public boolean isCut() {
    return cutBelow + cutAbove > 0;
  }
}
