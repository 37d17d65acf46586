package plainscale.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import plainscale.text.Near;

/** Units that a wrong unit text may have meant. */
final class NearUnits {
  /** Symbols that people write and that mean something else here, or nothing. */
  private static final Map<String, String> USUAL =
      Map.ofEntries(
          Map.entry("in", "inch"),
          Map.entry("sec", "s"),
          Map.entry("hr", "h"),
          Map.entry("gr", "g"),
          Map.entry("amp", "A"),
          Map.entry("kmh", "km/h"),
          Map.entry("kph", "km/h"),
          Map.entry("cc", "cm^3"));

  private NearUnits() {}

  static List<String> of(String wrong) {
    List<String> near = new ArrayList<>();
    UnitTable table = UnitTable.standard();
    String lower = wrong.toLowerCase(Locale.ROOT);
    Optional.ofNullable(USUAL.getOrDefault(wrong, USUAL.get(lower))).ifPresent(near::add);
    table.byName(lower).ifPresent(near::add);
    table.find(lower).map(UnitSymbol::text).ifPresent(near::add);
    near.addAll(Near.to(wrong, table.symbols(), 3));
    return near.stream().distinct().limit(3).toList();
  }
}
