package plainscale.picture.field;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import plainscale.field.Chart;
import plainscale.field.Moment;
import plainscale.field.Trajectory;
import plainscale.magnitude.Writing;
import plainscale.picture.Box;
import plainscale.picture.Canvas;
import plainscale.picture.Labels;
import plainscale.picture.Point;
import plainscale.picture.Scene;
import plainscale.picture.Shade;
import plainscale.picture.Shape;
import plainscale.picture.Stroke;
import plainscale.picture.TextRole;
import plainscale.picture.TextStyle;
import plainscale.picture.TextStyle.Weight;

/** The way of a body over the equipotentials, with numbered marks for the moments of a table. */
public final class PathMap {
  private static final Stroke PATH = Stroke.solid(Shade.ACCENT, 3);
  private static final double RADIUS = 5;
  private static final double DUST = 1e-9;
  private static final double BESIDE = 15;
  private static final double MIDDLE = 0.36;
  private static final TextStyle NUMBER =
      TextStyle.centred(TextRole.VALUE, 16, Weight.BOLD, Shade.INK).withHalo();

  private final Chart chart;
  private final Trajectory trajectory;
  private final List<Mark> marks;
  private final Canvas canvas;
  private final MapPaper paper;
  private final Measure potential;

  /** A moment with a name for the legend: "start", "closest". */
  public record Mark(String name, Moment moment) {}

  private PathMap(
      String title, Chart chart, Trajectory trajectory, List<Mark> marks, Writing writing) {
    this.chart = chart;
    this.trajectory = trajectory;
    this.marks = List.copyOf(marks);
    this.canvas = new Canvas(title);
    canvas.skip(MapPaper.above());
    this.paper = new MapPaper(chart.frame(), canvas.y(), writing);
    this.potential = FieldMap.potential(chart, writing);
  }

  /** The map as a scene; marks are numbered from one in their order. */
  public static Scene of(
      String title, Chart chart, Trajectory trajectory, List<Mark> marks, Writing writing) {
    PathMap map = new PathMap(title, chart, trajectory, marks, writing);
    map.draw();
    MapWords words = new MapWords(chart, map.paper.length(), map.potential, writing);
    map.canvas.note(map.legend());
    map.canvas.note(MapWords.equipotentials(chart.levels(), map.potential, true));
    return map.canvas.scene("The way of a body", map.alternative(words, writing));
  }

  private static Vector2D flat(Moment moment) {
    return new Vector2D(moment.place().getX(), moment.place().getY());
  }

  private void draw() {
    SourceMarks sources = new SourceMarks(chart, paper);
    ContourLayer contours = new ContourLayer(paper, potential, chart.levels().step());
    canvas.addAll(contours.lines(chart.contours()));
    List<Point> path = paper.curve(trajectory.samples().stream().map(PathMap::flat).toList());
    canvas.add(new Shape.Curve(path, PATH));
    Labels labels = new Labels(paper.box());
    sources.boxes().forEach(labels::avoid);
    List<Shape> dots = dots(labels);
    contours.label(chart.contours(), labels);
    canvas.addAll(labels.shapes());
    canvas.addAll(paper.axes());
    canvas.addAll(sources.shapes());
    canvas.addAll(dots);
    canvas.moveTo(paper.bottom());
    canvas.skip(FieldMap.BELOW);
  }

  private List<Shape> dots(Labels labels) {
    List<Shape> dots = new ArrayList<>();
    for (Mark mark : marks) {
      Point at = paper.at(flat(mark.moment()));
      dots.add(new Shape.Discs(List.of(at), RADIUS, Shade.INK));
      dots.add(new Shape.Discs(List.of(at), RADIUS - 2, Shade.GROUND));
      labels.avoid(new Box(at.x() - RADIUS, at.y() - RADIUS, 2 * RADIUS, 2 * RADIUS));
    }
    for (int i = 0; i < marks.size(); i++) {
      Point at = paper.at(flat(marks.get(i).moment()));
      labels.putIfFree(String.valueOf(i + 1), around(at, String.valueOf(i + 1)), 0);
    }
    return dots;
  }

  private static List<Shape.Text> around(Point at, String number) {
    List<Shape.Text> places = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      double angle = Math.PI / 4 * (i + 1);
      double x = at.x() + BESIDE * Math.cos(angle);
      double y = at.y() - BESIDE * Math.sin(angle) + MIDDLE * NUMBER.size();
      places.add(new Shape.Text(new Point(x, y), number, NUMBER));
    }
    return places;
  }

  private String legend() {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < marks.size(); i++) {
      names.add((i + 1) + " " + marks.get(i).name());
    }
    return "Thick line: the way of the body. " + String.join(", ", names) + ".";
  }

  private String alternative(MapWords words, Writing writing) {
    List<String> sentences = new ArrayList<>(List.of("The way of a body in a field."));
    sentences.addAll(words.places());
    double fastest =
        trajectory.samples().stream().mapToDouble(m -> m.velocity().getNorm()).max().orElse(0);
    for (Mark mark : marks) {
      Moment moment = mark.moment();
      double speed = moment.velocity().getNorm() > DUST * fastest ? moment.velocity().getNorm() : 0;
      sentences.add(
          "%s: after %s at %s with %s."
              .formatted(
                  mark.name(),
                  Measure.of("s", moment.time(), writing).text(moment.time()),
                  paper.length().place(flat(moment)),
                  Measure.of("m/s", speed, writing).text(speed)));
    }
    sentences.addAll(words.potentials());
    return MapWords.plain(String.join(" ", sentences));
  }
}
