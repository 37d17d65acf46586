package plainscale.units;

import java.util.List;
import plainscale.table.Table;

/** Rows of the tables that the tests loop over. */
final class Resource {
  private Resource() {}

  static List<Table.Row> symbols() {
    return Table.read(UnitTable.class, "units.tsv");
  }

  static List<Table.Row> conversions() {
    return Table.read(UnitTable.class, "/plainscale/fixtures/conversions.tsv");
  }
}
