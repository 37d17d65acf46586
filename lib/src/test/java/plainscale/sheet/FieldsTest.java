package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.sheet.Cells.marked;
import static plainscale.sheet.Cells.onlyProblem;
import static plainscale.sheet.Cells.run;
import static plainscale.sheet.Cells.updated;

import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.algebra.Budget;
import plainscale.field.CourseEnd;
import plainscale.field.Frame;
import plainscale.field.Nature;
import plainscale.field.Section;
import plainscale.notation.Problem;

/** Fields in cells: values, frames, motions, refusals. */
class FieldsTest {
  private final Sheet sheet = new Sheet();

  private <R extends FieldResult> R last(Class<R> kind, String... lines) {
    List<Result> results = run(sheet, "cell", lines).results();
    return kind.cast(results.get(results.size() - 1));
  }

  private FieldResult.Value value(FieldResult.Probed probed, String symbol) {
    return probed.values().stream()
        .filter(value -> value.symbol().equals(symbol))
        .findFirst()
        .orElseThrow();
  }

  private double number(FieldResult.Probed probed, String symbol) {
    return value(probed, symbol).shown().value().doubleValue();
  }

  private void pair() {
    run(
        sheet,
        "pair",
        "given q = 3.00 nC",
        "given d = 14.0 cm",
        "given m_1 = 1.0 mg",
        "field pair: charge q at (-d/2, 0 cm), charge -q at (d/2, 0 cm)");
  }

  /** University Physics 2, example 5.3 (m58722): 4.1 × 10¹² N/C for 2e at 26.5 pm. */
  @Test
  void aHeliumNucleusMakesThatField() {
    FieldResult.Probed probed =
        last(
            FieldResult.Probed.class,
            "given r = 26.5 pm",
            "field ion: charge 2*e at (0 pm, 0 pm)",
            "potential of ion at (r, 0 pm)");
    assertEquals(4.1e12, number(probed, "E"), 0.05e12);
  }

  /**
   * Example 5.4 (m58722): above the middle of two like charges 2qz/(4πε₀(z² + d²/4)^{3/2}) upwards,
   * of two unlike ones q d/(4πε₀(z² + d²/4)^{3/2}) along the line.
   */
  @ParameterizedTest
  @CsvSource({"q, E_y, 2*q*z", "-q, E_x, q*d"})
  void twoChargesMakeThatFieldAboveTheirMiddle(String second, String symbol, String moment) {
    List<Result> results =
        run(
                sheet,
                "cell",
                "given q = 3.00 nC",
                "given d = 14.0 cm",
                "given z = 5.00 cm",
                "E_known = k_e*" + moment + "/(z^2 + d^2/4)^(3/2)",
                "field two: charge q at (-d/2, 0 cm), charge %s at (d/2, 0 cm)".formatted(second),
                "potential of two at (0 cm, z)")
            .results();
    FieldResult.Probed probed = (FieldResult.Probed) results.get(results.size() - 1);
    double known = Cells.value(sheet, "E_known").value().doubleValue();
    assertEquals(known, number(probed, symbol), 0.005 * known);
    assertEquals(0, number(probed, symbol.equals("E_y") ? "E_x" : "E_y"));
    assertEquals(3, value(probed, symbol).shown().value().precision());
  }

  /** College Physics 2e, example 18.2 (m42310): 7.19 × 10⁵ N/C; figures as the inputs have. */
  @Test
  void aPointChargeMakesThatField() {
    FieldResult.Probed probed =
        last(
            FieldResult.Probed.class,
            "constants textbook",
            "given q = 2.00 nC",
            "given r = 5.00 mm",
            "field one: charge q at (0 mm, 0 mm)",
            "potential of one at (0 mm, -r)");
    assertEquals("719000", value(probed, "E").shown().value().toBigInteger().toString());
    assertEquals("-90.0", value(probed, "φ").shown().value().toPlainString());
  }

  /** University Physics 2, example 7.10 (m58431): −539 V at 5.00 cm from −3.00 nC. */
  @Test
  void aPointChargeMakesThatPotential() {
    FieldResult.Probed probed =
        last(
            FieldResult.Probed.class,
            "given q = -3.00 nC",
            "given r = 5.00 cm",
            "field one: charge q at (0 cm, 0 cm)",
            "potential of one at (r, 0 cm)");
    assertEquals("-539", value(probed, "V").shown().value().toPlainString());
  }

