package plainscale.picture.field;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import plainscale.field.Nature;
import plainscale.field.Section;
import plainscale.magnitude.Writing;
import plainscale.picture.Scene;
import plainscale.picture.Shade;
import plainscale.picture.Stroke;
import plainscale.picture.Symbol;
import plainscale.picture.plot.Axis;
import plainscale.picture.plot.Plot;
import plainscale.picture.plot.Series;

/** Potential and the field along a line, over one another; cut where they run away. */
public final class SectionPlot {
  private static final double HEIGHT = 190;
  private static final double OUTER = 0.05;

  /** Values that lie farther out than this many times the usual range are cut off. */
  private static final double FAR = 1.2;

  private static final double AIR = 0.1;
  private static final int READ = 9;
  private static final Stroke CURVE = Stroke.solid(Shade.ACCENT, 2.4);
  private static final Stroke ZERO = Stroke.solid(Shade.LINE, 1.2);

  private final Nature nature;
  private final Section section;
  private final Writing writing;
  private final Measure length;
  private final Range potential;
  private final Range field;

  /** From where to where values are shown, their unit, and whether some lie outside. */
  private record Range(double low, double high, Measure unit, boolean isCut) {}

  private SectionPlot(Nature nature, Section section, Writing writing) {
    this.nature = nature;
    this.section = section;
    this.writing = writing;
    this.length = Measure.length(Vector3D.distance(section.from(), section.to()), writing);
    this.potential = range(sample -> sample.value().potential(), nature.potentialUnit());
    this.field = range(Section.Sample::along, nature.fieldUnit());
  }

  /** The two plots as a scene; the title is drawn unless it is empty. */
  public static Scene of(String title, Nature nature, Section section, Writing writing) {
    return new SectionPlot(nature, section, writing).scene(title);
  }

  private Scene scene(String title) {
    double end = Vector3D.distance(section.from(), section.to());
    Axis across = new Axis(length.over(Symbol.of("s")), 0, length.in(end), false);
    List<Plot.Panel> panels =
        List.of(
            panel(potential, "V", sample -> sample.value().potential()),
            panel(field, nature.fieldSymbol() + "_s", Section.Sample::along));
    return Plot.of(title, across, panels, notes(), alternative(), writing);
  }

  private Plot.Panel panel(Range range, String symbol, ToDoubleFunction<Section.Sample> value) {
    Measure unit = range.unit();
    Axis up =
        new Axis(unit.over(Symbol.of(symbol)), unit.in(range.low()), unit.in(range.high()), false);
    List<Series> series = new ArrayList<>();
    if (range.low() < 0 && range.high() > 0) {
      series.add(new Series.Level("", 0, false, ZERO));
    }
    List<Series.Spot> piece = new ArrayList<>();
    for (Section.Sample sample : section.samples()) {
      double number = value.applyAsDouble(sample);
      if (Double.isFinite(number)) {
        piece.add(new Series.Spot(length.in(sample.s()), unit.in(number)));
      } else {
        add(piece, series);
        piece = new ArrayList<>();
      }
    }
    add(piece, series);
    return new Plot.Panel(up, HEIGHT, series);
  }

  private static void add(List<Series.Spot> piece, List<Series> series) {
    if (!piece.isEmpty()) {
      series.add(new Series.Curve("", piece, CURVE));
    }
  }

  private Range range(ToDoubleFunction<Section.Sample> value, String unit) {
    double[] sorted =
        section.samples().stream().mapToDouble(value).filter(Double::isFinite).sorted().toArray();
    if (sorted.length == 0) {
      return new Range(-1, 1, Measure.of(unit, 1, writing), true);
    }
    double low = sorted[(int) Math.round(OUTER * (sorted.length - 1))];
    double high = sorted[(int) Math.round((1 - OUTER) * (sorted.length - 1))];
    double room = FAR * (high - low);
    boolean far = sorted[0] < low - room || sorted[sorted.length - 1] > high + room;
    double least = Math.max(sorted[0], low - room);
    double greatest = Math.min(sorted[sorted.length - 1], high + room);
    double air = greatest > least ? AIR * (greatest - least) : flat(greatest);
    double size = Math.max(Math.abs(least), Math.abs(greatest));
    boolean infinite = sorted.length < section.samples().size();
    return new Range(least - air, greatest + air, Measure.of(unit, size, writing), far || infinite);
  }

  private static double flat(double value) {
    return value == 0 ? 1 : Math.abs(value) / 2;
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(line() + ".");
    String symbol = nature.fieldSymbol();
    notes.add(
        "Below: the component of the field along the line, %s = −d%s/ds; where the curve above falls, it points forwards."
            .formatted(Symbol.of(symbol + "_s"), Symbol.of("V")));
    if (potential.isCut() || field.isCut()) {
      notes.add(cut());
    }
    return notes;
  }

  private String cut() {
    List<String> parts = new ArrayList<>();
    if (potential.isCut()) {
      parts.add(
          "V beyond %s and %s"
              .formatted(
                  potential.unit().text(potential.low()), potential.unit().text(potential.high())));
    }
    if (field.isCut()) {
      parts.add(
          "%s beyond %s and %s"
              .formatted(
                  nature.fieldSymbol() + " along the line",
                  field.unit().text(field.low()),
                  field.unit().text(field.high())));
    }
    return "Cut off beside sources: " + String.join("; ", parts) + ".";
  }

  private String line() {
    return "From "
        + length.place(section.from().getX(), section.from().getY())
        + " in a straight line to "
        + length.place(section.to().getX(), section.to().getY());
  }

  private String alternative() {
    List<String> sentences = new ArrayList<>();
    sentences.add("Potential and field along a line. " + line() + ".");
    List<String> list = new ArrayList<>();
    int last = section.samples().size() - 1;
    for (int i = 0; i < READ; i++) {
      Section.Sample sample =
          section.samples().get((int) Math.round((double) last * i / (READ - 1)));
      list.add(
          "s = %s: potential %s, field along the line %s"
              .formatted(
                  length.text(sample.s()),
                  potential.unit().text(sample.value().potential()),
                  field.unit().text(sample.along())));
    }
    sentences.add(String.join("; ", list) + ".");
    sentences.add(turns());
    if (potential.isCut() || field.isCut()) {
      sentences.add(cut());
    }
    return MapWords.plain(String.join(" ", sentences));
  }

  /**
   * Where the field along the line goes through zero, so that the potential is highest or lowest.
   */
  private String turns() {
    List<String> places = new ArrayList<>();
    for (int i = 1; i < section.samples().size(); i++) {
      Section.Sample one = section.samples().get(i - 1);
      Section.Sample other = section.samples().get(i);
      boolean turns = one.along() * other.along() < 0 || (other.along() == 0 && one.along() != 0);
      boolean steady =
          Math.abs(one.along()) < field.high() - field.low()
              && Math.abs(other.along()) < field.high() - field.low();
      if (turns && steady && places.size() < READ) {
        String kind = one.along() < 0 ? "highest" : "lowest";
        double share = one.along() / (one.along() - other.along());
        double s = one.s() + share * (other.s() - one.s());
        places.add("s = " + length.text(s) + " (potential " + kind + ")");
      }
    }
    return places.isEmpty()
        ? "The field along the line does not go through zero."
        : "The field along the line is zero at " + String.join(", ", places) + ".";
  }
}
