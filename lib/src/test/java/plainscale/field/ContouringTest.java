package plainscale.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.field.Fields.effort;
import static plainscale.field.Fields.in;

import java.util.List;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Equipotentials: at their level, across the field, joined. */
class ContouringTest {
  private static final Frame FRAME = new Frame(-0.75, -0.6, 0.75, 0.6);
  private static final double RIGHT_ANGLE_WITHIN = Math.sin(Math.toRadians(1));

  private static PotentialGrid grid(Configuration configuration) {
    return PotentialGrid.of(configuration, FRAME, 201, 161, effort());
  }

  private static Vector3D space(Vector2D point) {
    return in(point.getX(), point.getY());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void everyPointHasItsLevel(long seed) {
    Configuration configuration = Configuration.of(Fields.K_E, Fields.random(new Random(seed), 8));
    PotentialGrid grid = grid(configuration);
    Levels levels = Levels.suited(grid, 12);
    assertTrue(levels.values().size() >= 5, levels.toString());
    for (Contour contour : Contouring.of(grid, levels, effort())) {
      double scale = contour.level() == 0 ? levels.step() : Math.abs(contour.level());
      assertTrue(!contour.lines().isEmpty());
      contour.lines().stream()
          .flatMap(line -> line.points().stream())
          .forEach(
              p -> assertEquals(contour.level(), configuration.potential(space(p)), 1e-6 * scale));
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14})
  void theyCrossTheFieldAtRightAngles(long seed) {
    List<PointCharge> charges = Fields.random(new Random(seed), 6);
    Configuration configuration = Configuration.of(Fields.K_E, charges);
    PotentialGrid grid = grid(configuration);
    double cell = FRAME.width() / 200;
    int checked = 0;
    for (Contour contour : Contouring.of(grid, Levels.suited(grid, 12), effort())) {
      for (Polyline line : contour.lines()) {
        for (int i = 1; i < line.points().size(); i++) {
          Vector3D from = space(line.points().get(i - 1));
          Vector3D to = space(line.points().get(i));
          Vector3D middle = new Vector3D(0.5, from, 0.5, to);
          if (isFair(configuration, charges, middle, 12 * cell)) {
            assertAcross(configuration.field(middle), to.subtract(from), middle);
            checked++;
          }
        }
      }
    }
    assertTrue(checked > 500, checked + " pieces");
  }

  /** Away from charges, and where the field's direction does not turn within a cell. */
  private static boolean isFair(
      Configuration configuration, List<PointCharge> charges, Vector3D at, double clear) {
    double strength = charges.stream().mapToDouble(c -> c.field(at).getNorm()).sum();
    boolean isNearNull = configuration.field(at).getNorm() < 0.2 * Fields.K_E * strength;
    return !isNearNull && charges.stream().allMatch(c -> Vector3D.distance(c.place(), at) > clear);
  }

  private static void assertAcross(Vector3D field, Vector3D along, Vector3D at) {
    double cosine = field.dotProduct(along) / field.getNorm() / along.getNorm();
    assertTrue(
        Math.abs(cosine) < RIGHT_ANGLE_WITHIN, Math.toDegrees(Math.acos(cosine)) + "° at " + at);
  }

  @Test
  void aroundOneChargeThereAreClosedCircles() {
    Configuration one = Fields.charges(PointCharge.at(0.01, 0.02, 1e-9));
    Contour contour =
        Contouring.of(grid(one), new Levels(1, List.of(Fields.K_E * 1e-9 / 0.3)), effort()).get(0);
    assertEquals(1, contour.lines().size());
    Polyline circle = contour.lines().get(0);
    assertTrue(circle.closed());
    assertTrue(circle.points().size() > 100);
    for (Vector2D point : circle.points()) {
      assertEquals(0.3, point.distance(new Vector2D(0.01, 0.02)), 1e-7);
    }
  }

  @Test
  void betweenOppositeChargesTheZeroIsOneOpenLine() {
    Configuration pair =
        Fields.charges(PointCharge.at(-0.3, 0, 1e-9), PointCharge.at(0.3, 0, -1e-9));
    List<Contour> contours = Contouring.of(grid(pair), new Levels(10, List.of(0.0)), effort());
    assertEquals(1, contours.get(0).lines().size());
    Polyline line = contours.get(0).lines().get(0);
    assertTrue(!line.closed());
    line.points().forEach(p -> assertEquals(0, p.getX(), 1e-7));
    assertEquals(
        FRAME.height(),
        line.points().get(0).distance(line.points().get(line.points().size() - 1)),
        1e-9);
  }

  /**
   * Two like charges on the diagonal of the cell in the middle: just below the level of the saddle
   * the line goes round both, just above it round each.
   */
  @ParameterizedTest
  @ValueSource(ints = {20, 30, 50})
  void aSaddleIsDecidedByItsMiddle(int columns) {
    Configuration pair =
        Fields.charges(PointCharge.at(-0.2, -0.2, 1e-9), PointCharge.at(0.2, 0.2, 1e-9));
    double saddle = pair.potential(in(0, 0));
    PotentialGrid grid =
        PotentialGrid.of(pair, new Frame(-1, -1, 1, 1), columns, columns, effort());
    Levels levels = new Levels(1, List.of(0.9999 * saddle, 1.0001 * saddle));
    List<Contour> contours = Contouring.of(grid, levels, effort());
    assertEquals(1, contours.get(0).lines().size(), "below");
    assertEquals(2, contours.get(1).lines().size(), "above");
    for (Contour contour : contours) {
      assertTrue(contour.lines().stream().allMatch(Polyline::closed));
    }
  }

  @Test
  void aChargeOnANodeDoesNoHarm() {
    Configuration one = Fields.charges(PointCharge.at(0, 0, 1e-9));
    PotentialGrid grid = PotentialGrid.of(one, new Frame(-1, -1, 1, 1), 21, 21, effort());
    assertEquals(Double.POSITIVE_INFINITY, grid.value(10, 10));
    List<Contour> contours = Contouring.of(grid, Levels.suited(grid, 12), effort());
    assertTrue(contours.size() >= 5);
    Contour close = Contouring.of(grid, new Levels(1, List.of(300.0)), effort()).get(0);
    assertEquals(1, close.lines().size());
    close
        .lines()
        .get(0)
        .points()
        .forEach(p -> assertEquals(Fields.K_E * 1e-9 / 300, p.getNorm(), 1e-7));
  }

  @ParameterizedTest
  @CsvSource({
    "0.7,1",
    "1,1",
    "1.01,2",
    "2.3,5",
    "5.1,10",
    "0.03,0.05",
    "0.00012,0.0002",
    "3e11,5e11",
    "0.2,0.2",
    "99,100"
  })
  void stepsAreRound(double rough, double step) {
    assertEquals(step, RoundStep.atLeast(rough));
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 8, 12, 20})
  void aboutAsManyLevelsAsAskedFor(int count) {
    for (long seed = 0; seed < 10; seed++) {
      PotentialGrid grid = grid(Configuration.of(Fields.K_E, Fields.random(new Random(seed), 6)));
      int number = Levels.suited(grid, count).values().size();
      assertTrue(number >= count / 1.7 - 1 && number <= count * 1.7 + 1, number + " for " + count);
    }
  }

