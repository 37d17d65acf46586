package plainscale.api;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plainscale.data.DataException;
import plainscale.data.DataTable;
import plainscale.quantity.Quantity;
import plainscale.sheet.Result;

/**
 * A table built from lists, column by column; it is read as a CSV file of the same content is.
 *
 * <pre>{@code
 * DataTable runs = columns("runs")
 *     .numbers("h", "m", List.of(0.50, 1.00, 1.50))
 *     .numbers("t", "s", List.of(0.32, 0.45, 0.55))
 *     .table();
 * check(runs.rows() == 3);
 * check(data(runs).fit(Curve.POWER, "t", "h").as("a", "p").value("p").shown().value().doubleValue() < 0.55);
 * }</pre>
 */
public final class TableOf implements Displayed {
  private final String name;
  private final List<List<String>> columns;

  private TableOf(String name, List<List<String>> columns) {
    this.name = name;
    this.columns = List.copyOf(columns);
  }

  static TableOf of(String name) {
    return new TableOf(name, List.of());
  }

  /** And a column of numbers in a unit. */
  public TableOf numbers(String heading, String unit, List<? extends Number> values) {
    return and(heading(heading, unit), values.stream().map(String::valueOf).toList());
  }

  /**
   * And a column of quantities in a unit, with a column of their uncertainties if they have any.
   */
  public TableOf quantities(String heading, String unit, List<Quantity> values) {
    List<Quantity> inUnit = values.stream().map(q -> unit.isEmpty() ? q : q.in(unit)).toList();
    TableOf with =
        and(
            heading(heading, unit),
            inUnit.stream().map(q -> q.shown().value().toPlainString()).toList());
    List<String> doubts =
        inUnit.stream()
            .map(q -> q.shown().uncertainty().map(u -> u.toPlainString()).orElse(""))
            .toList();
    boolean exact = doubts.stream().allMatch(String::isEmpty);
    return exact ? with : with.and(heading("u(" + heading + ")", unit), doubts);
  }

  /** And a column of words. */
  public TableOf words(String heading, List<String> values) {
    return and(heading, values);
  }

  private static String heading(String heading, String unit) {
    return unit.isEmpty() ? heading : heading + " (" + unit + ")";
  }

  private TableOf and(String heading, List<String> cells) {
    List<String> column = new ArrayList<>(List.of(heading));
    column.addAll(cells);
    if (!columns.isEmpty() && columns.get(0).size() != column.size()) {
      throw PhysicsException.of(
          "“%s” has %d values, and the columns before it have %d."
              .formatted(heading, cells.size(), columns.get(0).size() - 1));
    }
    List<List<String>> all = new ArrayList<>(columns);
    all.add(column);
    return new TableOf(name, all);
  }

  /** The table. */
  public DataTable table() {
    if (columns.isEmpty()) {
      throw PhysicsException.of("A table has a column at least.", "numbers(\"d\", \"cm\", list)");
    }
    StringBuilder csv = new StringBuilder();
    for (int row = 0; row < columns.get(0).size(); row++) {
      int at = row;
      csv.append(
          columns.stream()
              .map(c -> "\"" + c.get(at).replace("\"", "\"\"") + "\"")
              .collect(Collectors.joining(",")));
      csv.append('\n');
    }
    return read(name, csv.toString());
  }

  static DataTable read(String name, String csv) {
    try {
      return DataTable.read(name, new StringReader(csv));
    } catch (DataException e) {
      throw PhysicsException.of(e);
    }
  }

  @Override
  public List<Result> results() {
    return Plainscale.data(table()).results();
  }

  @Override
  public String toString() {
    return Displays.text(this);
  }
}
