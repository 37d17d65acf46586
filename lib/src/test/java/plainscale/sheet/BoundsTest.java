package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.sheet.Cells.run;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.fixtures.Block;
import plainscale.laws.PhysicalBound;
import plainscale.laws.PhysicalBounds;
import plainscale.render.Renderers;

/** What cannot be is told after its value, and what can be is not. */
class BoundsTest {
  static List<GuardFixture> cells() {
    return GuardFixture.read("bounds.txt");
  }

  static List<PhysicalBound> bounds() {
    return PhysicalBounds.all();
  }

  private static List<GuardResult.Impossible> impossible(List<Result> results) {
    return results.stream()
        .filter(GuardResult.Impossible.class::isInstance)
        .map(GuardResult.Impossible.class::cast)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("cells")
  void whatCannotBeIsTold(GuardFixture cell) {
    String text = cell.text();
    assertAll(
        cell.block().all("told").stream().map(told -> () -> assertTrue(text.contains(told), text)));
    PhysicalBound bound = bound(cell.block().one("bound"));
    boolean because =
        impossible(cell.told()).stream().anyMatch(told -> told.why().equals(bound.why()));
    assertTrue(because, text);
  }

  @ParameterizedTest
  @MethodSource("cells")
  void theSameWithPlausibleNumbersIsNot(GuardFixture cell) {
    List<Result> results = cell.quiet();
    assertEquals(List.of(), impossible(results), () -> Renderers.text(results));
  }

  private static PhysicalBound bound(String name) {
    return bounds().stream().filter(b -> b.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void everyRowOfTheTableHasACell() {
    Set<String> rows =
        bounds().stream().map(PhysicalBound::name).collect(Collectors.toCollection(TreeSet::new));
    assertEquals(bounds().size(), rows.size(), "a name stands twice");
    cells().forEach(cell -> rows.remove(cell.block().one("bound")));
    assertEquals(Set.of(), rows);
  }

  @ParameterizedTest
  @MethodSource("bounds")
  void aRowSaysWhyAndWhereFrom(PhysicalBound bound) {
    assertTrue(bound.why().matches("\\p{Lu}.*\\."), bound.why());
    assertTrue(bound.source().length() > 10, bound.source());
    assertTrue(bound.least().isPresent() || bound.most().isPresent());
  }

  /** Examples of books and lessons, whose values are right however odd they look. */
  static Stream<String> right() {
    Stream<String> books =
        Block.read("openstax.txt").stream()
            .map(
                block ->
                    Stream.concat(
                            block.all("given").stream().map(given -> "given " + given),
                            block.all("formula").stream())
                        .collect(Collectors.joining("\n")));
    Stream<String> landmarks =
        plainscale.table.Table.read(BoundsTest.class, "/plainscale/fixtures/landmark-cells.tsv")
            .stream()
            .map(row -> "x = " + row.get("cell"));
    return Stream.concat(books, landmarks);
  }

  @Test
  void thereAreNoFalseAlarms() {
    List<String> cells = right().toList();
    assertTrue(cells.size() > 100, cells.size() + " cells");
    for (String cell : cells) {
      List<Result> results = new Sheet().run("cell", cell).results();
      List<Result> alarms = results.stream().filter(GuardResult.class::isInstance).toList();
      assertEquals("", Renderers.text(alarms), cell);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "given r = 26.5e-12 m\nE = 2*k_e e/r^2 \"field at the nucleus of helium\"",
        "v = c",
        "v = 3.00e8 [m/s] \"speed of light, rounded\"",
        "given v_p = 5e8 m/s \"phase speed in the wave guide\"",
        "given T_1 = 293 K\ngiven T_2 = 290 K\nΔT = T_2 - T_1",
        "given T_1 = 293 K\ngiven T_2 = 290 K\nT_2 - T_1",
        "given m_1 = 2.0 kg\ngiven m_2 = 3.0 kg\nm_1 - m_2",
        "given m_1 = 2.0 kg\ngiven m_2 = 3.0 kg\nΔm = m_1 - m_2 \"change of the mass\"",
        "given m_1 = 2.0 kg\ngiven m_2 = 3.0 kg\nx = (m_1 - m_2)/2",
        "given m_1 = 2.0 kg\ngiven m_2 = 3.0 kg\nrelation r: x = m_1 - m_2\nsolve r for x with x < 0 kg",
        "given b = -12 cm \"image distance\"",
        "given y = -12 m \"height above the ground\"",
        "q = -e",
        "q = 3*e",
        "given q = 4.8e-19 C \"charge of a drop\"",
        "given q = 4.80e-19 ± 0.05e-19 C \"charge of a drop\"",
        "given q = 2.2e-19 ± 0.4e-19 C \"charge of a drop\"",
        "given q = 1.3e-17 C \"charge of a drop\"",
        "q = 2/3*e \"charge of an up quark\"",
        "constants textbook\nq = 500*e",
        "given η = 1.02 ± 0.03 \"efficiency\"",
        "given f = 1.4e9 Hz \"rotation of the electron in the magnetic field\"",
        "given Q = -6.76e5 C \"charge of the Earth\"",
        "given n = 28\nq = n*1e22 e \"charge of all the electrons in the ball\"",
        "given U = 100 MV \"voltage of a thundercloud\"",
        "given B = 1e8 T \"field of a neutron star\"",
        "given p = -20 kPa \"gauge pressure of the gas\"",
        "given v = 40 m/s \"wind that drives the rain\"",
        "E_k = -13.6 [eV] \"energy of the ground state\""
      })
  void whatOnlyLooksOddIsLeftAlone(String cell) {
    Run run = run(new Sheet(), "cell", cell.split("\n"));
    assertEquals(List.of(), impossible(run.results()), () -> Renderers.text(run.results()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "given v = 4e8 m/s",
        "v = 1.2*c",
        "1.2*c",
        "show 2*c in km/s",
        "relation r: v = 2*c\nsolve r for v",
        "given v = -4e8 m/s",
        "given q = 2.40e-19 ± 0.05e-19 C",
        "given q = 1e-20 C \"charge of a drop\"",
        "η = 1.4 \"efficiency of the pump\"",
        "η = 1.4",
        "given η = 85 \"in per cent\"",
        "given w = 4 m\nshow w in cm\ngiven p = -0.2 \"probability\"",
      })
  void givensDefinitionsUnknownsAndShownValuesAreWatched(String cell) {
    List<Result> results = run(new Sheet(), "cell", cell.split("\n")).results();
    assertEquals(1, impossible(results).size(), () -> Renderers.text(results));
  }

  @Test
  void aShownNameIsToldOnceUnlessItIsCalledOtherwise() {
    Sheet sheet = new Sheet();
    run(sheet, "a", "given y = 100 m", "v = sqrt(2*g_n y)");
    assertEquals(1, run(sheet, "b", "show v").results().size());
    assertEquals(2, run(sheet, "c", "show v \"speed of the raindrop\"").results().size());
  }

  @Test
  void theLineFollowsTheGivens() {
    Sheet sheet = new Sheet();
    run(sheet, "a", "given U = 25.0 kV");
    assertEquals(1, run(sheet, "b", "v = sqrt(2*e U/m_e)").results().size());
    Run changed = run(sheet, "a", "given U = 25.0 MV");
    assertEquals(1, impossible(changed.updates().get(0).results()).size());
    Run back = run(sheet, "a", "given U = 25.0 kV");
    assertEquals(List.of(), impossible(back.updates().get(0).results()));
  }

  @Test
  void aDerivationToBeFilledInGivesNothingAway() {
    List<Result> results =
        run(new Sheet(), "a", "relation r: v = 2*c", "solve r for v with boxes").results();
    assertEquals(List.of(), impossible(results));
  }

  @Test
  void aLineThatNoLongerCountsIsNotWatched() {
    Sheet sheet = new Sheet();
    run(sheet, "a", "given v = 4e8 m/s");
    Run other = run(sheet, "b", "given v = 4 m/s");
    assertEquals(List.of(), impossible(other.updates().get(0).results()));
  }
}
