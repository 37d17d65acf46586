package plainscale.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.field.Fields.assertClose;
import static plainscale.field.Fields.in;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.table.Table;

/**
 * Each source beside an integration of Coulomb's law that was done elsewhere, and at its limits.
 */
class SourcesTest {
  private static final Vector3D UP = Vector3D.PLUS_K;
  private static final double RELATIVE = 1e-9;

  static Stream<Table.Row> integrated() {
    return Stream.concat(
        Table.read(SourcesTest.class, "sources.tsv").stream(),
        Table.read(SourcesTest.class, "configurations.tsv").stream());
  }

  @ParameterizedTest
  @MethodSource("integrated")
  void potentialAndFieldAreThoseOfTheIntegral(Table.Row row) {
    List<Source> sources = Fields.parse(row.get("sources"));
    Configuration configuration = Configuration.of(1, sources);
    Vector3D at = Fields.vector(row.get("at"));
    double scale = sources.stream().mapToDouble(s -> Math.abs(s.potential(at))).sum();
    double field = sources.stream().mapToDouble(s -> s.field(at).getNorm()).sum();
    assertEquals(
        Double.parseDouble(row.get("potential")), configuration.potential(at), RELATIVE * scale);
    Vector3D off = configuration.field(at).subtract(Fields.vector(row.get("field")));
    double floor = sources.stream().mapToDouble(s -> Math.abs(s.amount())).sum() * 1e-12;
    assertTrue(off.getNorm() <= RELATIVE * field + floor, off + " of " + field);
  }

  @ParameterizedTest
  @MethodSource("integrated")
  void theFieldIsTheSlopeOfThePotential(Table.Row row) {
    Configuration configuration = Configuration.of(1, Fields.parse(row.get("sources")));
    Vector3D at = Fields.vector(row.get("at"));
    double step = 1e-4;
    Vector3D slope =
        new Vector3D(
            slope(configuration, at, Vector3D.PLUS_I, step),
            slope(configuration, at, Vector3D.PLUS_J, step),
            slope(configuration, at, Vector3D.PLUS_K, step));
    double scale = configuration.field(at).getNorm() + Math.abs(configuration.potential(at));
    assertTrue(Vector3D.distance(slope.negate(), configuration.field(at)) < 1e-4 * scale);
  }

  private static double slope(Configuration c, Vector3D at, Vector3D along, double step) {
    double ahead = c.potential(at.add(step, along));
    double behind = c.potential(at.subtract(step, along));
    return (ahead - behind) / (2 * step);
  }

  static List<Table.Row> elliptic() {
    return Table.read(SourcesTest.class, "elliptic.tsv");
  }

  @ParameterizedTest
  @MethodSource("elliptic")
  void ellipticIntegralsAreThoseOfCarlsonsForms(Table.Row row) {
    double complement = Double.parseDouble(row.get("complement"));
    double k = Double.parseDouble(row.get("K"));
    assertClose(k, Elliptic.k(complement), 4e-15, "K");
    assertClose(Double.parseDouble(row.get("E")), Elliptic.e(complement), 4e-15, "E");
    assertClose(Math.PI / 2 / k, Elliptic.mean(1, complement), 4e-15, "M");
  }

  @Test
  void onItsAxisARingIsTheSchoolFormula() {
    RingCharge ring = new RingCharge(Vector3D.ZERO, UP, 0.5, 2);
    for (double z : new double[] {0, 1e-9, 0.1, 0.5, 3, 1e6}) {
      double r = Math.hypot(z, 0.5);
      Vector3D at = new Vector3D(0, 0, z);
      assertClose(2 / r, ring.potential(at), 1e-14, "V at " + z);
      assertClose(new Vector3D(0, 0, 2 * z / (r * r * r)), ring.field(at), 1e-14, "E at " + z);
    }
  }

  @Test
  void onItsAxisADiscIsTheSchoolFormula() {
    DiscCharge disc = new DiscCharge(Vector3D.ZERO, UP, 0.5, 2);
    double density = 2 / (Math.PI * 0.25);
    for (double z : new double[] {1e-9, 0.1, 0.5, 1.4999, 1.5001, 30}) {
      double r = Math.hypot(z, 0.5);
      // Written so that nothing cancels: r − z = R²/(r + z).
      double difference = 0.25 / (r + z);
      Vector3D at = new Vector3D(0, 0, z);
      assertClose(2 * Math.PI * density * difference, disc.potential(at), 1e-13, "V at " + z);
      double e = 2 * Math.PI * density * difference / r;
      assertClose(new Vector3D(0, 0, e), disc.field(at), 1e-12, "E at " + z);
    }
  }

  @Test
  void nearAndFarFormOfADiscMeet() {
    DiscCharge disc = new DiscCharge(Vector3D.ZERO, UP, 1, 1);
    for (int degrees = 0; degrees < 90; degrees += 7) {
      double angle = Math.toRadians(degrees);
      Vector3D along = new Vector3D(Math.cos(angle), 0, Math.sin(angle));
      Vector3D inside = along.scalarMultiply(3 * (1 - 1e-14));
      Vector3D outside = along.scalarMultiply(3 * (1 + 1e-14));
      assertClose(disc.potential(inside), disc.potential(outside), 2e-13, "V");
      assertClose(disc.field(inside), disc.field(outside), 1e-12, "E");
    }
  }

  @Test
  void aboveItsRimADiscIsSmooth() {
    DiscCharge disc = new DiscCharge(Vector3D.ZERO, UP, 1, 1);
    Vector3D on = disc.field(new Vector3D(1, 0, 0.3));
    for (double off : new double[] {-1e-7, -1e-12, 1e-12, 1e-7}) {
      assertClose(on, disc.field(new Vector3D(1 + off, 0, 0.3)), 1e-6, "off " + off);
    }
  }

