package plainscale.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.units.UnitOfMeasure;

class HeadingTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "d (cm)|d|cm",
        "d(cm)|d|cm",
        "d [cm]|d|cm",
        "d/cm|d|cm",
        "d / cm|d|cm",
        "d in cm|d|cm",
        "v/(m/s)|v|m/s",
        "v (m/s)|v|m/s",
        "v/m/s|v|m/s",
        "v in m/s|v|m/s",
        "v/(m s^-1)|v|m/s",
        "a [m·s⁻²]|a|m/s²",
        "θ (°)|θ|°",
        "T (°C)|T|°C",
        "T/°C|T|°C",
        "distance of the balls (cm)|distance_of_the_balls|cm",
        "d₁ (mm)|d₁|mm",
        "x-axis (m)|x_axis|m",
        "2nd reading (s)|c_2nd_reading|s",
        "N (1)|N|''",
        "group|group|",
        "time in air|time|",
        "ln(d)|ln_d|",
        "yes/no|yes|",
        "number of swings|number_of_swings|",
      })
  void nameAndUnit(String text, String name, String unit) {
    Heading heading = Heading.of(text, 1, 1);
    assertEquals(name, heading.name());
    assertEquals(unit, heading.unit().map(UnitOfMeasure::text).orElse(null));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "u(d)/cm|d|cm",
        "u(d) (mm)|d|mm",
        "u(d)|d|",
        "±d (cm)|d|cm",
        "±|''|",
        "± (cm)|''|cm",
        "+-d/cm|d|cm",
        "u(d/cm)|d|cm"
      })
  void uncertainties(String text, String quantity, String unit) {
    Heading heading = Heading.of(text, 1, 1);
    assertTrue(heading.uncertainty());
    assertEquals(quantity, heading.quantity());
    assertEquals(unit, heading.unit().map(UnitOfMeasure::text).orElse(null));
  }

  @Test
  void aWrongUnitHasNearOnes() {
    Heading heading = Heading.of("m (gr)", 1, 1);
    assertEquals("gr", heading.wrongUnit());
    assertTrue(heading.nearUnits().contains("g"), heading.nearUnits().toString());
  }
}
