package plainscale.picture.force;

import java.util.List;

/** How far a drawing reaches from its dot, in newtons or boxes: all four are zero or more. */
record Extent(double left, double right, double down, double up) {

  private static final Extent NONE = new Extent(0, 0, 0, 0);

  /** All forces drawn from the dot. */
  static Extent fromTheDot(List<Force> forces) {
    Extent extent = NONE;
    for (Force force : forces) {
      extent = extent.with(force.across(), force.up());
    }
    return extent;
  }

  /** The forces one after the other. */
  static Extent headToTail(List<Force> forces) {
    Extent extent = NONE;
    double across = 0;
    double up = 0;
    for (Force force : forces) {
      across += force.across();
      up += force.up();
      extent = extent.with(across, up);
    }
    return extent;
  }

  private Extent with(double x, double y) {
    return new Extent(Math.max(left, -x), Math.max(right, x), Math.max(down, -y), Math.max(up, y));
  }

  double width() {
    return left + right;
  }

  double height() {
    return down + up;
  }

  /** What must go into so many boxes across, if that many are given from top to bottom. */
  double largest(double across, double down) {
    return Math.max(width(), height() * across / down);
  }

  Extent over(double unit) {
    return new Extent(left / unit, right / unit, down / unit, up / unit);
  }
}
