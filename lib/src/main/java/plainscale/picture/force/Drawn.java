package plainscale.picture.force;

import java.util.ArrayList;
import java.util.List;
import plainscale.picture.Arrow;
import plainscale.picture.Labels;
import plainscale.picture.Point;
import plainscale.picture.Shade;
import plainscale.picture.Shape;
import plainscale.picture.Stroke;
import plainscale.picture.TextRole;
import plainscale.picture.TextStyle;
import plainscale.picture.TextStyle.Anchor;
import plainscale.picture.TextStyle.Weight;

/** Arrows on one piece of paper, in boxes, and their names beside them. */
final class Drawn {
  private static final TextStyle NAME =
      TextStyle.centred(TextRole.LABEL, 16, Weight.NORMAL, Shade.INK).withHalo();
  private static final Stroke FIRM = Stroke.solid(Shade.ACCENT, 2.5);
  private static final Stroke HINT = Stroke.dashed(Shade.SOFT, 2);
  private static final Stroke COMPONENT = Stroke.dashed(Shade.SOFT, 1.3);
  private static final Stroke GAP = Stroke.dotted(Shade.INK, 2);
  private static final double[] ALONG = {1, 0.85, 0.65, 0.45, 0.25};
  private static final double AIR = 9;

  /** What is shorter is not drawn, in boxes. */
  private static final double SHORTEST = 0.02;

  private static final int AROUND = 8;
  private static final double NEARER = 1.6;
  private static final double FARTHER = 3;
  private static final double HALF_LETTER = 0.36;

  private final Paper paper;
  private final Labels labels;
  private final List<Shape> shapes = new ArrayList<>();
  private final List<Named> named = new ArrayList<>();

  private record Named(String name, Point from, Point to) {}

  Drawn(Paper paper) {
    this.paper = paper;
    this.labels = new Labels(paper.box());
    labels.avoid(paper.discBox());
  }

  /** An arrow between two places in boxes; {@code aside} moves it sideways, in pixels. */
  void arrow(String name, boolean hint, Point from, Point to, double aside) {
    if (Math.hypot(to.x() - from.x(), to.y() - from.y()) < SHORTEST) {
      return;
    }
    Point start = moved(paper.at(from.x(), from.y()), from, to, aside);
    Point end = moved(paper.at(to.x(), to.y()), from, to, aside);
    shapes.addAll(Arrow.of(start, end, hint ? HINT : FIRM));
    labels.avoid(new Shape.Line(start, end, FIRM));
    named.add(new Named(name, start, end));
  }

  private static Point moved(Point point, Point from, Point to, double aside) {
    double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
    double right = (to.x() - from.x()) / length;
    double up = (to.y() - from.y()) / length;
    return new Point(point.x() - aside * up, point.y() - aside * right);
  }

  /** The dashed lines from the head of an arrow to the axes of its components. */
  void components(Point head, double slope) {
    double along = head.x() * Math.cos(slope) + head.y() * Math.sin(slope);
    Point foot = new Point(along * Math.cos(slope), along * Math.sin(slope));
    Point other = new Point(head.x() - foot.x(), head.y() - foot.y());
    for (Point corner : List.of(foot, other)) {
      line(corner, head, COMPONENT);
      line(new Point(0, 0), corner, COMPONENT);
    }
  }

  /** What is missing from a closed polygon. */
  void gap(Point from, Point to) {
    line(from, to, GAP);
  }

  void line(Point from, Point to, Stroke stroke) {
    Shape.Line line =
        new Shape.Line(paper.at(from.x(), from.y()), paper.at(to.x(), to.y()), stroke);
    shapes.add(line);
    labels.avoid(line);
  }

  /** The paper, the arrows, the dot, and the names on top. */
  List<Shape> all(boolean dot) {
    List<Shape> all = new ArrayList<>(paper.lines());
    all.addAll(shapes);
    if (dot) {
      all.add(paper.disc());
    }
    named.forEach(n -> labels.put(n.name(), places(n)));
    all.addAll(labels.shapes());
    return all;
  }

  /** Beyond the head, then beside the shaft on both sides. */
  private static List<Shape.Text> places(Named arrow) {
    double dx = arrow.to().x() - arrow.from().x();
    double dy = arrow.to().y() - arrow.from().y();
    double length = Math.max(1, Math.hypot(dx, dy));
    double ux = dx / length;
    double uy = dy / length;
    List<Shape.Text> places = new ArrayList<>();
    places.add(text(arrow.name(), arrow.to(), ux, uy));
    for (double along : ALONG) {
      Point at = new Point(arrow.from().x() + along * dx, arrow.from().y() + along * dy);
      places.add(text(arrow.name(), at, uy, -ux));
      places.add(text(arrow.name(), at, -uy, ux));
    }
    for (int i = 0; i < 2 * AROUND; i++) {
      double angle = i * 2 * Math.PI / AROUND;
      double off = i < AROUND ? NEARER : FARTHER;
      places.add(text(arrow.name(), arrow.to(), off * Math.cos(angle), off * Math.sin(angle)));
    }
    return places;
  }

  /** A name that stands off a point in a direction. */
  private static Shape.Text text(String name, Point at, double ux, double uy) {
    Anchor anchor = ux > 0.35 ? Anchor.START : ux < -0.35 ? Anchor.END : Anchor.MIDDLE;
    double size = NAME.size();
    double room = anchor == Anchor.MIDDLE ? AIR + size * HALF_LETTER : AIR;
    Point base = new Point(at.x() + room * ux, at.y() + room * uy + HALF_LETTER * size);
    return new Shape.Text(base, name, NAME.at(anchor));
  }
}
