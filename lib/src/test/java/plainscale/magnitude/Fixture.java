package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import plainscale.table.Table;

/** One row of a fixture file. */
record Fixture(Map<String, String> cells) {

  /** All rows; a file that has shrunk to fewer than {@code fewest} fails. */
  static List<Fixture> rows(String name, int fewest) {
    List<Fixture> rows =
        Table.read(Fixture.class, name).stream().map(r -> new Fixture(r.cells())).toList();
    assertTrue(rows.size() >= fewest, name + " has only " + rows.size() + " rows");
    rows.forEach(row -> assertTrue(!row.text("source").isEmpty(), "no source: " + row));
    return rows;
  }

  String text(String column) {
    return Objects.requireNonNull(cells.get(column), column);
  }

  BigDecimal number(String column) {
    return new BigDecimal(text(column));
  }

  int count(String column) {
    return Integer.parseInt(text(column));
  }
}