  @Test
  void onItsRimADiscHasFourTimesDensityTimesRadius() {
    DiscCharge disc = new DiscCharge(Vector3D.ZERO, UP, 0.5, 2);
    // W. R. Smythe, Static and Dynamic Electricity, has this as a problem (from memory): V = 4σR.
    double expected = 4 * 2 / (Math.PI * 0.5);
    assertClose(expected, disc.potential(in(0.5, 0)), 1e-15, "on it");
    assertClose(expected, disc.potential(in(0.5 + 1e-10, 0)), 1e-7, "beside it");
    assertEquals(Standing.ON_EDGE, disc.standing(in(0.5, 0)));
  }

  @Test
  void closeToADiscTheFieldIsThatOfASheet() {
    DiscCharge disc = new DiscCharge(Vector3D.ZERO, UP, 1e4, Math.PI * 1e8 * 3);
    ChargedSheet sheet = new ChargedSheet(Vector3D.ZERO, UP, 3);
    for (double z : new double[] {-0.7, 0.2, 1}) {
      Vector3D at = new Vector3D(0.3, -0.4, z);
      assertClose(sheet.field(at), disc.field(at), 2e-4, "E at " + z);
    }
    Vector3D high = new Vector3D(0, 0, 2);
    Vector3D low = new Vector3D(0, 0, 0.5);
    double fall = disc.potential(low) - disc.potential(high);
    assertClose(sheet.potential(low) - sheet.potential(high), fall, 2e-4, "fall");
  }

  @Test
  void betweenPlatesTheFieldIsEvenAndOutsideThereIsNone() {
    List<Source> plates = ChargedSheet.plates(in(1, 0), Vector3D.PLUS_I, 0.02, 1e-6);
    Configuration both = Configuration.of(Fields.K_E, plates);
    double epsilon = 1 / (4 * Math.PI * Fields.K_E);
    for (double x : new double[] {0.991, 1, 1.0099}) {
      assertClose(in(1e-6 / epsilon, 0), both.field(in(x, 5)), 1e-14, "E at " + x);
      assertEquals(-1e-6 / epsilon * (x - 1), both.potential(in(x, 5)), 1e-7);
    }
    assertEquals(0, both.field(in(0.9, 0)).getNorm());
    assertEquals(0, both.field(in(1.1, 3)).getNorm());
    assertClose(both.potential(in(0.5, 0)), both.potential(in(0.99, 0)), 1e-11, "outside");
  }

  @Test
  void aLongLineIsAnInfiniteOneInTheMiddle() {
    LineCharge long1 = new LineCharge(new Vector3D(0, 0, -1e5), new Vector3D(0, 0, 1e5), 2e5 * 3);
    InfiniteLine line = new InfiniteLine(Vector3D.ZERO, UP, 1, 3);
    assertClose(line.field(in(0.3, 0.4)), long1.field(in(0.3, 0.4)), 1e-9, "E");
    double fall = long1.potential(in(0.5, 0)) - long1.potential(in(2, 0));
    assertClose(6 * Math.log(4), fall, 1e-9, "fall of potential");
    assertClose(6 * Math.log(4), line.potential(in(0.5, 0)) - line.potential(in(2, 0)), 1e-14, "");
    assertEquals(0, line.potential(in(0, 1)), 1e-300);
  }

  @Test
  void farAwayEverythingIsAPoint() {
    Vector3D at = new Vector3D(3e5, -4e5, 1e5);
    PointCharge point = new PointCharge(Vector3D.ZERO, 2);
    for (Source source :
        List.of(
            new LineCharge(new Vector3D(0, -0.5, 0), new Vector3D(0, 0.5, 0), 2),
            new RingCharge(Vector3D.ZERO, UP, 1, 2),
            new DiscCharge(Vector3D.ZERO, UP, 1, 2),
            new SolidSphere(Vector3D.ZERO, 1, 2),
            new SphericalShell(Vector3D.ZERO, 1, 2))) {
      assertClose(point.potential(at), source.potential(at), 1e-10, source.name());
      assertClose(point.field(at), source.field(at), 1e-10, source.name());
    }
  }

  @Test
  void alongItsOwnAxisALineDoesNotCancel() {
    LineCharge line = new LineCharge(in(0, 0), in(1, 0), 2);
    // V = (q/L) ln((x)/(x − L)), E = q/(x (x − L)) beyond the end.
    assertClose(2 * Math.log(3 / 2.0), line.potential(in(3, 0)), 1e-14, "V");
    assertClose(in(2 / 6.0, 0), line.field(in(3, 0)), 1e-14, "E");
    assertClose(in(2 / 6.0, 2e-9), line.field(in(3, 1e-9)), 1e-8, "E beside");
    assertEquals(
        5.0 / 36, line.field(in(3, 1e-9)).getY() / 1e-9, 1e-6, "slope of E across the axis");
  }

  /** Close to a ring its field is that of a line of charge with λ = q/2πa, to within d/a. */
  @Test
  void closeToARingTheFieldIsThatOfALine() {
    RingCharge ring = new RingCharge(Vector3D.ZERO, UP, 1, 2 * Math.PI);
    for (double d : new double[] {1e-3, 1e-6, 1e-9}) {
      for (double angle : new double[] {0, 1, 2, 3, 4}) {
        Vector3D off = new Vector3D(d * Math.cos(angle), 0, d * Math.sin(angle));
        Vector3D expected = off.scalarMultiply(2 / (d * d));
        // The place itself is rounded to 1e-16, of which 1e-16/d is seen in the field.
        assertClose(expected, ring.field(in(1, 0).add(off)), 10 * d + 1e-15 / d, d + " " + angle);
      }
    }
  }
}
