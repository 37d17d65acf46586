package plainscale.laws;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import plainscale.table.Table;

/**
 * The whole CODATA 2022 table as printed ({@code codata2022.tsv}): value, standard uncertainty,
 * unit. Exact values that end in dots in print are marked as truncated.
 */
public final class Codata {
  private static final Map<String, Row> ROWS = new LinkedHashMap<>();

  static {
    for (Table.Row row : Table.read(Codata.class, "codata2022.tsv")) {
      ROWS.put(row.get("name"), Row.of(row));
    }
  }

  private Codata() {}

  /** One row; an uncertainty of zero means exact. */
  public record Row(
      String name, BigDecimal value, BigDecimal uncertainty, String unit, boolean truncated) {
    private static Row of(Table.Row row) {
      String u = row.get("uncertainty");
      return new Row(
          row.get("name"),
          new BigDecimal(row.get("value")),
          u.equals("exact") ? BigDecimal.ZERO : new BigDecimal(u),
          row.get("unit"),
          row.get("digits").equals("truncated"));
    }

    /** Whether the value is exact by definition. */
    public boolean exact() {
      return uncertainty.signum() == 0;
    }
  }

  /** All rows by name. */
  public static Map<String, Row> rows() {
    return Map.copyOf(ROWS);
  }

  /** The row of that name, which must exist. */
  static Row row(String name) {
    Row row = ROWS.get(name);
    if (row == null) {
      throw new IllegalArgumentException("no CODATA row named " + name);
    }
    return row;
  }
}
