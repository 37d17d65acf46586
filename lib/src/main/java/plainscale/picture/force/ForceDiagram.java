package plainscale.picture.force;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import plainscale.magnitude.Writing;
import plainscale.picture.Canvas;
import plainscale.picture.Point;
import plainscale.picture.Scene;
import plainscale.picture.Shade;
import plainscale.picture.Shape;
import plainscale.picture.Stroke;

/**
 * What acts on bodies, drawn on squared paper: the forces on one body from a dot with their
 * components dashed, and beside it the same forces head to tail; or several bodies beside one
 * another, with their pairs linked. One scale for all. A force too small for it is a dot there and
 * drawn enlarged below, with the factor. Balanced or not, what is drawn is what was given.
 */
public final class ForceDiagram {
  /** The most bodies in one picture. */
  public static final int MOST_BODIES = 4;

  private static final int ACROSS = 13;
  private static final int MARGIN = 2;
  private static final double MOST_BOXES = ACROSS - 2.0 * MARGIN;
  private static final double MOST_DOWN = 14;
  private static final int FEWEST_DOWN = 7;

  /** Room to draw in where nothing is drawn. */
  private static final int DOWN_TO_DRAW = 12;

  private static final double GUTTER = 26;
  private static final double LINK = 16;
  private static final Stroke PAIR = Stroke.dotted(Shade.INK, 2);
  private static final double DIRECTION_BOXES = 4;

  private final List<Body> bodies;
  private final List<Pair> pairs;
  private final Edition edition;
  private final Canvas canvas;
  private final Scale scale;
  private final ForceWords words;

  private ForceDiagram(
      String title, List<Body> bodies, List<Pair> pairs, Edition edition, Writing writing) {
    this.bodies = edition == Edition.DIRECTIONS ? oneLength(bodies) : bodies;
    this.pairs = pairs;
    this.edition = edition;
    this.canvas = new Canvas(title);
    this.scale = scale(this.bodies);
    this.words = new ForceWords(bodies, pairs, scale(bodies), edition, writing);
  }

  /** The diagram as a scene; the title is drawn unless it is empty. */
  public static Scene of(
      String title, List<Body> bodies, List<Pair> pairs, Edition edition, Writing writing) {
    if (bodies.isEmpty() || bodies.size() > MOST_BODIES) {
      throw new IllegalArgumentException(
          "A force diagram shows from one to four bodies, not " + bodies.size() + ".");
    }
    return new ForceDiagram(title, List.copyOf(bodies), pairs, edition, writing).scene();
  }

  private static List<Body> oneLength(List<Body> bodies) {
    return bodies.stream()
        .map(b -> new Body(b.name(), b.forces().stream().map(ForceDiagram::unit).toList(), "", 0))
        .toList();
  }

  private static Force unit(Force force) {
    double size = force.isZero() ? 1 : force.newtons() / DIRECTION_BOXES;
    return new Force(force.label(), force.across() / size, force.up() / size, "", force.hint());
  }

  private static Scale scale(List<Body> bodies) {
    List<Double> components =
        bodies.stream()
            .flatMap(body -> body.forces().stream())
            .flatMapToDouble(force -> DoubleStream.of(force.across(), force.up()))
            .boxed()
            .toList();
    double largest =
        bodies.stream()
            .flatMap(b -> Stream.of(Extent.fromTheDot(b.forces()), Extent.headToTail(b.forces())))
            .mapToDouble(extent -> extent.largest(MOST_BOXES, MOST_DOWN))
            .max()
            .orElse(0);
    return Scale.of(components, largest > 0 ? largest : 1, MOST_BOXES);
  }

  private Scene scene() {
    if (bodies.size() == 1) {
      row(List.of(panel(bodies.get(0), true), panel(bodies.get(0), false)));
    } else {
      for (int i = 0; i < bodies.size(); i += 2) {
        List<Body> two = bodies.subList(i, Math.min(i + 2, bodies.size()));
        row(two.stream().map(body -> panel(body, true)).toList());
        links(i);
        canvas.skip(GUTTER / 2);
      }
    }
    insets();
    canvas.skip(8);
    words.legend(canvas);
    return canvas.scene(words.title(), words.alternative());
  }

  private Panel panel(Body body, boolean fromTheDot) {
    return new Panel(body, fromTheDot, scale, edition, words.caption(body, fromTheDot));
  }

  /** Panels side by side, all as high as the highest. */
  private void row(List<Panel> panels) {
    int fewest = edition == Edition.DOT ? DOWN_TO_DRAW : FEWEST_DOWN;
    int down = panels.stream().mapToInt(Panel::down).max().orElse(fewest);
    double above = panels.stream().mapToDouble(panel -> panel.above(ACROSS)).max().orElse(0);
    double top = canvas.y() + above;
    for (int i = 0; i < panels.size(); i++) {
      Point corner = new Point(left(i), top);
      panels.get(i).draw(canvas, corner, ACROSS, Math.max(fewest, down));
    }
  }

  private static double left(int column) {
    return Canvas.LEFT + column * (ACROSS * Paper.BOX + GUTTER);
  }

  /** A dotted line below two bodies from one to the other, for each pair of theirs. */
  private void links(int first) {
    for (Pair pair : pairs) {
      if (edition == Edition.WHOLE && pair.first() == first && pair.second() == first + 1) {
        double top = canvas.y() + LINK;
        double middle = ACROSS * Paper.BOX / 2;
        Point from = new Point(left(0) + middle, top);
        Point to = new Point(left(1) + middle, top);
        canvas.add(new Shape.Line(new Point(from.x(), top - LINK / 2), from, PAIR));
        canvas.add(new Shape.Line(from, to, PAIR));
        canvas.add(new Shape.Line(new Point(to.x(), top - LINK / 2), to, PAIR));
        canvas.moveTo(top + LINK / 4);
        canvas.write(from.x(), words.pair(pair));
      }
    }
  }

  /** Forces that are dots at this scale, enlarged by a power of ten. */
  private void insets() {
    if (edition != Edition.WHOLE) {
      return;
    }
    List<Panel> insets = new ArrayList<>();
    for (Body body : bodies) {
      for (Force force : body.forces()) {
        Enlarged.of(force, scale)
            .ifPresent(e -> insets.add(Panel.inset(body, e, scale, words.enlarged(body, e))));
      }
    }
    for (int i = 0; i < insets.size(); i += 2) {
      canvas.skip(GUTTER / 2);
      row(insets.subList(i, Math.min(i + 2, insets.size())));
    }
  }
}