  /** University Physics 2, example 7.9 (m58430): from 4.0 cm to 12.0 cm by 2.0 nC, 300 V. */
  @Test
  void thePotentialAlongALineFallsByThat() {
    FieldResult.Sectioned section =
        last(
            FieldResult.Sectioned.class,
            "field one: charge 2.0 nC at (0 cm, 0 cm)",
            "section one from (4.0 cm, 0 cm) to (12.0 cm, 0 cm)");
    List<Section.Sample> samples = section.section().samples();
    double fall =
        samples.get(0).value().potential() - samples.get(samples.size() - 1).value().potential();
    assertEquals(299.6, fall, 0.1); // k_e CODATA 2022 × 2 nC × (1/4 cm − 1/12 cm)
  }

  /** By the uncertainty of a product of powers: V ∝ q/r, E ∝ q/r². */
  @Test
  void theUncertaintyComesFromTheSources() {
    FieldResult.Probed probed =
        last(
            FieldResult.Probed.class,
            "given q = 3.00 ± 0.03 nC",
            "given r = 10.0 ± 0.1 cm",
            "field one: charge q at (0 cm, 0 cm)",
            "potential of one at (r, 0 cm)");
    double potential = 8.9875517862e9 * 3e-9 / 0.1;
    assertEquals(
        potential * Math.hypot(0.01, 0.01),
        value(probed, "V").shown().uncertainty().orElseThrow().doubleValue(),
        0.2);
    assertEquals(
        potential / 0.1 * Math.hypot(0.01, 0.02),
        value(probed, "E").shown().uncertainty().orElseThrow().doubleValue(),
        5);
  }

  /** College Physics 2e, section 6.5: g = GM/r² is 9.80 m/s² at the surface; M and r from there. */
  @Test
  void massesMakeAGravitationalField() {
    FieldResult.Probed probed =
        last(
            FieldResult.Probed.class,
            "field earth: sphere 5.979e24 kg radius 6376 km at (0 km, 0 km)",
            "potential of earth at (0 km, 6376 km)");
    assertEquals(-9.81, number(probed, "g_y"), 0.01);
    assertEquals("J/kg", value(probed, "V").shown().unit().text());
  }

  /** Whole numbers have no figures of their own: k_e · 3 nC/(5 cm)² is 10 785.06… V/m. */
  @Test
  void exactNumbersGiveFourFigures() {
    FieldResult.Probed probed =
        last(
            FieldResult.Probed.class,
            "field one: charge 3 nC at (0 cm, 0 cm)",
            "potential of one at (5 cm, 0 cm)");
    assertEquals(10790, number(probed, "E"));
    assertTrue(value(probed, "E").shown().uncertainty().isEmpty());
  }

  @Test
  void onAChargeThereIsNoFieldAndThatIsSaid() {
    pair();
    FieldResult.Probed probed = last(FieldResult.Probed.class, "potential of pair at (d/2, 0 cm)");
    assertEquals(List.of(), probed.values());
    assertTrue(probed.remark().orElseThrow().contains("not defined"));
  }

  @Test
  void aMapChoosesItsFrameOrTakesTheOneThatIsGiven() {
    pair();
    Frame own = last(FieldResult.Mapped.class, "map pair").chart().frame();
    assertEquals(0.32, own.width(), 1e-9);
    assertEquals(0.24, own.height(), 1e-9);
    FieldResult.Mapped asked =
        last(FieldResult.Mapped.class, "map pair from (5 cm, 3 cm) to (-5 cm, -4 cm) with vectors");
    assertEquals(new Frame(-0.05, -0.04, 0.05, 0.03), asked.chart().frame());
    assertTrue(asked.chart().arrows().isPresent());
    assertTrue(asked.chart().lines().isEmpty());
  }

  /** Between two equal charges the field is zero in the middle, by symmetry. */
  @Test
  void thePlaceWithoutFieldIsFound() {
    FieldResult.Mapped map =
        last(
            FieldResult.Mapped.class,
            "field same: charge 2 nC at (-3 cm, 1 cm), charge 2 nC at (5 cm, 1 cm)",
            "map same");
    assertEquals(1, map.chart().nulls().size());
    assertEquals(0.01, map.chart().nulls().get(0).getX(), 1e-9);
    assertEquals(0.01, map.chart().nulls().get(0).getY(), 1e-9);
  }

  /** With charges 4 : 1 at a distance a it is 2a/3 from the larger: q₁/x² = q₂/(a − x)². */
  @Test
  void betweenUnequalChargesItIsNearerToTheSmaller() {
    FieldResult.Mapped map =
        last(
            FieldResult.Mapped.class,
            "field four: charge 4 nC at (0 cm, 0 cm), charge 1 nC at (9 cm, 0 cm)",
            "map four");
    assertEquals(0.06, map.chart().nulls().get(0).getX(), 1e-9);
  }

