package plainscale.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import plainscale.table.Table;
import plainscale.text.Near;

/**
 * Units that a wrong unit text may have meant: usual slips, names, other case, two symbols run
 * together, near spelling.
 */
final class NearUnits {
  private static final Map<String, String> SLIPS =
      Table.read(NearUnits.class, "usual-slips.tsv").stream()
          .collect(Collectors.toMap(row -> row.get("slip"), row -> row.get("meant")));

  /** Prefixes of everyday units, tried in another case. */
  private static final List<String> EVERYDAY_PREFIXES =
      List.of("k", "m", "c", "µ", "n", "M", "G", "h", "d", "p");

  private NearUnits() {}

  /** What a text that is no symbol at all usually means. */
  static List<String> slip(String wrong) {
    return Optional.ofNullable(SLIPS.get(wrong)).map(List::of).orElse(List.of());
  }

  static List<String> of(String wrong) {
    UnitTable table = UnitTable.standard();
    List<String> near = new ArrayList<>();
    String lower = wrong.toLowerCase(Locale.ROOT);
    Optional.ofNullable(SLIPS.getOrDefault(wrong, SLIPS.get(lower))).ifPresent(near::add);
    table.byName(wrong).or(() -> table.byName(lower)).ifPresent(near::add);
    near.addAll(otherCase(wrong));
    runTogether(wrong).ifPresent(near::add);
    if (near.isEmpty()) {
      near.addAll(Near.to(wrong, table.symbols(), 3));
    }
    return near.stream().distinct().limit(3).toList();
  }

  private static List<String> otherCase(String wrong) {
    List<String> found = new ArrayList<>();
    for (String symbol : UnitTable.standard().symbols()) {
      if (symbol.equalsIgnoreCase(wrong)) {
        found.add(symbol);
      }
      for (String prefix : EVERYDAY_PREFIXES) {
        String prefixed = prefix + symbol;
        if (prefixed.equalsIgnoreCase(wrong) && UnitTable.standard().find(prefixed).isPresent()) {
          found.add(prefixed);
        }
      }
    }
    return found;
  }

  /** {@code Nm} for N m, {@code mAh} for mA h. */
  private static Optional<String> runTogether(String wrong) {
    for (int i = wrong.length() - 1; i > 0; i--) {
      String left = wrong.substring(0, i);
      String right = wrong.substring(i);
      if (UnitTable.standard().find(left).isPresent()
          && UnitTable.standard().find(right).isPresent()) {
        return Optional.of(left + " " + right);
      }
    }
    return Optional.empty();
  }
}
