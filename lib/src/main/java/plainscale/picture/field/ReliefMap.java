package plainscale.picture.field;

import java.util.ArrayList;
import java.util.List;
import plainscale.field.Frame;
import plainscale.field.Levels;
import plainscale.field.Nature;
import plainscale.field.Relief;
import plainscale.magnitude.Writing;
import plainscale.picture.Canvas;
import plainscale.picture.Point;
import plainscale.picture.Scene;
import plainscale.picture.Shade;
import plainscale.picture.Shape;
import plainscale.picture.Stroke;
import plainscale.picture.Symbol;
import plainscale.picture.TextStyle.Anchor;
import plainscale.picture.TextWidth;
import plainscale.picture.plot.Axis;

/**
 * The potential as height in a perspective drawing, looked at along y, with a scale of heights on
 * its left and the lengths along two edges of the ground.
 */
public final class ReliefMap {
  private static final double RIGHT = 56;
  private static final double UPWARDS = 60;
  private static final Stroke LINE = Stroke.solid(Shade.INK, 1.5);
  private static final int MOST = 6;
  private static final int READ_ROWS = 3;
  private static final int READ_COLUMNS = 5;

  private final Nature nature;
  private final Relief relief;
  private final Levels levels;
  private final Writing writing;
  private final Canvas canvas;
  private final Measure length;
  private final Measure potential;
  private final Axis heights;
  private final double left;
  private final double right;
  private final double depth;

  private ReliefMap(String title, Nature nature, Relief relief, Levels levels, Writing writing) {
    this.nature = nature;
    this.relief = relief;
    this.levels = levels;
    this.writing = writing;
    this.canvas = new Canvas(title);
    this.length = Measure.length(frame(), writing);
    double largest = Math.max(Math.abs(relief.lowest()), Math.abs(relief.highest()));
    this.potential =
        Measure.of(nature.potentialUnit(), largest, writing).resolving(largest, levels.step());
    String symbol = potential.over(Symbol.of("V"));
    this.heights =
        new Axis(symbol, potential.in(relief.lowest()), potential.in(relief.highest()), false);
    double numbers =
        heights.ticks(MOST, writing).stream()
            .mapToDouble(tick -> TextWidth.of(tick.label(), MapPaper.NUMBER))
            .max()
            .orElse(0);
    this.left = Canvas.LEFT + numbers + MapPaper.TICK + MapPaper.AIR;
    this.right = Canvas.RIGHT - RIGHT;
    this.depth = frame().height() / frame().width();
  }

  /** The relief as a scene; the title is drawn unless it is empty. */
  public static Scene of(
      String title, Nature nature, Relief relief, Levels levels, Writing writing) {
    ReliefMap map = new ReliefMap(title, nature, relief, levels, writing);
    map.draw();
    map.notes().forEach(map.canvas::note);
    return map.canvas.scene("The potential as height", map.alternative());
  }

  private Frame frame() {
    return relief.grid().frame();
  }

  private void draw() {
    double width = right - left;
    Perspective sketch = Perspective.of(left, width, 0);
    double highest =
        Math.min(sketch.at(0, 0, Surface.HIGH).y(), sketch.at(0, depth, Surface.HIGH).y());
    double bottom = canvas.y() + MapPaper.above() - highest;
    Perspective view = Perspective.of(left, width, bottom);
    Surface surface = new Surface(relief, levels, view);
    canvas.addAll(surface.shapes());
    canvas.addAll(front(surface, view));
    scale(view);
    across(view);
    away(surface);
    canvas.moveTo(bottom + UPWARDS);
  }

  /** The cut at the front, down to the lowest height. */
  private List<Shape> front(Surface surface, Perspective view) {
    List<Point> edge = new ArrayList<>();
    for (int column = 0; column < relief.grid().columns(); column++) {
      edge.add(surface.node(column, 0));
    }
    List<Point> top = Thinning.of(edge);
    List<Point> wall = new ArrayList<>(top);
    wall.add(view.at(0.5, 0, 0));
    wall.add(view.at(-0.5, 0, 0));
    return List.of(new Shape.Polygon(wall, Shade.BAND), new Shape.Curve(top, LINE));
  }

  private void scale(Perspective view) {
    Point foot = view.at(-0.5, 0, 0);
    Point head = view.at(-0.5, 0, Surface.HIGH);
    canvas.add(new Shape.Line(foot, head, LINE));
    for (Axis.Tick tick : heights.ticks(MOST, writing)) {
      Point at = view.at(-0.5, 0, Surface.HIGH * heights.at(tick.value()));
      canvas.add(new Shape.Line(new Point(at.x() - MapPaper.TICK, at.y()), at, LINE));
      number(
          tick.label(),
          new Point(at.x() - MapPaper.TICK - MapPaper.AIR, middle(at.y())),
          Anchor.END);
    }
    Point title = new Point(Canvas.LEFT, head.y() - 14);
    canvas.add(new Shape.Text(title, heights.title(), MapPaper.TITLE.at(Anchor.START)));
  }