  @Test
  void aReliefIsCutBesideTheCharges() {
    pair();
    FieldResult.Reliefed relief = last(FieldResult.Reliefed.class, "relief pair");
    assertTrue(relief.relief().isCut());
    assertEquals(-relief.relief().lowest(), relief.relief().highest(), 1e-9);
    assertEquals(Nature.ELECTRIC, relief.nature());
  }

  @Test
  void aReleasedChargeKeepsItsEnergyAndComesBack() {
    pair();
    FieldResult.Released released =
        last(FieldResult.Released.class, "release charge -1 nC mass m_1 at (0 cm, 6 cm) in pair");
    assertTrue(released.trajectory().largestDeviation() <= 1e-6);
    assertTrue(released.period().isPresent());
    assertFalse(released.asked());
  }

  /** Kepler's third law for a circle: T = 2π √(r³/(G M)). */
  @Test
  void aCircleAroundTheEarthTakesThatLong() {
    FieldResult.Released released =
        last(
            FieldResult.Released.class,
            "M = 5.97e24 [kg]",
            "r = 1.0e7 [m]",
            "v = sqrt(G*M/r)",
            "field earth: sphere M radius 6371 km at (0 km, 0 km)",
            "release mass 1 kg at (r, 0 km) moving (0 m/s, v) in earth");
    double known = 2 * Math.PI * Math.sqrt(1e21 / (6.67430e-11 * 5.97e24));
    assertEquals(known, released.period().orElseThrow(), 1e-5 * known);
    assertTrue(released.trajectory().largestDeviation() <= 1e-6);
  }

  /**
   * Between plates, uniform acceleration from rest: s = ½ (qσ/(ε₀m)) t², so the way of 1 cm takes
   * √(2 s ε₀ m/(qσ)).
   */
  @Test
  void aChargeRunsIntoAPlateAfterThatTime() {
    FieldResult.Released released =
        last(
            FieldResult.Released.class,
            "field plates_1: plates 1 [nC/m^2] gap 4 cm at (0 cm, 0 cm)",
            "release charge 1 nC mass 1 mg at (1 cm, 0 cm) in plates_1");
    assertTrue(released.trajectory().end() instanceof CourseEnd.RanInto);
    double acceleration = 1e-9 * 1e-9 / 8.8541878188e-12 / 1e-6;
    double frame = released.chart().frame().diagonal();
    double known = Math.sqrt(2 * (0.01 - 1e-3 * frame) / acceleration);
    List<plainscale.field.Moment> samples = released.trajectory().samples();
    assertEquals(known, samples.get(samples.size() - 1).time(), 1e-6 * known);
  }

