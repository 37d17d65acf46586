package plainscale.picture.field;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plainscale.field.Arrows;
import plainscale.field.Chart;
import plainscale.field.FieldLine;
import plainscale.field.FieldLines;
import plainscale.field.Levels;
import plainscale.field.LineEnd;
import plainscale.field.Nature;
import plainscale.field.Source;
import plainscale.magnitude.Writing;
import plainscale.picture.Symbol;

/** What a map says below itself, and all that it shows in words. */
final class MapWords {
  private static final int READ = 9;

  private final Chart chart;
  private final Measure length;
  private final Measure potential;
  private final SourceWords sources;
  private final Writing writing;

  MapWords(Chart chart, Measure length, Measure potential, Writing writing) {
    this.chart = chart;
    this.length = length;
    this.potential = potential;
    this.sources = new SourceWords(chart.nature(), chart.configuration(), length);
    this.writing = writing;
  }

  /** The notes below the map. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    chart.lines().ifPresent(lines -> notes.add(drawn(lines)));
    chart.arrows().ifPresent(arrows -> notes.add(rule(arrows)));
    notes.add(equipotentials(chart.levels(), potential, chart.arrows().isEmpty()));
    chart.lines().ifPresent(lines -> notes.add(lines.caution()));
    chart.lines().ifPresent(lines -> notes.addAll(lines.remarks()));
    return notes;
  }

  private String drawn(FieldLines lines) {
    double most = lines.tallies().stream().mapToDouble(FieldLines.Tally::due).max().orElse(0);
    double largest =
        lines.tallies().stream()
            .mapToDouble(tally -> Math.abs(tally.footprint().amount()))
            .max()
            .orElse(0);
    if (largest == 0) {
      return "There is nothing from which a field line starts.";
    }
    String unit = chart.nature().amountUnit();
    boolean pointwise =
        chart.configuration().sources().stream()
            .allMatch(source -> source instanceof plainscale.field.PointCharge);
    String amount = Measure.of(unit, largest, writing).text(largest);
    String count = Math.round(most) + " for " + (pointwise ? amount : "the largest source");
    return "Lines with arrow heads: field lines, " + count + ".";
  }

  private String rule(Arrows arrows) {
    if (arrows.full() == 0) {
      return "The field is zero everywhere in this frame.";
    }
    Measure strength = Measure.of(chart.nature().fieldUnit(), arrows.full(), writing);
    return "Arrows: the field in the middle of each; length as the square root of its strength (half"
        + " as long: a quarter as strong). One that reaches from one place to the next: "
        + strength.text(arrows.full())
        + ". Thick ones are cut to that length; the field there is stronger.";
  }

  /** How equipotentials look and what their step is. */
  static String equipotentials(Levels levels, Measure potential, boolean numbered) {
    if (levels.values().isEmpty()) {
      return "The potential is the same throughout, "
          + "so that there are no equipotentials to draw.";
    }
    return "Equipotentials every "
        + potential.text(levels.step())
        + (numbered ? " (numbers in " + potential.unit() + ")" : "")
        + ": dashed above zero, dotted below, zero a whole grey line.";
  }

  String title() {
    return chart.nature() == Nature.ELECTRIC ? "Electric field" : "Gravitational field";
  }

  /** All of it in words. */
  String alternative() {
    List<String> sentences = new ArrayList<>(List.of("Map of a field."));
    sentences.addAll(places());
    sentences.addAll(potentials());
    chart.lines().ifPresent(lines -> sentences.addAll(ends(lines)));
    chart.arrows().ifPresent(arrows -> sentences.add(rule(arrows)));
    chart.arrows().ifPresent(arrows -> sentences.add(compass(arrows)));
    sentences.add(nulls());
    chart.lines().ifPresent(lines -> sentences.add(lines.caution()));
    return plain(String.join(" ", sentences));
  }

  static String plain(String text) {
    return Symbol.spoken(text).replace('\u00a0', ' ');
  }

