package plainscale.render;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import plainscale.magnitude.Writing;
import plainscale.notation.DataStatement;
import plainscale.picture.Scene;
import plainscale.picture.Shade;
import plainscale.picture.Stroke;
import plainscale.picture.Symbol;
import plainscale.picture.plot.Axis;
import plainscale.picture.plot.Plot;
import plainscale.picture.plot.Series;
import plainscale.sheet.Cloud;
import plainscale.sheet.DataResult;
import plainscale.units.UnitOfMeasure;

/** The plots of results about data; a table or the statistics of a column have none. */
final class DataPictures implements DataResult.Visitor<Optional<Scene>> {
  /** The title of an axis of counts. */
  static final String COUNT = "number of values";

  private static final double HEIGHT = 300;
  private static final double RESIDUALS = 110;

  /** An axis up to so much at least has no halves of a value. */
  private static final double WHOLE = 5;

  private static final Stroke FIT = Stroke.solid(Shade.INK, 2);
  private static final Stroke ZERO = Stroke.solid(Shade.SOFT, 1.3);
  private static final Stroke MEAN = Stroke.solid(Shade.ACCENT, 2.5);
  private static final Stroke REFERENCE = Stroke.dashed(Shade.INK, 2);

  @Override
  public Optional<Scene> listed(DataResult.Listed listed) {
    return Optional.empty();
  }

  @Override
  public Optional<Scene> described(DataResult.Described described) {
    return Optional.empty();
  }

  @Override
  public Optional<Scene> counted(DataResult.Counted counted) {
    List<Double> edges = new ArrayList<>();
    counted.histogram().bins().forEach(bin -> edges.add(bin.from().doubleValue()));
    edges.add(counted.histogram().bins().get(edges.size() - 1).to().doubleValue());
    List<Double> heights =
        counted.histogram().bins().stream().map(bin -> (double) bin.count()).toList();
    String mean = "mean, " + ValueText.number(counted.mean(), counted.writing());
    List<Series> series = new ArrayList<>();
    series.add(new Series.Bars("", edges, heights));
    series.add(level(mean, counted.mean().value(), MEAN));
    counted
        .against()
        .ifPresent(
            value ->
                series.add(
                    level(
                        "reference value, " + ValueText.number(value, counted.writing()),
                        value.value(),
                        REFERENCE)));
    Axis across = Axis.linear(title(counted.side()), numbers(series, Series::across));
    DoubleStream counts = DoubleStream.concat(numbers(series, Series::up), DoubleStream.of(WHOLE));
    Axis up = Axis.fromZero(COUNT, counts);
    return Optional.of(
        Plot.of(
            counted.title(),
            across,
            List.of(new Plot.Panel(up, HEIGHT, series)),
            List.of(),
            new DataAlternative(counted.writing()).of(counted),
            counted.writing()));
  }

  private static Series level(String name, BigDecimal value, Stroke stroke) {
    return new Series.Level(name, value.doubleValue(), true, stroke);
  }

  private static DoubleStream numbers(List<Series> series, Function<Series, DoubleStream> side) {
    return series.stream().flatMapToDouble(side);
  }

  /** A quantity over its unit; a unit of several factors in brackets. */
  static String title(DataResult.Side side) {
    UnitOfMeasure unit = side.unit();
    String name = isName(side.name()) ? Symbol.of(side.name()) : "(" + side.name() + ")";
    if (unit.text().isEmpty()) {
      return isName(side.name()) ? name : side.name();
    }
    return name + "/" + bracketed(unit);
  }

  private static boolean isName(String text) {
    return text.codePoints().allMatch(c -> Character.isLetterOrDigit(c) || c == '_');
  }

  private static String bracketed(UnitOfMeasure unit) {
    boolean single =
        unit.factors().size() == 1 && unit.text().codePoints().noneMatch(c -> c == '/');
    return single ? unit.text() : "(" + unit.text() + ")";
  }