  @Test
  void levelsAreWholeMultiplesOfTheStep() {
    assertEquals(List.of(-4.0, -2.0, 0.0, 2.0), Levels.every(2, -5, 3.9).values());
    assertThrows(IllegalArgumentException.class, () -> Levels.every(1e-9, -5, 3.9));
  }

  @Test
  void aReliefIsCutAndSaysSo() {
    Configuration one = Fields.charges(PointCharge.at(0, 0, 1e-9));
    PotentialGrid grid = PotentialGrid.of(one, new Frame(-1, -1, 1, 1), 21, 21, effort());
    Relief relief = Relief.of(grid, -10, 40);
    assertEquals(40, relief.height(10, 10));
    assertEquals(grid.value(0, 0), relief.height(0, 0));
    // Within 8.99/40 m of the charge lie the nodes at 0, 0.1, 0.1√2, 0.2 and 0.1√5 m.
    assertEquals(21, relief.cutAbove());
    assertEquals(0, relief.cutBelow());
    assertTrue(relief.isCut());
  }

  @Test
  void aSectionAgreesWithTheSlopeOfItsPotential() {
    Configuration pair =
        Fields.charges(PointCharge.at(-0.3, 0, 1e-9), PointCharge.at(0.3, 0, -2e-9));
    Section section = Section.of(pair, in(-0.7, 0.1), in(0.7, 0.2), 2001, effort());
    List<Section.Sample> samples = section.samples();
    assertEquals(Math.hypot(1.4, 0.1), samples.get(2000).s(), 1e-15);
    for (int i = 1; i < 2000; i++) {
      double rise = samples.get(i + 1).value().potential() - samples.get(i - 1).value().potential();
      double slope = rise / (samples.get(i + 1).s() - samples.get(i - 1).s());
      assertEquals(-slope, samples.get(i).along(), 0.05);
    }
  }

  @Test
  void aSectionThroughAChargeSaysWhereItHasNoField() {
    Configuration one = Fields.charges(PointCharge.at(0, 0, 1e-9));
    Section section = Section.of(one, in(-1, 0), in(1, 0), 3, effort());
    assertTrue(section.samples().get(1).value() instanceof FieldValue.Singular);
    assertTrue(Double.isNaN(section.samples().get(1).along()));
    assertEquals(-Fields.K_E * 1e-9, section.samples().get(0).along(), 1e-12);
  }

  @Test
  void effortIsBounded() {
    Configuration one = Fields.charges(PointCharge.at(0, 0, 1e-9));
    assertEquals(
        "This field takes too much computing; it was stopped.",
        assertThrows(
                Effort.Exhausted.class,
                () -> PotentialGrid.of(one, FRAME, 200, 200, new Effort(10_000, () -> false)))
            .getMessage());
    assertEquals(
        "Stopped, as you asked.",
        assertThrows(
                Effort.Exhausted.class,
                () -> PotentialGrid.of(one, FRAME, 200, 200, Effort.usual(() -> true)))
            .getMessage());
    assertThrows(
        IllegalArgumentException.class,
        () -> PotentialGrid.of(one, FRAME, 50_000, 50_000, effort()));
  }
}
