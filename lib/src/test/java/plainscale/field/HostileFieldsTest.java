package plainscale.field;

import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.field.Fields.effort;
import static plainscale.field.Fields.in;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Any sources at all: every map ends in time, with numbers or with a sentence. */
class HostileFieldsTest {
  private static final Frame FRAME = new Frame(-1, -1, 1, 1);

  /** Coordinates on a coarse lattice, so that sources touch, cross and lie in one another. */
  private static double lattice(Random random) {
    return (random.nextInt(9) - 4) / 4.0;
  }

  private static Source source(Random random) {
    Vector3D place = in(lattice(random), lattice(random));
    Vector3D across = random.nextBoolean() ? Vector3D.PLUS_K : new Vector3D(1, 1, 0);
    double radius = (1 + random.nextInt(3)) / 4.0;
    double q = (random.nextInt(7) - 3) * 1e-9;
    return switch (random.nextInt(8)) {
      case 0 -> new LineCharge(place, place.add(new Vector3D(0.5, 0.25, 0)), q);
      case 1 -> new InfiniteLine(place, across, 1, q);
      case 2 -> new RingCharge(place, across, radius, q);
      case 3 -> new DiscCharge(place, across, radius, q);
      case 4 -> new SolidSphere(place, radius, q);
      case 5 -> new SphericalShell(place, radius, q);
      case 6 -> new ChargedSheet(place, new Vector3D(1, 1, 0), q);
      default -> new PointCharge(place, q);
    };
  }

  private static List<Source> sources(Random random, int number) {
    List<Source> sources = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      sources.add(source(random));
    }
    return sources;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
  void whateverTheSourcesEverythingEnds(long seed) {
    Random random = new Random(seed);
    Configuration configuration = Configuration.of(Fields.K_E, sources(random, 1 + (int) seed % 7));
    assertTimeout(Duration.ofSeconds(30), () -> everything(configuration, random));
  }

  private static void everything(Configuration configuration, Random random) {
    PotentialGrid grid = PotentialGrid.of(configuration, FRAME, 33, 33, effort());
    for (Contour contour : Contouring.of(grid, Levels.suited(grid, 8), effort())) {
      contour.lines().forEach(l -> l.points().forEach(p -> assertTrue(!p.isNaN())));
    }
    for (FieldLine line :
        LineMap.of(configuration, FRAME, 3e9, Spread.EQUAL_ANGLES, effort()).lines()) {
      line.points().forEach(p -> assertTrue(!p.isNaN()));
    }
    for (Section.Sample sample :
        Section.of(configuration, in(-1, -1), in(1, 1), 81, effort()).samples()) {
      boolean isNumber =
          Double.isFinite(sample.along()) && Double.isFinite(sample.value().potential());
      assertTrue(isNumber || sample.value() instanceof FieldValue.Singular, sample.toString());
    }
    Vector3D start = start(configuration, random);
    TestCharge bead = new TestCharge(1e-9, 1e-6, start, in(0.1, 0.1));
    Trajectory path =
        Motion.of(configuration, bead, new Course(FRAME, 5, 1e-4, true, 50), effort());
    path.samples().forEach(m -> assertTrue(Double.isFinite(m.total()), m.toString()));
  }

  /** Off all charges, where a motion may start. */
  private static Vector3D start(Configuration configuration, Random random) {
    Vector3D start = in(random.nextDouble(), random.nextDouble());
    boolean isClear =
        configuration.sources().stream().allMatch(s -> Configuration.distance(s, start) > 0.01);
    return isClear ? start : start(configuration, random);
  }

  @Test
  void twoHundredChargesAreTaken() {
    List<PointCharge> charges = new ArrayList<>();
    for (int i = 0; i < 200; i++) {
      int column = i % 20;
      int row = i / 20;
      double q = i % 2 == 0 ? 1e-9 : -1e-9;
      charges.add(PointCharge.at(-0.95 + 0.1 * column, -0.9 + 0.2 * row, q));
    }
    Configuration many = Configuration.of(Fields.K_E, charges);
    FieldLines map = LineMap.of(many, FRAME, 1e9, Spread.EQUAL_ANGLES, effort());
    assertTrue(map.lines().size() >= 100);
    PotentialGrid grid = PotentialGrid.of(many, FRAME, 100, 100, effort());
    assertTrue(!Contouring.of(grid, Levels.suited(grid, 12), effort()).isEmpty());
  }
}