  @Test
  void aBodyIsFollowedForTheTimeThatIsAsked() {
    pair();
    FieldResult.Released released =
        last(
            FieldResult.Released.class,
            "release charge 1 nC mass m_1 at (0 cm, 6 cm) moving (0 m/s, 1 cm/s) in pair for 1 ms");
    assertTrue(released.asked());
    assertTrue(released.trajectory().end() instanceof CourseEnd.TimeUp);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "field f: charge q at (0, 3 cm) | 0 | 0 cm",
        "field f: charge q at (d/d, 3 cm) | d/d | (d/d) [cm]",
        "field f: charge 3 at (0 cm, 0 cm) | 3 | charge 3 C",
        "field f: charge m_1 at (0 cm, 0 cm) | m_1 | charge q",
        "field f: charge q at (0 cm, 0 cm), mass m_1 at (d, 0 cm) | mass m_1 at (d, 0 cm) |"
            + " declare two fields, one for the charges and one for the masses",
        "field f: ring q radius -2 cm at (0 cm, 0 cm) | -2 cm | give it a length above zero",
        "field f: line q from (d, 0 cm) to (d, 0 cm) | line q from (d, 0 cm) to (d, 0 cm) | as a"
            + " point: charge q at …",
        "field f: charg q at (0 cm, 0 cm) | charg | charge",
        "field f: charge q at (3 cm) | (3 cm) | (3 cm, 0 cm)",
        "field f charge q at (0 cm, 0 cm) | charge | field f: charge q at (0 cm, 0 cm)",
        "field f: plates q gap 2 cm at (0 cm, 0 cm) | q | plates σ gap g at (0 cm, 0 cm)",
        "field f: charge q (1 cm, 2 cm) | charge q (1 cm, | charge q at (0 cm, 0 cm)",
        "field f: charge q at (1 cm, 2 cm, 3 cm) | (1 cm, 2 cm, | (1 cm, 2 cm)",
        "field map: charge q at (1 cm, 2 cm) | map | map_1",
        "release charge 1e300 [C] mass 1e-300 kg at (0 cm, 3 cm) in pair | (0 cm, 3 cm) | start it"
            + " somewhere else, a little aside",
        "map pear | pear | pair",
        "map q | q | pair",
        "pair + 1 | pair | ",
        "map pair from (1 cm, 1 cm) to (1 cm, 3 cm) | from (1 cm, 1 cm) to (1 cm, 3 cm) | from (-5"
            + " cm, -4 cm) to (5 cm, 4 cm)",
        "section pair from (1 cm, 1 cm) to (1 cm, 1 cm) | from (1 cm, 1 cm) to (1 cm, 1 cm) | from"
            + " (-5 cm, 0 cm) to (5 cm, 0 cm)",
        "release charge q mass m_1 at (d/2, 0 cm) in pair | (d/2, 0 cm) | start it somewhere else,"
            + " a little aside",
        "release mass m_1 at (0 cm, 2 cm) in pair | release mass m_1 at (0 cm, 2 cm) in pair |"
            + " release charge q mass …",
        "release charge q mass 0 kg at (0 cm, 2 cm) in pair | 0 kg | ",
        "release charge q mass m_1 at (0 cm, 2 cm) moving (1 m, 0 m) in pair | 1 m | ",
        "potential of pair (0 cm, 2 cm) | ( | ",
        "relief | `` | "
      })
  void whatIsWrongIsToldWithItsPlaceAndARepair(String line, String place, String repair) {
    pair();
    Problem problem = onlyProblem(sheet.run("cell", line));
    assertTrue(problem.sentence().endsWith("."), problem.sentence());
    if (!line.equals("pair + 1") && !place.isEmpty()) {
      assertEquals(place, marked(problem), problem.sentence());
    }
    if (repair != null) {
      assertEquals(repair, problem.repairs().get(0));
    }
  }

  @Test
  void chargesAtOnePlaceAreOneAndThatIsSaid() {
    FieldResult.Declared declared =
        last(
            FieldResult.Declared.class,
            "field f: charge 3 nC at (1 cm, 0 cm), charge -3 nC at (1 cm, 0 cm)");
    assertTrue(declared.remarks().get(0).endsWith("they cancel."));
    FieldResult.Mapped map =
        last(
            FieldResult.Mapped.class,
            "field f: charge 3 nC at (1 cm, 0 cm)," + " charge -3 nC at (1 cm, 0 cm)",
            "map f");
    assertEquals(List.of(), map.chart().contours());
  }

  @Test
  void moreThanTheMostSourcesAreRefused() {
    pair();
    String charges =
        IntStream.range(0, 90)
            .mapToObj(i -> "charge q at (" + i + " cm, 0 cm)")
            .collect(Collectors.joining(", "));
    Problem problem = onlyProblem(sheet.run("cell", "field f: " + charges));
    assertEquals(Problem.Kind.LIMIT, problem.kind());
  }

  @Test
  void aChangedChargeBringsItsMapUpToDateAndAnotherNameDoesNot() {
    run(sheet, "givens", "given q = 3.0 nC", "given w = 1 m");
    run(sheet, "field", "field f: charge q at (0 cm, 0 cm)");
    run(sheet, "map", "map f");
    assertEquals(
        List.of("field", "map"),
        updated(run(sheet, "givens", "given q = 4.0 nC", "given w = 1 m")));
    assertEquals(List.of(), updated(run(sheet, "givens", "given q = 4.0 nC", "given w = 2 m")));
  }

  @Test
  void aMistakeInAnotherCellIsToldWithoutItsLines() {
    sheet.run("field", "field f: charge 3 kg at (0 cm, 0 cm)");
    Problem problem = onlyProblem(sheet.run("map", "map f"));
    assertEquals("f", marked(problem));
    assertTrue(problem.sentence().startsWith("The field “f” has a mistake in another cell: "));
  }

  @Test
  void aStoppedRunSaysSo() {
    pair();
    boolean[] stopped = {false};
    Budget budget = new Budget(2_000_000, Duration.ofSeconds(10), () -> stopped[0]);
    stopped[0] = true;
    Problem problem = onlyProblem(sheet.run("map", "map pair", budget));
    assertEquals("Stopped, as you asked.", problem.sentence());
  }

  @Test
  void aRunThatTakesTooLongSaysSo() {
    pair();
    Budget budget = new Budget(2_000_000, Duration.ZERO, () -> false);
    Problem problem = onlyProblem(sheet.run("map", "map pair", budget));
    assertEquals("This cell takes too long; it was stopped.", problem.sentence());
  }
}
