package plainscale.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.table.Table;

/** Every row of the table of units, by looping over it. */
class UnitTableTest {
  /** SI Brochure, 9th edition (update of 2022), table 7: the 24 prefixes. */
  private static final String PREFIXES =
      "Q 30 R 27 Y 24 Z 21 E 18 P 15 T 12 G 9 M 6 k 3 h 2 da 1 "
          + "d -1 c -2 m -3 µ -6 n -9 p -12 f -15 a -18 z -21 y -24 r -27 q -30";

  static Stream<Table.Row> rows() {
    return Resource.symbols().stream();
  }

  static Stream<String> prefixes() {
    String[] parts = PREFIXES.split(" ", -1);
    List<String> pairs = new ArrayList<>();
    for (int i = 0; i < parts.length; i += 2) {
      pairs.add(parts[i] + " " + parts[i + 1]);
    }
    return pairs.stream();
  }

  @Test
  void noSymbolIsLost() {
    assertTrue(rows().count() >= 70, rows().count() + " rows");
    assertEquals(24, prefixes().count());
  }

  @Test
  void noSymbolOrAliasStandsTwice() {
    List<String> all = new ArrayList<>();
    rows().forEach(row -> all.addAll(names(row)));
    Set<String> once = new LinkedHashSet<>();
    all.removeIf(once::add);
    assertEquals(List.of(), all);
  }

  private static List<String> names(Table.Row row) {
    List<String> names = new ArrayList<>(List.of(row.get("symbol")));
    names.addAll(List.of(row.get("aliases").split(" ", -1)));
    names.removeIf(String::isEmpty);
    return names;
  }

  @ParameterizedTest
  @MethodSource("rows")
  void everyNameOfARowMeansTheSameUnit(Table.Row row) {
    UnitOfMeasure unit = UnitParser.parse(row.get("symbol"));
    for (String name : names(row)) {
      assertEquals(unit, UnitParser.parse(name), name);
    }
    assertEquals(row.get("name"), unit.words(true));
    assertEquals(row.get("plural"), unit.words(false));
    assertFalse(unit.factors().get(0).symbol().source().isBlank());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void everySymbolConvertsThereAndBack(Table.Row row) {
    UnitOfMeasure unit = UnitParser.parse(row.get("symbol"));
    for (String number : List.of("1", "-2.5", "6.02e23", "0.000123")) {
      BigDecimal value = new BigDecimal(number);
      BigDecimal back = unit.fromCoherent(unit.toCoherent(value));
      BigDecimal off = back.subtract(value).abs();
      // A scale's zero is some hundred kelvins away: a small number loses that many digits.
      BigDecimal most = value.abs().max(unit.isScale() ? new BigDecimal("500") : BigDecimal.ZERO);
      assertTrue(off.compareTo(most.movePointLeft(31)) <= 0, () -> value + " became " + back);
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void everySymbolPrintsToATextThatMeansTheSame(Table.Row row) {
    readsBack(row.get("symbol"));
    UnitOfMeasure unit = UnitParser.parse(row.get("symbol"));
    if (!unit.isScale()) {
      for (String form : List.of("%s^2", "1/%s", "%s s", "m/%s", "kg/(%s s^2)", "%s^-3")) {
        readsBack(form.formatted(row.get("symbol")));
      }
    }
  }

  private static void readsBack(String text) {
    UnitOfMeasure unit = UnitParser.parse(text);
    UnitOfMeasure again = UnitParser.parse(unit.text());
    assertEquals(unit, again, () -> text + " printed as " + unit.text());
    assertEquals(0, unit.factor().compareTo(again.factor()));
    assertEquals(unit.kind(), again.kind());
    assertEquals(unit.isScale(), again.isScale());
  }

  @ParameterizedTest
  @MethodSource("prefixes")
  void everyPrefixOf2022IsItsPowerOfTenBeforeEverySiUnit(String pair) {
    String prefix = pair.substring(0, pair.indexOf(' '));
    int power = Integer.parseInt(pair.substring(pair.indexOf(' ') + 1));
    rows()
        .filter(row -> row.get("prefixes").equals("si"))
        .map(row -> row.get("symbol"))
        .filter(symbol -> !isTaken(prefix + symbol))
        .forEach(
            symbol -> {
              UnitOfMeasure one = UnitParser.parse(symbol);
              UnitOfMeasure many = UnitParser.parse(prefix + symbol);
              BigDecimal expected = one.factor().scaleByPowerOfTen(power);
              BigDecimal off = many.factor().subtract(expected).abs();
              assertTrue(
                  off.compareTo(expected.movePointLeft(32)) <= 0,
                  () -> prefix + symbol + " is " + many.factor());
              assertEquals(one.kind(), many.kind(), prefix + symbol);
              readsBack(prefix + symbol);
            });
  }

  /** Symbols of the table that look like a prefixed one: min, cd, Pa, ft … are themselves. */
  private static boolean isTaken(String text) {
    return rows().anyMatch(row -> names(row).contains(text));
  }

  @ParameterizedTest
  @CsvSource({"min, minute", "cd, candela", "Pa, pascal", "mol, mole", "ha, hectare", "T, tesla"})
  void aSymbolGoesBeforeAPrefixedOne(String symbol, String name) {
    assertEquals(name, UnitTable.standard().find(symbol).orElseThrow().name());
  }

  @ParameterizedTest
  @CsvSource({
    "µm, micrometre",
    "μm, micrometre",
    "dam, decametre",
    "dm, decimetre",
    "daN, decanewton"
  })
  void prefixesHaveTheirNames(String symbol, String name) {
    assertEquals(name, UnitTable.standard().find(symbol).orElseThrow().name());
  }

  @ParameterizedTest
  @CsvSource({"kmin", "mft", "kkg", "mlb", "k°", "m%", "kdeg", "x", "kk", "mmm"})
  void whatTakesNoPrefixOrTwoIsUnknown(String symbol) {
    assertEquals(Optional.empty(), UnitTable.standard().find(symbol));
  }
}
