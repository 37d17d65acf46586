package plainscale.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.quantity.Quantity;
import plainscale.units.UnitParser;

/** What a given may have been meant as. */
class SlipsTest {
  private static List<String> meant(String number, String unit, String name, String description) {
    Quantity written = Quantity.written(new BigDecimal(number), UnitParser.parse(unit));
    Subject subject = new Subject(name, description);
    return Slips.usual().stream()
        .flatMap(slip -> slip.meant(written, subject).stream())
        .map(meant -> meant.shown().value().toPlainString() + " " + meant.shown().unit().text())
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "14.0, m, 14.0 cm",
    "2.70, kg, 2.70 g",
    "2.70, g, 2.70 kg",
    "3.2, mA, 3.2 µA",
    "3.2, mC, 3.2 µC",
    "67, µC, 67 nC",
    "30, °, 30 rad",
    "20, °C, 20 K",
    "293, K, 293 °C",
    "5, min, 5 s",
    "100, km/h, 100 m/s",
    "12, kV, 12 V",
    "8.00, C, 8.00 µC",
    "1.0, g/cm^3, 1.0 kg/m³"
  })
  void theNumberStaysAndTheUnitIsAnother(String number, String unit, String wanted) {
    List<String> meant = meant(number, unit, "x", "");
    assertTrue(meant.contains(wanted), meant::toString);
  }

  @Test
  void theMostUsualComesFirst() {
    assertEquals("14.0 cm", meant("14.0", "m", "d", "").get(0));
    assertEquals("2.70 kg", meant("2.70", "g", "m", "").get(0));
  }

  @Test
  void aRadiusMayBeADiameterAndNothingElseMay() {
    assertTrue(meant("10.0", "cm", "r", "").contains("5.00 cm"));
    assertTrue(meant("10.0", "cm", "x", "radius of the ball").contains("5.00 cm"));
    assertTrue(meant("10.0", "cm", "x", "diameter").contains("20.0 cm"));
    assertTrue(!meant("10.0", "cm", "x", "thread").contains("5.00 cm"));
  }

  @Test
  void aShareMayBeMeantInPerCentAndACountMayNot() {
    assertTrue(meant("85", "1", "η", "").contains("85 %"));
    assertTrue(meant("85", "1", "n", "number of drops").isEmpty());
  }

  @Test
  void aUnitIsNotTakenApart() {
    List<String> minutes = meant("5", "min", "t", "");
    assertTrue(minutes.stream().noneMatch(text -> text.contains("µ")), minutes::toString);
    assertTrue(meant("5", "mol", "n", "").stream().noneMatch(text -> text.contains("µ")));
    assertTrue(meant("5", "Pa", "p", "").stream().noneMatch(text -> text.contains("µ")));
  }

  @Test
  void theAmountFollowsTheUnit() {
    Quantity written = Quantity.written(new BigDecimal("14.0"), UnitParser.parse("m"));
    Slip.Meant first =
        Slips.usual().stream()
            .flatMap(slip -> slip.meant(written, new Subject("d", "")).stream())
            .findFirst()
            .orElseThrow();
    assertEquals(0, first.quantity().value().compareTo(new BigDecimal("0.14")));
    assertEquals("is the unit of {name} right?", first.question());
  }
}
