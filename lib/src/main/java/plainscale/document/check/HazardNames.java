package plainscale.document.check;

import java.util.Collection;
import java.util.List;
import plainscale.table.Table;

/** The hazards that have a name. */
@FunctionalInterface
public interface HazardNames {
  /** Where the table of hazards lies, if there is one. */
  String TABLE = "/plainscale/laws/hazards.tsv";

  /** The names; none at all if there is no table of hazards, and then any name will do. */
  Collection<String> all();

  /** The column "name" of that resource; no names where there is no such resource. */
  static HazardNames in(String table) {
    return HazardNames.class.getResource(table) == null
        ? List::of
        : () -> Table.read(HazardNames.class, table).stream().map(row -> row.get("name")).toList();
  }
}
