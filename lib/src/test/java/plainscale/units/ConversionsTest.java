package plainscale.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.table.Table;

/** Published conversion factors; the source of each stands in {@code conversions.tsv}. */
class ConversionsTest {
  /** Names of the file that are written otherwise in a cell. */
  private static final Map<String, String> WRITTEN =
      Map.ofEntries(
          Map.entry("in", "inch"),
          Map.entry("gal_US", "gal"),
          Map.entry("gal_UK", "[gal_br]"),
          Map.entry("bbl", "[bbl_us]"),
          Map.entry("ft_survey", "[ft_us]"),
          Map.entry("acre_survey", "[acr_us]"),
          Map.entry("ton_short", "[ston_av]"),
          Map.entry("ft_lbf", "ft lbf"),
          Map.entry("Btu_IT", "btu"),
          Map.entry("Btu_th", "[Btu_th]"),
          Map.entry("t_TNT", "tTNT"),
          Map.entry("D", "debye"),
          Map.entry("G", "gauss"));

  /** Units of the file that are not to be had, neither by a symbol nor by a UCUM code. */
  private static final Set<String> MISSING = Set.of("hp_metric", "statC");

  static List<Table.Row> rows() {
    return Resource.conversions().stream()
        .filter(row -> !MISSING.contains(row.get("unit")))
        .toList();
  }

  @Test
  void noRowIsLost() {
    assertTrue(rows().size() >= 120, rows().size() + " rows");
  }

  @ParameterizedTest
  @MethodSource("rows")
  void theFactorIsThePublishedOne(Table.Row row) {
    String name = row.get("unit");
    UnitOfMeasure unit = UnitParser.parse(WRITTEN.getOrDefault(name, name));
    UnitOfMeasure si = UnitParser.parse(row.get("si"));
    assertEquals(si.kind(), unit.kind());
    BigDecimal published = new BigDecimal(row.get("factor"));
    BigDecimal factor = unit.factor().divide(si.factor(), MathContext.DECIMAL128);
    if (row.get("kind").equals("exact")) {
      assertEquals(0, published.compareTo(factor), factor::toString);
    } else {
      MathContext figures = new MathContext(published.precision(), RoundingMode.HALF_EVEN);
      assertEquals(0, published.compareTo(factor.round(figures)), factor::toString);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"hp_metric", "t_TNT", "statC", "oersted"})
  void whatTheTableDoesNotHaveIsRefused(String unit) {
    assertThrows(UnitException.class, () -> UnitParser.parse(unit));
  }
}
