package plainscale.picture;

/** An upright rectangle by its upper left corner and its size. */
public record Box(double x, double y, double width, double height) {

  public double right() {
    return x + width;
  }

  public double bottom() {
    return y + height;
  }

  /** Whether the two share more than an edge. */
  public boolean overlaps(Box other) {
    return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
  }

  /** Whether the other lies wholly inside. */
  public boolean contains(Box other) {
    return x <= other.x && y <= other.y && other.right() <= right() && other.bottom() <= bottom();
  }
}
