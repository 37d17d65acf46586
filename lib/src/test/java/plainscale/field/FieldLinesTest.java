package plainscale.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import org.junit.jupiter.params.provider.ValueSource;

/** Field lines: along the field, counted, with their ends. */
class FieldLinesTest {
  private static final Frame FRAME = new Frame(-0.75, -0.6, 0.75, 0.6);
  private static final LineEnd OUT = LineEnd.Elsewhere.FRAME;

  private static FieldLines map(Configuration c, double perUnit, Spread spread) {
    return LineMap.of(c, FRAME, perUnit, spread, effort());
  }

  private static long count(FieldLines map, LineEnd start, LineEnd end) {
    return map.lines().stream()
        .filter(line -> line.start().equals(start) && line.end().equals(end))
        .count();
  }

  private static LineEnd at(int index) {
    return new LineEnd.AtCharge(index);
  }

  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23})
  void theyFollowTheField(long seed) {
    List<PointCharge> charges = Fields.random(new Random(seed), 6);
    Configuration configuration = Configuration.of(Fields.K_E, charges);
    FieldLines map = map(configuration, 4e9, Spread.EQUAL_ANGLES);
    assertTrue(map.lines().size() >= 24);
    int checked = 0;
    for (FieldLine line : map.lines()) {
      for (int i = 1; i < line.points().size(); i++) {
        Vector2D from = line.points().get(i - 1);
        Vector2D step = line.points().get(i).subtract(from);
        Vector3D middle = in(from.getX() + step.getX() / 2, from.getY() + step.getY() / 2);
        Vector3D field = configuration.field(middle);
        double strength = charges.stream().mapToDouble(c -> c.field(middle).getNorm()).sum();
        if (step.getNorm() > 1e-6 && field.getNorm() > 0.2 * Fields.K_E * strength) {
          double angle = Vector3D.angle(field, in(step.getX(), step.getY()));
          assertTrue(angle < Math.toRadians(1), Math.toDegrees(angle) + "° at " + middle);
          checked++;
        }
      }
    }
    assertTrue(checked > 1000, checked + " pieces");
  }

  @ParameterizedTest
  @ValueSource(longs = {31, 32, 33, 34})
  void alongALineThePotentialFalls(long seed) {
    Configuration configuration = Configuration.of(Fields.K_E, Fields.random(new Random(seed), 10));
    for (FieldLine line : map(configuration, 3e9, Spread.EQUAL_ANGLES).lines()) {
      double last = Double.POSITIVE_INFINITY;
      for (Vector2D point : line.points()) {
        double here = configuration.potential(in(point.getX(), point.getY()));
        assertTrue(here <= last + 1e-6, here + " after " + last);
        last = here;
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {41, 42, 43, 44})
  void theyStartOnPositiveAndEndOnNegativeChargesOrOutside(long seed) {
    Configuration configuration = Configuration.of(Fields.K_E, Fields.random(new Random(seed), 10));
    FieldLines map = map(configuration, 3e9, Spread.EQUAL_ANGLES);
    for (FieldLine line : map.lines()) {
      assertTrue(
          line.start() != LineEnd.Elsewhere.TOO_LONG && line.end() != LineEnd.Elsewhere.TOO_LONG);
      assertTrue(
          line.start() != LineEnd.Elsewhere.NOT_FOLLOWED
              && line.end() != LineEnd.Elsewhere.NOT_FOLLOWED);
      assertSign(map, line.start(), 1);
      assertSign(map, line.end(), -1);
    }
    for (FieldLines.Tally tally : map.tallies()) {
      if (tally.footprint().amount() > 0) {
        assertEquals(tally.due(), tally.lines(), 0.5 + 1e-9);
      }
    }
  }

  private static void assertSign(FieldLines map, LineEnd end, int sign) {
    if (end instanceof LineEnd.AtCharge charge) {
      assertEquals(sign, Math.signum(map.tallies().get(charge.footprint()).footprint().amount()));
    }
  }

  @Test
  void aDipoleHasAsManyLinesAtBothCharges() {
    Configuration dipole =
        Fields.charges(PointCharge.at(-0.2, 0, 1e-9), PointCharge.at(0.2, 0, -1e-9));
    for (Spread spread : Spread.values()) {
      FieldLines map = map(dipole, 16e9, spread);
      assertEquals(16, map.tallies().get(0).lines());
      assertEquals(16, map.tallies().get(1).lines());
      assertEquals(count(map, at(0), OUT), count(map, OUT, at(1)));
      assertTrue(count(map, at(0), at(1)) >= 8);
      assertFalse(map.tallies().get(0).differs());
    }
  }

  /**
   * Stokes's stream function is kept along a line, so equal flux counts where lines arrive, too.
   */
  @Test
  void linesOfEqualFluxArriveInProportionToTheCharge() {
    Frame wide = new Frame(-20, -20, 20, 20);
    for (int lines : new int[] {12, 20, 40}) {
      Configuration unequal =
          Fields.charges(PointCharge.at(-0.2, 0, 3e-9), PointCharge.at(0.2, 0, -1e-9));
      FieldLines map = LineMap.of(unequal, wide, lines * 1e9 / 3, Spread.EQUAL_FLUX, effort());
      assertEquals(lines, map.tallies().get(0).lines());
      assertEquals(lines / 3.0, (double) count(map, at(0), at(1)), 1.34, lines + " lines");
    }
  }

  @Test
  void theStreamFunctionOfALineIsConstant() {
    Configuration unequal =
        Fields.charges(PointCharge.at(-0.2, 0, 3e-9), PointCharge.at(0.2, 0, -1e-9));
    for (FieldLine line : map(unequal, 8e9, Spread.EQUAL_FLUX).lines()) {
      double first = stream(line.points().get(0));
      for (Vector2D point : line.points()) {
        assertEquals(first, stream(point), 1e-5);
      }
    }
  }

  private static double stream(Vector2D p) {
    return 3 * (p.getX() + 0.2) / Math.hypot(p.getX() + 0.2, p.getY())
        - (p.getX() - 0.2) / Math.hypot(p.getX() - 0.2, p.getY());
  }

  @Test
  void likeChargesSendNoLineToEachOther() {
    Configuration pair =
        Fields.charges(PointCharge.at(-0.2, 0, 1e-9), PointCharge.at(0.2, 0, 1e-9));
    FieldLines map = map(pair, 16e9, Spread.EQUAL_ANGLES);
    assertEquals(32, map.lines().size());
    assertEquals(16, count(map, at(0), OUT));
    assertEquals(16, count(map, at(1), OUT));
  }

  /** With an odd number one line would run into the point between the charges without a field. */
  @Test
  void aLineIntoANullPointEndsThere() {
    Configuration pair =
        Fields.charges(PointCharge.at(-0.2, 0, 1e-9), PointCharge.at(0.2, 0, 1e-9));
    FieldLines map = map(pair, 15e9, Spread.EQUAL_ANGLES);
    assertEquals(
        2, map.lines().stream().filter(l -> l.end() == LineEnd.Elsewhere.NULL_POINT).count());
  }

  @Test
  void massesTakeLinesIn() {
    Configuration earth =
        Configuration.of(-Fields.G, List.of(new SolidSphere(Vector3D.ZERO, 6.371e6, 5.972e24)));
    Frame frame = new Frame(-3e7, -2e7, 3e7, 2e7);
    FieldLines map = LineMap.of(earth, frame, 12 / 5.972e24, Spread.EQUAL_FLUX, effort());
    assertEquals(12, count(map, OUT, at(0)));
  }

  @Test
  void platesAndRingsHaveLines() {
    List<Source> plates = ChargedSheet.plates(Vector3D.ZERO, Vector3D.PLUS_I, 0.4, 1e-9);
    FieldLines map = map(Configuration.of(Fields.K_E, plates), 10e9, Spread.EQUAL_ANGLES);
    long across = count(map, at(0), at(1));
    assertTrue(across >= 5, "across: " + across);
    Source ring = new RingCharge(Vector3D.ZERO, Vector3D.PLUS_I, 0.3, 1e-9);
    FieldLines around = map(Configuration.of(Fields.K_E, List.of(ring)), 24e9, Spread.EQUAL_ANGLES);
    assertEquals(2, around.tallies().size());
    assertEquals(24, around.lines().size());
    assertTrue(count(around, at(0), OUT) > 6);
  }

  @Test
  void whatTheLinesDoNotShowIsSaid() {
    Configuration one = Fields.charges(PointCharge.at(0, 0, 1e-9));
    assertTrue(
        map(one, 8e9, Spread.EQUAL_ANGLES).caution().contains("not the strength of the field"));
  }

  @Test
  void equalFluxIsForChargesOnALine() {
    Configuration triangle =
        Fields.charges(
            PointCharge.at(0, 0, 1e-9), PointCharge.at(0.1, 0, 1e-9), PointCharge.at(0, 0.1, 1e-9));
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> map(triangle, 8e9, Spread.EQUAL_FLUX));
    assertEquals(
        "Lines of equal flux need point charges or spheres on one line; these are not on one line."
            + " Spread the lines at equal angles.",
        refused.getMessage());
    assertThrows(IllegalArgumentException.class, () -> map(triangle, 1e15, Spread.EQUAL_ANGLES));
  }

  @Test
  void aChargeAboveThePlaneHasNoLinesAndThatIsSaid() {
    Source above = new PointCharge(new Vector3D(0.1, 0, 0.2), 1e-9);
    Source in = PointCharge.at(-0.2, 0, 1e-9);
    FieldLines map =
        map(Configuration.of(Fields.K_E, List.of(above, in)), 8e9, Spread.EQUAL_ANGLES);
    assertEquals(8, map.lines().size());
    assertEquals(
        List.of(
            "No line starts at one point charge: it is not cut by this plane.",
            "The field points out of this plane in places; there the lines are projections."),
        map.remarks());
    assertEquals(
        List.of(),
        map(Configuration.of(Fields.K_E, List.of(in)), 8e9, Spread.EQUAL_ANGLES).remarks());
  }

  @Test
  void oppositeLinesOfChargeAreMirrored() {
    Source left = new LineCharge(in(-0.2, -0.3), in(-0.2, 0.3), 1e-9);
    Source right = new LineCharge(in(0.2, 0.3), in(0.2, -0.3), -1e-9);
    FieldLines map =
        map(Configuration.of(Fields.K_E, List.of(left, right)), 24e9, Spread.EQUAL_ANGLES);
    assertEquals(24, map.tallies().get(0).lines());
    assertEquals(24, map.tallies().get(1).lines());
    assertEquals(count(map, at(0), OUT), count(map, OUT, at(1)));
  }

  @Test
  void placesOnARimAreOnItAndOppositeOneAnother() {
    Footprint rim = new Footprint(new Vector2D(1, 2), new Vector2D(4, 6), 0, 1).grown(0.5);
    int number = 26;
    Vector2D before = rim.rim(1 - 0.5 / number, 0);
    for (int i = 0; i < number; i++) {
      Vector2D here = rim.rim((i + 0.5) / number, 0);
      assertEquals(0, rim.distance(here.getX(), here.getY()), 1e-12);
      double step = (10 + Math.PI) / number;
      assertTrue(Vector2D.distance(here, before) <= step + 1e-12, "no further than along the rim");
      assertTrue(Vector2D.distance(here, before) > 0.8 * step, "and not much nearer");
      Vector2D opposite = rim.rim((number - i - 0.5) / number, 0);
      Vector2D across = opposite.subtract(here);
      assertEquals(0, across.getX() * 3 + across.getY() * 4, 1e-12);
      before = here;
    }
  }
}
