package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import plainscale.data.DataTable;
import plainscale.quantity.Quantity;
import plainscale.quantity.Source;
import plainscale.render.Renderers;
import plainscale.units.UnitParser;

/** What a program hands to a sheet, and sheets that go on from others. */
class HandedTest {
  private static Quantity metres(String value) {
    return Quantity.measured(
        "?", new BigDecimal(value), new BigDecimal("0.1"), UnitParser.parse("m"));
  }

  @Test
  void aHandedValueCountsInsteadOfItsFigures() {
    Sheet sheet = new Sheet();
    Quantity third = metres("1").dividedBy(3);
    sheet.hand("x", third);
    sheet.run("1", "given x = 0.33 ± 0.03 m");
    assertEquals(third.value(), sheet.value("x").orElseThrow().value());
    sheet.takeBack("x");
    sheet.run("1", "given x = 0.33 ± 0.03 m");
    assertEquals(new BigDecimal("0.33"), sheet.value("x").orElseThrow().value());
  }

  @Test
  void aHandedMeasurementIsCalledAsItsGiven() {
    Sheet sheet = new Sheet();
    sheet.hand("x", metres("2.0"));
    sheet.run("1", "given x = 2.0 ± 0.1 m\nA = x^2");
    assertTrue(Renderers.text(sheet.ask("budget A")).contains("\n  x "));
  }

  @Test
  void aSourceUnderAnotherNameIsTheSame() {
    Source source = new Source("a", 1);
    assertEquals(Set.of(source), Set.of(source.called("b")));
    assertTrue(!source.equals(new Source("a", 1)));
    Quantity x = metres("2.0");
    assertEquals(0, x.called("y").minus(x).uncertainty().standard());
  }

  @Test
  void aCopyGoesItsOwnWay() {
    Sheet first = new Sheet();
    first.run("1", "given x = 2.0 m");
    first.run("2", "y = 2*x");
    Sheet second = first.copy();
    second.run("1", "given x = 3.0 m");
    second.run("3", "z = y");
    assertEquals("y = 2*x = 4.0 m", Renderers.text(first.results("2")));
    assertEquals("y = 2*x = 6.0 m", Renderers.text(second.results("2")));
    assertEquals(List.of("x", "y"), List.copyOf(first.quantities()));
    assertEquals(List.of(), first.results("3"));
  }

  @Test
  void askingChangesNothing() {
    Sheet sheet = new Sheet();
    sheet.run("1", "given x = 2.0 m\nrelation r: x = 2*w");
    assertEquals("2*x = 4.0 m", Renderers.text(sheet.ask("2*x")));
    assertEquals(Set.of("x"), sheet.quantities());
    assertEquals(List.of("r"), sheet.relations());
    assertEquals(Set.of("x", "w"), sheet.letters("r"));
  }

  @Test
  void aHandedTableIsReadUnderItsName() {
    Sheet sheet = new Sheet();
    sheet.hand(DataTable.read("runs.csv", new StringReader("d (cm)\n1.0\n2.0\n")));
    assertTrue(sheet.run("1", "data \"runs.csv\"").ok());
    assertEquals(0.015, sheet.value("d").orElseThrow().value().doubleValue(), 1e-12);
    assertTrue(!sheet.run("2", "data \"other.csv\"").ok());
  }
}
