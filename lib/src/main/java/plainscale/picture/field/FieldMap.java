package plainscale.picture.field;

import plainscale.field.Chart;
import plainscale.magnitude.Writing;
import plainscale.picture.Canvas;
import plainscale.picture.Labels;
import plainscale.picture.Scene;

/** A field from above: field lines or arrows, equipotentials with their numbers, the sources. */
public final class FieldMap {
  static final double BELOW = 10;

  private final Chart chart;
  private final Canvas canvas;
  private final MapPaper paper;
  private final Measure potential;

  private FieldMap(String title, Chart chart, Writing writing) {
    this.chart = chart;
    this.canvas = new Canvas(title);
    canvas.skip(MapPaper.above());
    this.paper = new MapPaper(chart.frame(), canvas.y(), writing);
    this.potential = potential(chart, writing);
  }

  /** The map as a scene; the title is drawn unless it is empty. */
  public static Scene of(String title, Chart chart, Writing writing) {
    FieldMap map = new FieldMap(title, chart, writing);
    map.draw();
    MapWords words = new MapWords(chart, map.paper.length(), map.potential, writing);
    words.notes().forEach(map.canvas::note);
    return map.canvas.scene(words.title(), words.alternative());
  }

  /** The unit that suits the equipotentials of a chart. */
  static Measure potential(Chart chart, Writing writing) {
    double largest = chart.levels().values().stream().mapToDouble(Math::abs).max().orElse(0);
    return Measure.of(chart.nature().potentialUnit(), largest, writing)
        .resolving(largest, chart.levels().step());
  }

  private void draw() {
    SourceMarks marks = new SourceMarks(chart, paper);
    ContourLayer contours = new ContourLayer(paper, potential, chart.levels().step());
    canvas.addAll(contours.lines(chart.contours()));
    chart.lines().ifPresent(lines -> canvas.addAll(ArrowLayer.lines(lines, paper)));
    chart.arrows().ifPresent(arrows -> canvas.addAll(ArrowLayer.grid(arrows, paper)));
    Labels labels = new Labels(paper.box());
    marks.boxes().forEach(labels::avoid);
    if (chart.arrows().isEmpty()) {
      contours.label(chart.contours(), labels);
    }
    canvas.addAll(labels.shapes());
    canvas.addAll(paper.axes());
    canvas.addAll(marks.shapes());
    canvas.moveTo(paper.bottom());
    canvas.skip(BELOW);
  }
}
