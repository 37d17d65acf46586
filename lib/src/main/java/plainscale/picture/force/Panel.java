package plainscale.picture.force;

import java.util.ArrayList;
import java.util.List;
import plainscale.picture.Canvas;
import plainscale.picture.Point;
import plainscale.picture.Shade;
import plainscale.picture.Stroke;
import plainscale.picture.TextBlock;
import plainscale.picture.Theme;

/** One piece of squared paper with the forces on one body, from its dot or head to tail. */
final class Panel {
  private static final double ABOVE = 5;
  private static final int MARGIN = 2;

  /** Directions that differ by less are drawn beside one another. */
  private static final double SAME_DIRECTION = 0.05;

  private static final double ASIDE = 6;

  /** A polygon whose ends are closer is closed, for the eye. */
  private static final double CLOSED = 0.12;

  private static final double UPRIGHT = 0.02;
  private static final Stroke SLOPE = Stroke.solid(Shade.LINE, 2);

  private final Body body;
  private final List<Force> forces;
  private final boolean fromTheDot;
  private final Scale scale;
  private final Edition edition;
  private final String caption;

  Panel(Body body, boolean fromTheDot, Scale scale, Edition edition, String caption) {
    this(body, body.forces(), fromTheDot, scale, edition, caption);
  }

  private Panel(
      Body body,
      List<Force> forces,
      boolean fromTheDot,
      Scale scale,
      Edition edition,
      String caption) {
    this.body = body;
    this.forces = isDrawn(edition, fromTheDot) ? forces : List.of();
    this.fromTheDot = fromTheDot;
    this.scale = scale;
    this.edition = edition;
    this.caption = caption;
  }

  private static boolean isDrawn(Edition edition, boolean fromTheDot) {
    return edition == Edition.WHOLE || (edition == Edition.DIRECTIONS && fromTheDot);
  }

  /** A small force alone, enlarged. */
  static Panel inset(Body body, Enlarged enlarged, Scale scale, String caption) {
    List<Force> one = List.of(enlarged.force());
    return new Panel(body, one, true, scale, Edition.WHOLE, caption);
  }

  private Extent extent() {
    Extent extent = fromTheDot ? Extent.fromTheDot(forces) : Extent.headToTail(forces);
    return extent.over(scale.newtons().doubleValue());
  }

  /** How many boxes it needs from top to bottom. */
  int down() {
    Extent extent = extent();
    return (int) Math.ceil(extent.up()) + (int) Math.ceil(extent.down()) + 2 * MARGIN;
  }

  private TextBlock block(int across) {
    List<TextBlock.Line> lines = List.of(new TextBlock.Line(caption, Theme.NAME));
    return TextBlock.wrapped(lines, across * Paper.BOX);
  }

  /** The room for the caption above paper of that width. */
  double above(int across) {
    return block(across).height() + ABOVE;
  }

  /** Draws paper of so many boxes below that corner, the caption above it. */
  void draw(Canvas canvas, Point corner, int across, int down) {
    canvas.addAll(block(across).standingOn(corner.x(), corner.y() - ABOVE));
    Paper paper = paper(corner, across, down);
    Drawn drawn = new Drawn(paper);
    if (fromTheDot) {
      fromTheDot(drawn);
    } else {
      headToTail(drawn);
    }
    canvas.addAll(drawn.all(fromTheDot));
    canvas.moveTo(paper.box().bottom());
  }

  private Paper paper(Point corner, int across, int down) {
    Extent extent = extent();
    int dotAcross = middle(extent.left(), extent.right(), across);
    int dotDown = middle(extent.up(), extent.down(), down);
    return Paper.of(corner, across, down, dotAcross, dotDown);
  }

  private static int middle(double before, double after, int all) {
    return (int) Math.round(before + (all - before - after) / 2);
  }

  private Point boxes(Force force) {
    return new Point(scale.boxes(force.across()), scale.boxes(force.up()));
  }

  private void fromTheDot(Drawn drawn) {
    Point dot = new Point(0, 0);
    if (body.slope() != 0) {
      double reach = 3;
      Point along = new Point(reach * Math.cos(body.slope()), reach * Math.sin(body.slope()));
      drawn.line(new Point(-along.x(), -along.y()), along, SLOPE);
    }
    List<Force> before = new ArrayList<>();
    for (Force force : forces) {
      if (edition == Edition.WHOLE && isOblique(force) && isVisible(force)) {
        drawn.components(boxes(force), body.slope());
      }
      double aside = ASIDE * before.stream().filter(b -> isAlong(b, force)).count();
      if (!force.isZero()) {
        drawn.arrow(force.label(), force.hint(), dot, boxes(force), aside);
      }
      before.add(force);
    }
  }

  private boolean isOblique(Force force) {
    double turned = Math.atan2(force.up(), force.across()) - body.slope();
    return !force.isZero() && Math.abs(Math.sin(2 * turned)) > 2 * UPRIGHT;
  }

  private boolean isVisible(Force force) {
    return Enlarged.of(force, scale).isEmpty();
  }

  private static boolean isAlong(Force a, Force b) {
    double cross = a.across() * b.up() - a.up() * b.across();
    double dot = a.across() * b.across() + a.up() * b.up();
    return dot > 0 && Math.abs(cross) < SAME_DIRECTION * dot;
  }

  private void headToTail(Drawn drawn) {
    Point at = new Point(0, 0);
    for (Force force : forces) {
      Point step = boxes(force);
      Point next = new Point(at.x() + step.x(), at.y() + step.y());
      if (!force.isZero()) {
        drawn.arrow(force.label(), force.hint(), at, next, 0);
      }
      at = next;
    }
    if (edition == Edition.WHOLE && Math.hypot(at.x(), at.y()) > CLOSED) {
      drawn.gap(at, new Point(0, 0));
    }
  }
}