  @Override
  public Optional<Scene> fitted(DataResult.Fitted fitted) {
    List<Series> series = new ArrayList<>();
    boolean known = fitted.curve().stream().anyMatch(step -> step.standard() > 0);
    if (known) {
      series.add(band(fitted.curve()));
    }
    series.add(new Series.Curve("fit", spots(fitted.curve()), FIT));
    series.add(points("", fitted.cloud(), DataStatement.Logs.NONE));
    Axis across = Axis.linear(title(fitted.cloud().across()), numbers(series, Series::across));
    Axis up = Axis.linear(title(fitted.cloud().up()), numbers(series, Series::up));
    Plot.Panel main = new Plot.Panel(up, HEIGHT, series);
    Writing writing = fitted.writing();
    return Optional.of(
        Plot.of(
            fitted.title(),
            across,
            List.of(main, residuals(fitted)),
            notes(fitted.cloud(), writing),
            new DataAlternative(writing).of(fitted),
            writing));
  }

  private static Plot.Panel residuals(DataResult.Fitted fitted) {
    List<Cloud.Spot> spots = fitted.cloud().spots();
    List<Series.Spot> places =
        IntStream.range(0, spots.size())
            .mapToObj(
                i ->
                    new Series.Spot(
                        spots.get(i).x(), fitted.residuals().get(i), 0, spots.get(i).uy()))
            .toList();
    List<Series> series =
        List.of(
            new Series.Level("", 0, false, ZERO), new Series.Points("", places, Series.Mark.DISC));
    DataResult.Side up = fitted.cloud().up();
    String unit = up.unit().text().isEmpty() ? "" : "/" + bracketed(up.unit());
    String title = "residuals of " + Symbol.of(up.name()) + unit;
    return new Plot.Panel(Axis.fromZero(title, numbers(series, Series::up)), RESIDUALS, series);
  }

  private static Series band(List<DataResult.Step> curve) {
    return new Series.Band(
        "standard uncertainty of the fit",
        curve.stream().map(s -> new Series.Spot(s.x(), s.y() - s.standard())).toList(),
        curve.stream().map(s -> new Series.Spot(s.x(), s.y() + s.standard())).toList());
  }

  private static List<Series.Spot> spots(List<DataResult.Step> curve) {
    return curve.stream().map(step -> new Series.Spot(step.x(), step.y())).toList();
  }

  /** On a logarithmic axis a bar that reaches zero has no end, so it is left out. */
  private static Series points(String name, Cloud cloud, DataStatement.Logs logs) {
    List<Series.Spot> spots =
        cloud.spots().stream()
            .map(
                s ->
                    new Series.Spot(
                        s.x(),
                        s.y(),
                        logs.x() && s.ux() >= s.x() ? 0 : s.ux(),
                        logs.y() && s.uy() >= s.y() ? 0 : s.uy()))
            .toList();
    return new Series.Points(name, spots, Series.Mark.DISC);
  }

  private static List<String> notes(Cloud cloud, Writing writing) {
    List<String> notes = new ArrayList<>();
    if (cloud.spots().stream().anyMatch(s -> s.ux() > 0 || s.uy() > 0)) {
      notes.add("Bars: one standard uncertainty.");
    }
    if (cloud.every() > 1) {
      notes.add("One point in %s is drawn.".formatted(DataSections.whole(cloud.every(), writing)));
    }
    return notes;
  }

  @Override
  public Optional<Scene> plotted(DataResult.Plotted plotted) {
    DataStatement.Logs logs = plotted.logs();
    List<Series> series = new ArrayList<>();
    boolean both = plotted.points().isPresent() && !plotted.curve().isEmpty();
    if (!plotted.curve().isEmpty()) {
      String name = both ? Symbol.of(plotted.up().name()) + " of the sheet" : "";
      series.add(new Series.Curve(name, spots(plotted.curve()), FIT));
    }
    plotted
        .points()
        .ifPresent(
            cloud ->
                series.add(
                    points(
                        both ? Symbol.of(cloud.up().name()) + " of the class" : "", cloud, logs)));
    Axis across = axis(plotted.across(), logs.x(), numbers(series, Series::across));
    Axis up = axis(plotted.up(), logs.y(), numbers(series, Series::up));
    Writing writing = plotted.writing();
    List<String> notes = plotted.points().map(cloud -> notes(cloud, writing)).orElse(List.of());
    return Optional.of(
        Plot.of(
            plotted.title(),
            across,
            List.of(new Plot.Panel(up, HEIGHT, series)),
            notes,
            new DataAlternative(writing).of(plotted),
            writing));
  }

  private static Axis axis(DataResult.Side side, boolean logarithmic, DoubleStream numbers) {
    return logarithmic ? Axis.logarithmic(title(side), numbers) : Axis.linear(title(side), numbers);
  }
}
