package plainscale.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class HazardsTest {
  static Collection<Hazard> all() {
    return Hazards.all();
  }

  @Test
  void theHazardsOfADepartmentAreThere() {
    List<String> names = Hazards.names();
    assertTrue(
        names.containsAll(
            List.of(
                "electrostatics",
                "electrostatic_generator",
                "capacitors",
                "mains",
                "high_voltage",
                "lasers",
                "radioactive_sources",
                "vacuum",
                "hot_water",
                "liquid_nitrogen",
                "magnets",
                "latex",
                "flying_objects",
                "flames",
                "glass",
                "falling_masses",
                "loud_sound",
                "bright_light",
                "electric_heating")),
        names::toString);
  }

  @ParameterizedTest
  @MethodSource("all")
  void aHazardHasANameOfOneWordCautionsAndASource(Hazard hazard) {
    assertTrue(hazard.name().matches("[a-z]+(_[a-z]+)*"), hazard.name());
    int cautions = hazard.cautions().size();
    assertTrue(cautions >= 2 && cautions <= 4, cautions + " cautions");
    hazard.cautions().forEach(caution -> assertTrue(caution.matches("\\p{Lu}.{15,}[.]"), caution));
    assertTrue(hazard.source().length() > 10, hazard.source());
    assertEquals(Optional.of(hazard), Hazards.find(hazard.name()));
  }

  @ParameterizedTest
  @CsvSource({
    "rubber balloon, latex",
    "balloons, electrostatics",
    "a laser pointer, lasers",
    "half-life of an isotope, radioactive_sources",
    "bell jar, vacuum",
    "telescope, bright_light",
    "a kettle, hot_water"
  })
  void wordsFindHazards(String words, String hazard) {
    List<String> found = Hazards.search(words).stream().map(Hazard::name).toList();
    assertTrue(found.contains(hazard), found::toString);
  }

  @Test
  void wordsThatMeanNothingFindNothing() {
    assertEquals(List.of(), Hazards.search("of a xyzzy"));
    assertEquals(List.of(), Hazards.search(""));
    assertEquals(List.of(), Hazards.nearest("xyzzy"));
  }

  @ParameterizedTest
  @CsvSource({
    "magnet, magnets",
    "latx, latex",
    "hotwater, hot_water",
    "steam, hot_water",
    "ballon, latex"
  })
  void theNearestNamesAreOffered(String name, String nearest) {
    assertTrue(Hazards.nearest(name).contains(nearest), () -> Hazards.nearest(name).toString());
  }

  @Test
  void whoHasTheLastWordIsSaid() {
    assertTrue(Hazards.LAST_WORD.contains("rules of the school"));
    assertTrue(Hazards.LAST_WORD.contains("licensed"));
  }
}
