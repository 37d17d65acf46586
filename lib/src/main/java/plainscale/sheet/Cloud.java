package plainscale.sheet;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.stat.correlation.SpearmansCorrelation;
import plainscale.data.NumberColumn;
import plainscale.data.Points;

/**
 * The points of two columns as they are drawn and told: numbers in the units of the columns.
 *
 * @param across what stands along the axis
 * @param up what stands upwards
 * @param spots the points that are drawn: all, or every so many of them
 * @param count how many points there are
 * @param every one point in so many is drawn
 * @param left the rows that have no point
 * @param ends the outermost points: leftmost, rightmost, lowest, highest
 * @param trend the rank correlation of the drawn points (C. Spearman, American Journal of
 *     Psychology 15 (1904) 72); nothing for fewer than three, or where one column is constant
 */
public record Cloud(
    DataResult.Side across,
    DataResult.Side up,
    List<Spot> spots,
    int count,
    int every,
    DataResult.Left left,
    List<Spot> ends,
    OptionalDouble trend) {
  /** The most points that are drawn. */
  public static final int MOST = 400;

  private static final int MOST_ROWS = 20;

  /** Keeps its own copies of the points. */
  public Cloud {
    spots = List.copyOf(spots);
    ends = List.copyOf(ends);
  }

  /** A point with its standard uncertainties, 0 where there are none, and its row. */
  public record Spot(int row, double x, double y, double ux, double uy) {}

  /** The points of two columns. */
  static Cloud of(Points points, NumberColumn x, NumberColumn y) {
    int every = (points.count() + MOST - 1) / MOST;
    List<Spot> spots =
        IntStream.range(0, points.count())
            .filter(i -> i % every == 0)
            .mapToObj(i -> spot(points, i, x, y))
            .toList();
    List<Spot> ends =
        Stream.of(
                end(points, i -> -points.x(i).doubleValue()),
                end(points, i -> points.x(i).doubleValue()),
                end(points, i -> -points.y(i).doubleValue()),
                end(points, i -> points.y(i).doubleValue()))
            .map(i -> spot(points, i, x, y))
            .toList();
    return new Cloud(
        new DataResult.Side(x.name(), x.unit()),
        new DataResult.Side(y.name(), y.unit()),
        spots,
        points.count(),
        every,
        left(x, y),
        ends,
        trend(spots));
  }

  private static Spot spot(Points points, int place, NumberColumn x, NumberColumn y) {
    int row = points.row(place);
    return new Spot(
        row,
        points.x(place).doubleValue(),
        points.y(place).doubleValue(),
        x.uncertainty(row).map(Number::doubleValue).orElse(0.0),
        y.uncertainty(row).map(Number::doubleValue).orElse(0.0));
  }

  /** The first point at which something is largest. */
  private static int end(Points points, ToDoubleFunction<Integer> size) {
    int best = 0;
    for (int i = 1; i < points.count(); i++) {
      best = size.applyAsDouble(i) > size.applyAsDouble(best) ? i : best;
    }
    return best;
  }

  /** The rows in which one of the columns has no number. */
  static DataResult.Left left(NumberColumn... columns) {
    List<Integer> rows =
        IntStream.rangeClosed(1, columns[0].rows())
            .filter(row -> Stream.of(columns).anyMatch(column -> !column.has(row)))
            .boxed()
            .toList();
    return new DataResult.Left(rows.size(), rows.stream().limit(MOST_ROWS).toList());
  }

  private static OptionalDouble trend(List<Spot> spots) {
    if (spots.size() < 3) {
      return OptionalDouble.empty();
    }
    double[] x = spots.stream().mapToDouble(Spot::x).toArray();
    double[] y = spots.stream().mapToDouble(Spot::y).toArray();
    double trend = new SpearmansCorrelation().correlation(x, y);
    return Double.isNaN(trend) ? OptionalDouble.empty() : OptionalDouble.of(trend);
  }
}
