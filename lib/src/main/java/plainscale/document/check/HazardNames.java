package plainscale.document.check;

import java.util.Collection;
import java.util.List;
import plainscale.table.Table;

/** The hazards that have a name. */
@FunctionalInterface
public interface HazardNames {

  /** The names; none at all if there is no table of hazards, and then any name will do. */
  Collection<String> all();

  /** The column "name" of {@code hazards.tsv} beside that class; no names where no table lies. */
  static HazardNames beside(Class<?> owner) {
    String file = "hazards.tsv";
    return owner.getResource(file) == null
        ? List::of
        : () -> Table.read(owner, file).stream().map(row -> row.get("name")).toList();
  }
}