  /** The sources and the frame. */
  List<String> places() {
    String frame =
        "The frame reaches from x = %s to %s and from y = %s to %s."
            .formatted(
                length.text(chart.frame().left()),
                length.text(chart.frame().right()),
                length.text(chart.frame().bottom()),
                length.text(chart.frame().top()));
    return List.of(sources.sentence(), frame);
  }

  /** The step of the equipotentials, the extremes, and a list along the middle. */
  List<String> potentials() {
    List<String> sentences = new ArrayList<>();
    List<Double> levels = chart.levels().values();
    sentences.add(
        levels.isEmpty()
            ? "No equipotentials."
            : "Equipotentials every %s from %s to %s."
                .formatted(
                    potential.text(chart.levels().step()),
                    potential.text(levels.get(0)),
                    potential.text(levels.get(levels.size() - 1))));
    sentences.add(extremes());
    String list =
        chart.readings().stream()
            .map(r -> "x = " + length.text(r.x()) + ": " + potential.text(r.potential()))
            .collect(joining("; "));
    double y = chart.readings().get(0).y();
    sentences.add("Potential along y = " + length.text(y) + ", from the left: " + list + ".");
    return sentences;
  }

  /** Where the potential has no bound. */
  private String extremes() {
    if (chart.configuration().sources().isEmpty()) {
      return "The potential is zero throughout.";
    }
    List<String> high = new ArrayList<>();
    List<String> low = new ArrayList<>();
    int number = 1;
    for (Source source : chart.configuration().sources()) {
      boolean up = chart.configuration().constant() * source.amount() > 0;
      (up ? high : low).add(String.valueOf(number++));
    }
    String above = high.isEmpty() ? "far from all sources" : "at " + numbered(high);
    String below = low.isEmpty() ? "far from all sources" : "at " + numbered(low);
    return "The potential is highest %s, lowest %s.".formatted(above, below);
  }

  private static String numbered(List<String> numbers) {
    return (numbers.size() == 1 ? "source " : "sources ") + String.join(", ", numbers);
  }

  /** From where to where the field lines go, and how many. */
  private List<String> ends(FieldLines lines) {
    List<String> footprints = new ArrayList<>();
    int number = 1;
    for (Source source : chart.configuration().sources()) {
      int its = number++;
      source.footprints(chart.frame()).forEach(print -> footprints.add("source " + its));
    }
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (FieldLine line : lines.lines()) {
      String way = "from " + end(line.start(), footprints) + " to " + end(line.end(), footprints);
      counts.merge(way, 1, Integer::sum);
    }
    String list =
        counts.entrySet().stream()
            .map(way -> way.getValue() + " " + way.getKey())
            .collect(joining("; "));
    return List.of(list.isEmpty() ? "No field lines." : "Field lines: " + list + ".");
  }

  private static String end(LineEnd end, List<String> footprints) {
    if (end instanceof LineEnd.AtCharge charge) {
      return footprints.get(charge.footprint());
    }
    return switch ((LineEnd.Elsewhere) end) {
      case FRAME -> "beyond the frame";
      case NULL_POINT -> "a place where the field is zero";
      case TOO_LONG, NOT_FOLLOWED -> "where it was not followed further";
    };
  }

  /** The arrows at the corners, the middles of the sides and the middle. */
  private String compass(Arrows arrows) {
    List<String> list = new ArrayList<>();
    Measure strength = Measure.of(chart.nature().fieldUnit(), arrows.full(), writing);
    int size = arrows.vectors().size();
    for (int i = 0; i < READ && size > 0; i++) {
      Arrows.Vector vector = arrows.vectors().get((int) ((size - 1L) * i / (READ - 1)));
      double degrees = Math.toDegrees(Math.atan2(vector.up(), vector.across()));
      list.add(
          "at %s %s along %s°"
              .formatted(
                  length.place(vector.x(), vector.y()),
                  strength.text(vector.strength()),
                  Measure.number(degrees, 2, writing)));
    }
    return "Some of the arrows: " + String.join("; ", list) + ".";
  }

  private String nulls() {
    return chart.nulls().isEmpty()
        ? "Nowhere in the frame does the field vanish at a single place."
        : "The field is zero at "
            + chart.nulls().stream().map(length::place).collect(joining(" and at "))
            + ".";
  }
}
