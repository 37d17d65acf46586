package plainscale.picture;

/** An upright rectangle by its upper left corner and its size. */
public record Box(double x, double y, double width, double height) {
  private static final double PRECISION = 0.01;

  public double right() {
    return x + width;
  }

  public double bottom() {
    return y + height;
  }

  /** Whether the two share more than an edge, to the precision in which pictures are written. */
  public boolean overlaps(Box other) {
    return x + PRECISION < other.right()
        && other.x + PRECISION < right()
        && y + PRECISION < other.bottom()
        && other.y + PRECISION < bottom();
  }

  /** Whether the other lies wholly inside. */
  public boolean contains(Box other) {
    return x <= other.x && y <= other.y && other.right() <= right() && other.bottom() <= bottom();
  }

  /** Whether a straight line goes through it. Cut by its four edges (Liang and Barsky, 1984). */
  public boolean crossedBy(Point from, Point to) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double[] along = {-dx, dx, -dy, dy};
    double[] inside = {from.x() - x, right() - from.x(), from.y() - y, bottom() - from.y()};
    double enters = 0;
    double leaves = 1;
    for (int i = 0; i < along.length; i++) {
      if (along[i] == 0 && inside[i] < 0) {
        return false;
      }
      if (along[i] < 0) {
        enters = Math.max(enters, inside[i] / along[i]);
      } else if (along[i] > 0) {
        leaves = Math.min(leaves, inside[i] / along[i]);
      }
    }
    return enters <= leaves;
  }
}
