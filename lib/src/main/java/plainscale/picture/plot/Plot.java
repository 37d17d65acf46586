package plainscale.picture.plot;

import java.util.ArrayList;
import java.util.List;
import plainscale.magnitude.Writing;
import plainscale.picture.Box;
import plainscale.picture.Canvas;
import plainscale.picture.Point;
import plainscale.picture.Scene;
import plainscale.picture.Shade;
import plainscale.picture.Shape;
import plainscale.picture.Stroke;
import plainscale.picture.TextBlock;
import plainscale.picture.Theme;

/**
 * One or more plots over one another with one axis below them all. The title of an upright axis
 * stands level above it, where it is easiest to read.
 */
public final class Plot {
  private static final double GAP = 14;
  private static final double RIGHT = 12;
  private static final double SAMPLE = 34;

  private final Axis across;
  private final List<Panel> panels;
  private final Writing writing;
  private final Canvas canvas;

  /** One plot: its upright axis, its height in pixels, and what it shows from back to front. */
  public record Panel(Axis up, double height, List<Series> series) {
    /** Keeps its own copy of the series. */
    public Panel {
      series = List.copyOf(series);
    }
  }

  private Plot(String title, Axis across, List<Panel> panels, Writing writing) {
    this.across = across;
    this.panels = panels;
    this.writing = writing;
    this.canvas = new Canvas(title);
  }

  /** The plots as a scene; notes are set below, the alternative says all that is to be seen. */
  public static Scene of(
      String title,
      Axis across,
      List<Panel> panels,
      List<String> notes,
      String alternative,
      Writing writing) {
    Plot plot = new Plot(title, across, List.copyOf(panels), writing);
    plot.draw();
    notes.forEach(plot.canvas::note);
    return plot.canvas.scene(title.isEmpty() ? panels.get(0).up().title() : title, alternative);
  }

  private void draw() {
    double left =
        panels.stream().mapToDouble(panel -> Frame.left(panel.up(), writing)).max().orElse(0);
    for (Panel panel : panels) {
      boolean last = panel.equals(panels.get(panels.size() - 1));
      title(panel.up());
      double width = Canvas.RIGHT - RIGHT - Canvas.LEFT - left;
      Box box = new Box(Canvas.LEFT + left, canvas.y() + GAP, width, panel.height());
      panel(new Area(across, panel.up(), box), panel, last);
      canvas.moveTo(box.bottom() + Frame.below(last));
      canvas.skip(GAP);
    }
    panels.stream().flatMap(panel -> panel.series().stream()).forEach(this::legend);
  }

  private void title(Axis up) {
    canvas.write(Canvas.LEFT, List.of(new TextBlock.Line(up.title(), Theme.WORDS)));
  }

  private void panel(Area area, Panel panel, boolean last) {
    Frame frame = new Frame(area, writing);
    canvas.addAll(frame.behind());
    SeriesShapes shapes = new SeriesShapes(area);
    panel.series().forEach(series -> canvas.addAll(series.accept(shapes)));
    canvas.addAll(frame.front(last));
  }

  /** A sample of the series before its name. */
  private void legend(Series series) {
    if (series.name().isEmpty()) {
      return;
    }
    double top = canvas.y();
    canvas.write(Canvas.LEFT + SAMPLE, List.of(new TextBlock.Line(series.name(), Theme.LABEL)));
    double middle = top + 0.68 * Theme.LABEL.size();
    canvas.addAll(series.accept(new Sample(Canvas.LEFT, middle)));
  }

  /** How a series looks, in the room of a word. */
  private record Sample(double left, double middle) implements Series.Visitor<List<Shape>> {
    private static final double LENGTH = 24;
    private static final double HALF = 6;

    private List<Shape> line(Stroke stroke) {
      return List.of(
          new Shape.Line(new Point(left, middle), new Point(left + LENGTH, middle), stroke));
    }

    private List<Shape> area() {
      Box box = new Box(left, middle - HALF, LENGTH, 2 * HALF);
      return List.of(new Shape.Rectangle(box, Shade.BAND, 0));
    }

    @Override
    public List<Shape> points(Series.Points points) {
      Point place = new Point(left + LENGTH / 2, middle);
      return new ArrayList<>(SeriesShapes.marks(List.of(place), points.mark()));
    }

    @Override
    public List<Shape> curve(Series.Curve curve) {
      return line(curve.stroke());
    }

    @Override
    public List<Shape> band(Series.Band band) {
      return area();
    }

    @Override
    public List<Shape> bars(Series.Bars bars) {
      return area();
    }

    @Override
    public List<Shape> level(Series.Level level) {
      return line(level.stroke());
    }
  }
}
