package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.sheet.Cells.marked;
import static plainscale.sheet.Cells.onlyProblem;
import static plainscale.sheet.Cells.run;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.laws.Hazard;
import plainscale.laws.HazardLimit;
import plainscale.laws.HazardLimits;
import plainscale.laws.Hazards;
import plainscale.notation.Problem;
import plainscale.render.Renderers;

/** Cautions that a cell asks for, and those that its values set off. */
class CautionsTest {
  static List<GuardFixture> cells() {
    return GuardFixture.read("hazard-limits.txt");
  }

  private static List<String> setOff(List<Result> results) {
    return GuardResult.setOff(results).stream().map(Hazard::name).toList();
  }

  @ParameterizedTest
  @MethodSource("cells")
  void aValueBeyondALimitSetsOffTheCaution(GuardFixture cell) {
    String text = cell.text();
    assertAll(
        cell.block().all("told").stream().map(told -> () -> assertTrue(text.contains(told), text)));
    String hazard = cell.block().one("hazard");
    assertEquals(hazard.equals("-") ? List.of() : List.of(hazard), setOff(cell.told()), text);
  }

  @ParameterizedTest
  @MethodSource("cells")
  void whatIsHarmlessSetsOffNothing(GuardFixture cell) {
    if (cell.hasQuiet()) {
      assertEquals(List.of(), setOff(cell.quiet()), () -> Renderers.text(cell.quiet()));
    }
  }

  @Test
  void everyRowOfTheTableHasACell() {
    List<String> rows = new ArrayList<>();
    HazardLimits.all().forEach(limit -> rows.add(key(limit.hazard().name(), limit.limit())));
    for (GuardFixture cell : cells()) {
      String row = cell.block().one("row");
      if (!row.equals("-")) {
        rows.remove(key(cell.block().one("hazard"), new BigDecimal(row)));
      }
    }
    assertEquals(List.of(), rows);
  }

  private static String key(String hazard, BigDecimal limit) {
    return hazard + " " + limit.stripTrailingZeros().toPlainString();
  }

  @Test
  void aRowSaysWhoseLimitItIsAndWhatToDo() {
    for (HazardLimit limit : HazardLimits.all()) {
      assertTrue(limit.whose().length() > 20, limit.whose());
      assertTrue(limit.advice().length() > 20, limit.advice());
      assertTrue(limit.source().length() > 10, limit.source());
    }
  }

  @Test
  void aCellShowsTheCautionsAndWhoHasTheLastWord() {
    String text =
        Renderers.text(run(new Sheet(), "a", "caution electrostatic_generator, latex").results());
    assertTrue(text.startsWith("Caution: electrostatic generator\n  "), text);
    assertTrue(text.contains("\nCaution: natural rubber latex\n  "), text);
    assertTrue(text.endsWith("\n" + Hazards.LAST_WORD), text);
    for (String name : List.of("electrostatic_generator", "latex")) {
      Hazard hazard = Hazards.find(name).orElseThrow();
      hazard.cautions().forEach(caution -> assertTrue(text.contains(caution), caution));
      assertTrue(text.contains("Source: " + hazard.source()), text);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "caution latx          | latx      | latex",
        "caution lasers, lasr  | lasr      | lasers",
        "caution balloon       | balloon   | electrostatics",
        "caution hot water     | water     | hot_water",
        "caution mains, mains  | mains     | delete it",
        "caution               | ''        | ''",
        "caution 3             | 3         | ''",
        "caution xyzzy         | xyzzy     | one of electrostatics"
      })
  void anUnknownHazardIsToldWithTheNearest(String cell, String place, String repair) {
    Problem problem = onlyProblem(new Sheet().run("a", cell));
    assertEquals(place, marked(problem));
    String repairs = String.join(" or ", problem.repairs());
    assertTrue(repairs.startsWith(repair) && repair.isEmpty() == repairs.isEmpty(), repairs);
  }

  @Test
  void aCautionInTheSheetTakesThePlaceOfWordsForWhere() {
    Sheet sheet = new Sheet();
    String given = "given W = 0.75 J \"stored energy\"";
    assertEquals(List.of(), setOff(run(sheet, "a", given).results()));
    Run caution = run(sheet, "b", "caution electrostatic_generator");
    assertEquals(List.of("a"), Cells.updated(caution));
    List<String> now = setOff(caution.updates().get(0).results());
    assertEquals(List.of("electrostatic_generator"), now);
    Run gone = run(sheet, "b", "say \"none\"");
    assertEquals(List.of(), setOff(gone.updates().get(0).results()));
  }

  @Test
  void aCautionInTheSheetMakesNoCautionOfOtherEnergies() {
    Sheet sheet = new Sheet();
    run(sheet, "a", "caution electrostatic_generator, capacitors, flying_objects, falling_masses");
    Run run =
        run(sheet, "b", "given E_1 = 3e5 J \"kinetic energy of a car\"", "given x = 8 J \"work\"");
    assertEquals(List.of(), setOff(run.results()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "given T_1 = 80 K\ngiven T_2 = 75 K\nx = T_1 - T_2 \"of the nitrogen\"",
        "given x = 5 K \"by which the nitrogen was cooled\"",
        "given x = 70 K \"temperature rise of the water\"",
      })
  void aDifferenceOfTemperaturesIsNeitherHotNorCold(String cell) {
    List<Result> results = run(new Sheet(), "a", cell.split("\n")).results();
    assertEquals(List.of(), setOff(results), () -> Renderers.text(results));
  }

  @Test
  void aCautionInTheSheetIsNotForWhatTheWordsSayIsElsewhere() {
    Sheet sheet = new Sheet();
    run(sheet, "a", "caution electrostatic_generator");
    Run run = run(sheet, "b", "given W = 8.1 J \"energy of the capacitor\"");
    assertEquals(List.of("capacitors"), setOff(run.results()));
  }

  @Test
  void theFurthestLimitOfAHazardIsTold() {
    String text =
        Renderers.text(run(new Sheet(), "a", "given I = 0.3 A \"through a hand\"").results());
    assertTrue(text.contains("reaches 0.1 A"), text);
    assertEquals(1, text.split("Caution", -1).length - 1, text);
  }
}
