package plainscale.laws;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import plainscale.quantity.Quantity;
import plainscale.table.Table;
import plainscale.units.Kind;

/** Which values set off which cautions ({@code hazard-limits.tsv}). */
public final class HazardLimits {
  private static final List<HazardLimit> ALL =
      Table.read(HazardLimits.class, "hazard-limits.tsv").stream().map(HazardLimit::new).toList();

  private static final Map<Kind, List<HazardLimit>> BY_KIND = new HashMap<>();

  static {
    for (HazardLimit limit : ALL) {
      BY_KIND.computeIfAbsent(limit.unit().kind(), kind -> new ArrayList<>()).add(limit);
    }
  }

  private HazardLimits() {}

  /** All rows, in the order of the table. */
  public static List<HazardLimit> all() {
    return ALL;
  }

  /**
   * The limits that a quantity goes beyond, of each hazard the one that is furthest out. Where the
   * words do not tell of what a quantity is, the cautions of the sheet do.
   *
   * @param others what the quantity hangs on, asked for only if its kind has limits
   * @param cautioned the hazards whose cautions stand in the sheet
   */
  public static List<HazardLimit> passed(
      Quantity quantity,
      Subject subject,
      Supplier<Collection<Quantity>> others,
      Collection<String> cautioned) {
    List<HazardLimit> ofKind = BY_KIND.getOrDefault(quantity.kind(), List.of());
    if (ofKind.isEmpty()) {
      return ofKind;
    }
    Collection<Quantity> beside = others.get();
    Map<String, HazardLimit> passed = new LinkedHashMap<>();
    boolean placed = ofKind.stream().anyMatch(limit -> limit.isPlaced(subject));
    for (HazardLimit limit : ofKind) {
      boolean here =
          !limit.isPlaced()
              || limit.isPlaced(subject)
              || (!placed && cautioned.contains(limit.hazard().name()));
      if (here && limit.isPassed(quantity, subject, beside)) {
        passed.merge(
            limit.hazard().name(), limit, (one, other) -> other.isBeyond(one) ? other : one);
      }
    }
    return List.copyOf(passed.values());
  }
}
