package plainscale.picture.field;

import java.util.ArrayList;
import java.util.List;
import plainscale.picture.Point;

/** Fewer points on a curve, by D. Douglas and T. Peucker (1973): none that is left out lies off. */
final class Thinning {
  /** In pixels. */
  private static final double OFF = 0.25;

  private Thinning() {}

  static List<Point> of(List<Point> points) {
    if (points.size() < 3) {
      return points;
    }
    boolean[] kept = new boolean[points.size()];
    kept[0] = true;
    kept[points.size() - 1] = true;
    keep(points, kept);
    List<Point> left = new ArrayList<>();
    for (int i = 0; i < kept.length; i++) {
      if (kept[i]) {
        left.add(points.get(i));
      }
    }
    return left;
  }

  /** With a stack of its own, so that a long curve does not nest deep. */
  private static void keep(List<Point> points, boolean[] kept) {
    List<int[]> open = new ArrayList<>();
    open.add(new int[] {0, points.size() - 1});
    while (!open.isEmpty()) {
      int[] part = open.remove(open.size() - 1);
      int far = farthest(points, part[0], part[1]);
      if (far > 0) {
        kept[far] = true;
        open.add(new int[] {part[0], far});
        open.add(new int[] {far, part[1]});
      }
    }
  }

  private static int farthest(List<Point> points, int from, int to) {
    double most = OFF;
    int far = 0;
    for (int i = from + 1; i < to; i++) {
      double off = off(points.get(i), points.get(from), points.get(to));
      if (off > most) {
        most = off;
        far = i;
      }
    }
    return far;
  }

  private static double off(Point place, Point from, Point to) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double square = dx * dx + dy * dy;
    double share =
        square == 0 ? 0 : ((place.x() - from.x()) * dx + (place.y() - from.y()) * dy) / square;
    double along = Math.max(0, Math.min(1, share));
    return Math.hypot(place.x() - from.x() - along * dx, place.y() - from.y() - along * dy);
  }
}
