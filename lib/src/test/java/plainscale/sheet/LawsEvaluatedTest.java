package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.laws.Law;
import plainscale.laws.Laws;
import plainscale.quantity.Quantity;
import plainscale.table.Table;
import plainscale.units.UnitParser;

/**
 * Every law of the table, used in a cell and solved for one of its symbols, gives the number that a
 * book prints or that SciPy computed on another way ({@code laws_evaluated.tsv}).
 */
class LawsEvaluatedTest {
  private static final int FEWEST = 150;

  /** What doubles and the digits of the file may miss. */
  private static final double ROUNDING = 1e-10;

  record Evaluated(Table.Row row) {
    String get(String column) {
      return row.get(column);
    }

    @Override
    public String toString() {
      return get("law");
    }
  }

  static List<Evaluated> rows() {
    return Table.read(LawsEvaluatedTest.class, "/plainscale/fixtures/laws_evaluated.tsv").stream()
        .map(Evaluated::new)
        .toList();
  }

  @Test
  void everyLawIsEvaluatedOnce() {
    List<String> evaluated = rows().stream().map(Evaluated::toString).toList();
    Set<String> laws = Laws.all().stream().map(Law::name).collect(Collectors.toSet());
    assertTrue(laws.size() >= FEWEST, laws.size() + " laws");
    assertEquals(laws, Set.copyOf(evaluated));
    assertEquals(laws.size(), evaluated.size());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void theCellGivesTheNumber(Evaluated row) {
    Sheet sheet = new Sheet();
    Cells.run(sheet, "cell", lines(row).toArray(String[]::new));
    Quantity value = Cells.value(sheet, row.get("asked")).in(UnitParser.parse(row.get("unit")));
    double shown = UnitParser.parse(row.get("unit")).fromCoherent(value.value()).doubleValue();
    double expected = Double.parseDouble(row.get("expected"));
    double within = Double.parseDouble(row.get("within")) + ROUNDING * Math.abs(expected);
    assertEquals(expected, shown, within, row.get("source"));
  }

  private static List<String> lines(Evaluated row) {
    List<String> lines = new ArrayList<>(List.of("constants " + row.get("constants")));
    for (String given : row.get("givens").split("; ", -1)) {
      lines.add("given " + given);
    }
    String replaced = row.get("replaced");
    lines.add("use " + row.get("law") + (replaced.equals("-") ? "" : " with " + replaced));
    lines.add("solve %s for %s".formatted(row.get("law"), row.get("asked")));
    return lines;
  }
}