  private static double middle(double y) {
    return y + 0.36 * MapPaper.NUMBER.size();
  }

  private void number(String label, Point at, Anchor anchor) {
    canvas.add(new Shape.Text(at, label, MapPaper.NUMBER.at(anchor)));
  }

  private Axis axis(String symbol, double low, double high) {
    return new Axis(length.over(Symbol.of(symbol)), length.in(low), length.in(high), false);
  }

  private void across(Perspective view) {
    Axis axis = axis("x", frame().left(), frame().right());
    canvas.add(new Shape.Line(view.at(-0.5, 0, 0), view.at(0.5, 0, 0), LINE));
    double below = view.at(0, 0, 0).y();
    double baseline = below + MapPaper.TICK + MapPaper.AIR + 0.78 * MapPaper.NUMBER.size();
    double end = Double.NEGATIVE_INFINITY;
    for (Axis.Tick tick : axis.ticks(MOST, writing)) {
      Point at = view.at(axis.at(tick.value()) - 0.5, 0, 0);
      canvas.add(new Shape.Line(at, new Point(at.x(), at.y() + MapPaper.TICK), LINE));
      Shape.Text text = new Shape.Text(new Point(at.x(), baseline), tick.label(), MapPaper.NUMBER);
      if (text.box().x() > end + MapPaper.AIR) {
        canvas.add(text);
        end = text.box().right();
      }
    }
    Point title = new Point((left + right) / 2, baseline + 1.35 * MapPaper.TITLE.size());
    canvas.add(new Shape.Text(title, axis.title(), MapPaper.TITLE));
  }

  /** Along the right edge of the surface, away from the reader; the ground below is hidden. */
  private void away(Surface surface) {
    Axis axis = axis("y", frame().bottom(), frame().top());
    int rows = relief.grid().rows();
    int last = relief.grid().columns() - 1;
    List<Point> edge = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      edge.add(surface.node(last, row));
    }
    canvas.add(new Shape.Curve(Thinning.of(edge), LINE));
    double end = Double.POSITIVE_INFINITY;
    for (Axis.Tick tick : axis.ticks(MOST, writing)) {
      Point at = edge.get((int) Math.rint((rows - 1) * axis.at(tick.value())));
      Point beside = new Point(at.x() + MapPaper.TICK, at.y());
      canvas.add(new Shape.Line(at, beside, LINE));
      Point place = new Point(beside.x() + MapPaper.AIR, middle(at.y()));
      Shape.Text text = new Shape.Text(place, tick.label(), MapPaper.NUMBER.at(Anchor.START));
      if (text.box().bottom() < end) {
        canvas.add(text);
        end = text.box().y();
      }
    }
    Point far = edge.get(rows - 1);
    Point title = new Point(far.x() + 3 * MapPaper.AIR, end - MapPaper.AIR);
    canvas.add(new Shape.Text(title, axis.title(), MapPaper.TITLE.at(Anchor.START)));
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(
        levels.values().isEmpty()
            ? "The potential is the same throughout."
            : "Height: the potential. Contour lines every "
                + potential.text(levels.step())
                + (levels.values().contains(0.0) ? "; zero is the thick one." : "."));
    if (relief.isCut()) {
      notes.add(cut());
    }
    return notes;
  }

  private String cut() {
    return "Cut off at %s and %s; where the surface is flat there, the potential goes on beyond."
        .formatted(potential.text(relief.lowest()), potential.text(relief.highest()));
  }

  private String alternative() {
    List<String> sentences = new ArrayList<>();
    sentences.add("The potential as height, looked at along y.");
    SourceWords sources = new SourceWords(nature, relief.grid().configuration(), length);
    sentences.add(sources.sentence());
    sentences.add(
        "The ground reaches from x = %s to %s and from y = %s to %s."
            .formatted(
                length.text(frame().left()),
                length.text(frame().right()),
                length.text(frame().bottom()),
                length.text(frame().top())));
    sentences.addAll(notes());
    for (int i = READ_ROWS - 1; i >= 0; i--) {
      sentences.add(row((relief.grid().rows() - 1) * i / (READ_ROWS - 1)));
    }
    return MapWords.plain(String.join(" ", sentences));
  }

  private String row(int row) {
    List<String> list = new ArrayList<>();
    for (int i = 0; i < READ_COLUMNS; i++) {
      int column = (relief.grid().columns() - 1) * i / (READ_COLUMNS - 1);
      list.add(
          length.text(relief.grid().x(column))
              + ": "
              + potential.text(relief.grid().value(column, row)));
    }
    return "Along y = "
        + length.text(relief.grid().y(row))
        + ", from the left at x = "
        + String.join("; ", list)
        + ".";
  }
}
