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
}
