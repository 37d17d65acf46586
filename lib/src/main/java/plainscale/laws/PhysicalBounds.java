package plainscale.laws;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plainscale.quantity.Quantity;
import plainscale.table.Table;
import plainscale.units.Kind;

/** What cannot be, whatever was measured ({@code bounds.tsv}). */
public final class PhysicalBounds {
  private static final List<PhysicalBound> ALL =
      Table.read(PhysicalBounds.class, "bounds.tsv").stream().map(PhysicalBound::new).toList();

  private static final Map<Kind, List<PhysicalBound>> BY_KIND = new HashMap<>();

  static {
    for (PhysicalBound bound : ALL) {
      BY_KIND.computeIfAbsent(bound.unit().kind(), kind -> new ArrayList<>()).add(bound);
    }
  }

  private PhysicalBounds() {}

  /** All rows, in the order of the table. */
  public static List<PhysicalBound> all() {
    return ALL;
  }

  /**
   * The bounds of a quantity that is called so; {@code difference} if something is subtracted in
   * what it is computed from. A reading of a temperature scale is a temperature, whatever it is
   * called.
   */
  public static List<PhysicalBound> of(Quantity quantity, Subject subject, boolean difference) {
    List<PhysicalBound> ofKind = BY_KIND.getOrDefault(quantity.kind(), List.of());
    if (ofKind.isEmpty()) {
      return ofKind;
    }
    Subject called =
        quantity.isReading()
            ? new Subject(subject.name(), subject.description() + " temperature reading")
            : subject;
    return ofKind.stream().filter(bound -> bound.isFor(called, difference)).toList();
  }
}
