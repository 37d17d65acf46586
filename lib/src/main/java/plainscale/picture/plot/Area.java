package plainscale.picture.plot;

import java.util.ArrayList;
import java.util.List;
import plainscale.picture.Box;
import plainscale.picture.Point;

/** The room between the axes: numbers to places, and nothing outside. */
record Area(Axis across, Axis up, Box box) {

  double x(double value) {
    return box.x() + across.at(value) * box.width();
  }

  double y(double value) {
    return box.bottom() - up.at(value) * box.height();
  }

  Point at(double x, double y) {
    return new Point(x(x), y(y));
  }

  boolean shows(double x, double y) {
    return isInside(across.at(x)) && isInside(up.at(y));
  }

  private static boolean isInside(double share) {
    return share >= -1e-9 && share <= 1 + 1e-9;
  }

  double clampX(double value) {
    return Math.max(box.x(), Math.min(box.right(), x(value)));
  }

  double clampY(double value) {
    return Math.max(box.y(), Math.min(box.bottom(), y(value)));
  }

  /** The pieces of a curve that lie inside; where it leaves, it is cut at the edge. */
  List<List<Point>> inside(List<Series.Spot> spots) {
    List<List<Point>> pieces = new ArrayList<>();
    List<Point> piece = new ArrayList<>();
    for (int i = 0; i < spots.size(); i++) {
      Series.Spot spot = spots.get(i);
      boolean shown = shows(spot.x(), spot.y());
      if (i > 0 && shown != shows(spots.get(i - 1).x(), spots.get(i - 1).y())) {
        piece.add(edge(spots.get(i - 1), spot, shown));
      }
      if (shown) {
        piece.add(at(spot.x(), spot.y()));
      } else if (!piece.isEmpty()) {
        pieces.add(piece);
        piece = new ArrayList<>();
      }
    }
    if (!piece.isEmpty()) {
      pieces.add(piece);
    }
    return pieces;
  }

  /** Where the way from one place to another crosses the edge, by halving. */
  private Point edge(Series.Spot from, Series.Spot to, boolean enters) {
    double low = 0;
    double high = 1;
    for (int i = 0; i < 40; i++) {
      double middle = (low + high) / 2;
      Series.Spot spot = between(from, to, middle);
      if (shows(spot.x(), spot.y()) == enters) {
        high = middle;
      } else {
        low = middle;
      }
    }
    Series.Spot spot = between(from, to, enters ? high : low);
    return new Point(clampX(spot.x()), clampY(spot.y()));
  }

  private static Series.Spot between(Series.Spot a, Series.Spot b, double share) {
    return new Series.Spot(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y()));
  }
}
