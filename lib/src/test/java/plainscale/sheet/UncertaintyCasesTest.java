package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.quantity.Quantity;
import plainscale.table.Table;

/**
 * First-order propagation as another program computes it: the Python package uncertainties 3.2.3
 * ({@code uncertainties.tsv}).
 */
class UncertaintyCasesTest {
  /** Relative; random expressions lose some digits where they subtract. */
  private static final double CLOSE = 1e-10;

  static List<Table.Row> rows() {
    return Table.read(UncertaintyCasesTest.class, "/plainscale/fixtures/uncertainties.tsv");
  }

  @Test
  void noRowIsLost() {
    assertTrue(rows().size() >= 270, rows().size() + " rows");
  }

  @ParameterizedTest
  @MethodSource("rows")
  void theCellGivesTheValueAndTheUncertaintyOfTheRow(Table.Row row) {
    Sheet sheet = new Sheet();
    List<String> lines = new ArrayList<>();
    for (String variable : row.get("variables").split("; ", -1)) {
      lines.add("given " + variable.replace("=", " = ").replace("±", " ± "));
    }
    lines.add("result = " + row.get("expression"));
    Cells.run(sheet, "row", lines.toArray(new String[0]));
    Quantity result = Cells.value(sheet, "result");
    assertClose(row.get("value"), result.value().doubleValue());
    assertClose(row.get("u"), result.uncertainty().standard());
  }

  /** Where the exact result is zero, both sides may hold dust. */
  private static void assertClose(String expected, double actual) {
    double number = Double.parseDouble(expected);
    double dust = Math.abs(number) < 1e-14 && Math.abs(actual) < 1e-14 ? 1e-14 : 0;
    assertEquals(number, actual, Math.max(dust, CLOSE * Math.abs(number)));
  }
}
