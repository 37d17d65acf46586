package plainscale.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainscale.data.Column;
import plainscale.data.DataTable;
import plainscale.data.Fit;
import plainscale.data.Fits;
import plainscale.data.NumberColumn;
import plainscale.data.Points;
import plainscale.data.Sample;
import plainscale.data.Statistics;
import plainscale.data.TextColumn;
import plainscale.data.Weighting;
import plainscale.notation.DataStatement;

/**
 * A table whose columns of numbers are called as the sheet calls them. Statistics and fits are made
 * once, so that a mean keeps its sources of uncertainty wherever it is used, also in sheets that
 * were copied from one another.
 */
final class ReadTable {
  private final DataTable table;
  private final List<NumberColumn> numbers = new ArrayList<>();
  private final Map<NumberColumn, Statistics> statistics = new HashMap<>();
  private final Map<Asked, Fit> fits = new HashMap<>();

  private record Asked(
      DataStatement.Curve curve, DataStatement.Weights weights, String x, String y) {}

  /** With one name for each column of numbers, empty where it has none. */
  ReadTable(DataTable table, List<String> names) {
    this.table = table;
    List<NumberColumn> columns = numbers(table);
    for (int i = 0; i < columns.size(); i++) {
      NumberColumn c = columns.get(i);
      numbers.add(
          new NumberColumn(names.get(i), c.heading(), c.unit(), c.values(), c.uncertainties()));
    }
  }

  /** The columns of numbers of a table, in their order. */
  static List<NumberColumn> numbers(DataTable table) {
    return table.columns().stream()
        .filter(NumberColumn.class::isInstance)
        .map(NumberColumn.class::cast)
        .toList();
  }

  /** The table under the names of its file. */
  DataTable table() {
    return table;
  }

  /** The columns of numbers under the names of the sheet; an empty name where there is none. */
  List<NumberColumn> numbers() {
    return List.copyOf(numbers);
  }

  /** The column of numbers of that name. */
  Optional<NumberColumn> numbers(String name) {
    return numbers.stream().filter(column -> column.name().equals(name)).findFirst();
  }

  /** Whether a column of words has that name. */
  boolean hasWords(String name) {
    return table.columns().stream()
        .filter(TextColumn.class::isInstance)
        .map(Column::name)
        .anyMatch(name::equals);
  }

  /** The statistics of one of its columns. */
  synchronized Statistics statistics(NumberColumn column) {
    Statistics known = statistics.get(column);
    if (known == null) {
      known = Statistics.of(Sample.of(column));
      statistics.put(column, known);
    }
    return known;
  }

  /** The fit of one of its columns against another. */
  synchronized Fit fit(DataStatement.Fit asked) {
    Asked key = new Asked(asked.curve(), asked.weights(), asked.x().text(), asked.y().text());
    Fit known = fits.get(key);
    if (known == null) {
      known = fitted(key);
      fits.put(key, known);
    }
    return known;
  }

  private Fit fitted(Asked asked) {
    Points points = Points.of(numbers(asked.x()).orElseThrow(), numbers(asked.y()).orElseThrow());
    Weighting weighting =
        switch (asked.weights()) {
          case NONE -> Weighting.NONE;
          case Y -> Weighting.Y;
          case BOTH -> Weighting.BOTH;
        };
    return switch (asked.curve()) {
      case LINE -> Fits.line(points, weighting);
      case PROPORTIONAL -> Fits.proportional(points, weighting);
      case POWER -> Fits.power(points, weighting);
      case EXPONENTIAL -> Fits.exponential(points, weighting);
    };
  }
}
