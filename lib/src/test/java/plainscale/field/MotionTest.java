package plainscale.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.field.Fields.G;
import static plainscale.field.Fields.K_E;
import static plainscale.field.Fields.assertClose;
import static plainscale.field.Fields.effort;
import static plainscale.field.Fields.in;

import java.util.List;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Motions of test charges and planets beside what is known of them. */
class MotionTest {
  private static final double SUN = 1.9885e30;
  private static final double UNIT = 1.495_978_707e11;

  private static Trajectory run(Configuration c, TestCharge charge, Course course) {
    return Motion.of(c, charge, course, effort());
  }

  private static Course course(double half, double duration) {
    return new Course(new Frame(-half, -half, half, half), duration, 1e-4 * half, false, 400);
  }

  /** Kepler's third law: T² = 4π²a³/(GM), whatever the shape. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 0.8, 0.5, 1.2})
  void anOrbitKeepsKeplersThirdLaw(double ofCircular) {
    Configuration sun = Configuration.of(-G, List.of(PointCharge.at(0, 0, SUN)));
    double speed = ofCircular * Math.sqrt(G * SUN / UNIT);
    double a = 1 / (2 / UNIT - speed * speed / (G * SUN));
    double period = 2 * Math.PI * Math.sqrt(a * a * a / (G * SUN));
    TestCharge planet = TestCharge.mass(6e24, in(UNIT, 0), in(0, speed));
    Trajectory path = run(sun, planet, course(10 * UNIT, 1.5 * period));
    assertClose(period, path.period().orElseThrow(), 1e-7, "period");
    assertTrue(path.isEnergyKept(), path.largestDeviation() + "");
    assertTrue(path.largestDeviation() < 1e-9, path.largestDeviation() + "");
    assertInstanceOf(CourseEnd.TimeUp.class, path.end());
    double other = 2 * a - UNIT;
    if (ofCircular != 1) {
      Passage.Kind kind = ofCircular < 1 ? Passage.Kind.FASTEST : Passage.Kind.SLOWEST;
      assertClose(other, path.passages(kind).get(0).place().getNorm(), 1e-7, "other apsis");
    }
    if (ofCircular < 1) {
      assertClose(other, path.passages(Passage.Kind.CLOSEST).get(0).place().getNorm(), 1e-7, "");
    }
  }

  @Test
  void aCircleHasNoTurningPoints() {
    Configuration sun = Configuration.of(-G, List.of(PointCharge.at(0, 0, SUN)));
    TestCharge planet = TestCharge.mass(6e24, in(UNIT, 0), in(0, Math.sqrt(G * SUN / UNIT)));
    Trajectory path = run(sun, planet, course(10 * UNIT, 4e7));
    assertEquals(1, path.passages().size(), path.passages().toString());
  }

  /** OpenStax, University Physics 1, example 13.7: 1.12 × 10⁴ m/s and 4.21 × 10⁴ m/s. */
  @Test
  void speedsOfEscape() {
    Configuration earth =
        Configuration.of(-G, List.of(new SolidSphere(Vector3D.ZERO, 6.37e6, 5.96e24)));
    TestCharge stone = TestCharge.mass(1, in(6.37e6, 0), Vector3D.ZERO);
    assertEquals(1.12e4, stone.escapeSpeed(earth), 0.005e4);
    Configuration sun = Configuration.of(-G, List.of(PointCharge.at(0, 0, 1.99e30)));
    TestCharge planet = TestCharge.mass(1, in(1.50e11, 0), Vector3D.ZERO);
    assertEquals(4.21e4, planet.escapeSpeed(sun), 0.005e4);
  }

  @Test
  void withTheSpeedOfEscapeItIsStillMovingFarAway() {
    Configuration sun = Configuration.of(-G, List.of(PointCharge.at(0, 0, SUN)));
    TestCharge rest = TestCharge.mass(1, in(UNIT, 0), Vector3D.ZERO);
    double escape = rest.escapeSpeed(sun);
    Course far = course(50 * UNIT, 1e10);
    Trajectory out = run(sun, TestCharge.mass(1, in(UNIT, 0), in(escape, 0)), far);
    assertInstanceOf(CourseEnd.LeftFrame.class, out.end());
    // r = (r₀^{3/2} + 1.5 √(2GM) t)^{2/3}
    double time = (Math.pow(50 * UNIT, 1.5) - Math.pow(UNIT, 1.5)) / (1.5 * Math.sqrt(2 * G * SUN));
    assertClose(time, out.samples().get(out.samples().size() - 1).time(), 1e-7, "time");
    assertTrue(out.isEnergyKept());
    Trajectory back = run(sun, TestCharge.mass(1, in(UNIT, 0), in(0.97 * escape, 0)), far);
    assertInstanceOf(CourseEnd.RanInto.class, back.end());
    assertEquals(1, back.passages(Passage.Kind.SLOWEST).size());
  }

  /** Small swings between two like charges: m x″ = −4 k q Q x/d³ with the half distance d. */
  @Test
  void betweenLikeChargesItSwings() {
    double half = 0.1;
    double held = 1e-9;
    double q = 1e-9;
    double m = 1e-6;
    Configuration pair =
        Fields.charges(PointCharge.at(-half, 0, held), PointCharge.at(half, 0, held));
    double small = 2 * Math.PI / Math.sqrt(4 * K_E * q * held / (m * half * half * half));
    TestCharge bead = new TestCharge(q, m, in(1e-4, 0), Vector3D.ZERO);
    Trajectory path = run(pair, bead, course(0.2, 3.2 * small));
    assertClose(small, path.period().orElseThrow(), 3e-6, "period");
    assertTrue(path.isEnergyKept(), path.largestDeviation() + "");
    List<Moment> turns = path.passages(Passage.Kind.SLOWEST);
    assertEquals(6, turns.size());
    assertEquals(-1e-4, turns.get(0).place().getX(), 1e-9);
    assertEquals(0, turns.get(0).velocity().getNorm(), 1e-9);
  }

  /** A larger swing: the time is the integral of dx/v over the way, here by substitution. */
  @Test
  void aLargeSwingTakesTheTimeOfTheIntegral() {
    double half = 0.1;
    double q = 1e-9;
    double m = 1e-6;
    double reach = 0.07;
    Configuration pair = Fields.charges(PointCharge.at(-half, 0, q), PointCharge.at(half, 0, q));
    double start = pair.potential(in(reach, 0));
    double sum = 0;
    int pieces = 20_000;
    for (int i = 0; i < pieces; i++) {
      double angle = Math.PI / 2 * (i + 0.5) / pieces;
      double x = reach * Math.sin(angle);
      double speed = Math.sqrt(2 * q * (start - pair.potential(in(x, 0))) / m);
      sum += reach * Math.cos(angle) / speed * Math.PI / 2 / pieces;
    }
    TestCharge bead = new TestCharge(q, m, in(reach, 0), Vector3D.ZERO);
    Trajectory path = run(pair, bead, course(0.2, 6 * sum));
    assertClose(4 * sum, path.period().orElseThrow(), 1e-6, "period");
    assertTrue(path.isEnergyKept());
  }

  /** Through a tunnel in an even sphere: half a period is π √(R³/GM), 42 minutes for the Earth. */
  @Test
  void throughATunnelItSwings() {
    double radius = 6.371e6;
    double mass = 5.972e24;
    Configuration earth =
        Configuration.of(-G, List.of(new SolidSphere(Vector3D.ZERO, radius, mass)));
    double period = 2 * Math.PI * Math.sqrt(radius * radius * radius / (G * mass));
    Course course =
        new Course(
            new Frame(-2 * radius, -2 * radius, 2 * radius, 2 * radius),
            1.2 * period,
            1,
            true,
            200);
    Trajectory path = run(earth, TestCharge.mass(1, in(radius, 0), Vector3D.ZERO), course);
    assertClose(period, path.period().orElseThrow(), 1e-7, "period");
    assertEquals(42, period / 2 / 60, 0.5);
    assertTrue(path.isEnergyKept());
  }

  @Test
  void aShellIsPassedAndEnergyKept() {
    Configuration shell =
        Configuration.of(K_E, List.of(new SphericalShell(Vector3D.ZERO, 0.1, -1e-8)));
    Course course = new Course(new Frame(-1, -1, 1, 1), 1.5, 1e-4, true, 500);
    Trajectory path = run(shell, new TestCharge(1e-8, 1e-6, in(0.4, 0.05), Vector3D.ZERO), course);
    assertTrue(path.samples().stream().anyMatch(s -> s.place().getNorm() < 0.06), "inside");
    assertTrue(path.isEnergyKept(), path.largestDeviation() + "");
    Trajectory stopped =
        run(
            shell,
            new TestCharge(1e-8, 1e-6, in(0.4, 0.05), Vector3D.ZERO),
            new Course(course.frame(), 1.5, 1e-4, false, 500));
    assertInstanceOf(CourseEnd.RanInto.class, stopped.end());
    assertEquals(
        0.1001, stopped.samples().get(stopped.samples().size() - 1).place().getNorm(), 1e-9);
  }

  @Test
  void itRunsIntoAnOppositeCharge() {
    Configuration one = Fields.charges(PointCharge.at(0, 0, -1e-9));
    TestCharge bead = new TestCharge(1e-9, 1e-6, in(0.1, 0), Vector3D.ZERO);
    Trajectory path = run(one, bead, course(0.2, 100));
    CourseEnd.RanInto end = assertInstanceOf(CourseEnd.RanInto.class, path.end());
    assertEquals(-1e-9, end.source().amount());
    Moment last = path.samples().get(path.samples().size() - 1);
    assertEquals(2e-5, last.place().getNorm(), 1e-9);
    assertTrue(path.isEnergyKept(), path.largestDeviation() + "");
    // Free fall to the centre from rest at r takes (π/2) √(r³/(2 k qQ/m)) (a very flat ellipse).
    double fall = Math.PI / 2 * Math.sqrt(1e-3 / (2 * K_E * 1e-18 / 1e-6));
    assertClose(fall, last.time(), 1e-5, "time");
  }

  /** Head-on against a like charge: closest at r with ½mv² = kqQ (1/r − 1/r₀). */
  @Test
  void aLikeChargeTurnsItBack() {
    Configuration one = Fields.charges(PointCharge.at(0, 0, 1e-9));
    TestCharge bead = new TestCharge(1e-9, 1e-6, in(0.2, 0), in(-0.5, 0));
    Trajectory path = run(one, bead, course(0.3, 10));
    double closest = 1 / (1 / 0.2 + 0.5e-6 * 0.25 / (K_E * 1e-18));
    assertClose(closest, path.passages(Passage.Kind.CLOSEST).get(0).place().getX(), 1e-8, "");
    assertEquals(0, path.passages(Passage.Kind.SLOWEST).get(0).velocity().getNorm(), 1e-8);
    assertInstanceOf(CourseEnd.LeftFrame.class, path.end());
    assertTrue(path.isEnergyKept());
  }

  @Test
  void betweenPlatesItFallsEvenly() {
    List<Source> plates = ChargedSheet.plates(Vector3D.ZERO, Vector3D.PLUS_I, 0.1, 1e-9);
    Configuration between = Configuration.of(K_E, plates);
    double a = 4 * Math.PI * K_E * 1e-9 * 1e-9 / 1e-6;
    TestCharge bead = new TestCharge(1e-9, 1e-6, in(-0.04, 0), in(0, 0.01));
    Trajectory path = run(between, bead, course(0.2, 5));
    Moment last = path.samples().get(path.samples().size() - 1);
    assertInstanceOf(CourseEnd.RanInto.class, path.end());
    assertClose(Math.sqrt(2 * (0.09 - 2e-5) / a), last.time(), 1e-8, "time");
    assertClose(0.01 * last.time(), last.place().getY(), 1e-8, "sideways");
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void amongManyChargesEnergyIsKeptOrToldNotToBe(long seed) {
    Random random = new Random(seed);
    Configuration many = Configuration.of(K_E, Fields.random(random, 8));
    Vector3D start = in(0.55, random.nextDouble() - 0.5);
    TestCharge bead = new TestCharge(1e-9, 1e-6, start, in(-0.1, 0));
    Trajectory path = run(many, bead, course(0.7, 20));
    assertTrue(path.isEnergyKept(), path.end() + " " + path.largestDeviation());
    double last = -1;
    for (Moment moment : path.samples()) {
      assertTrue(moment.time() > last);
      last = moment.time();
    }
  }

  @Test
  void anAccountThatDoesNotCloseSaysSo() {
    Moment start = new Moment(0, in(0, 0), in(1, 0), 1, 2);
    Moment later = new Moment(1, in(1, 0), in(1, 0), 1, 2.001);
    Trajectory open = new Trajectory(List.of(start, later), List.of(), new CourseEnd.TimeUp());
    assertEquals(0.001 / 3, open.largestDeviation(), 1e-12);
    assertTrue(!open.isEnergyKept());
  }

  @Test
  void aStartWhereItWouldBeOverIsRefused() {
    Configuration one = Fields.charges(PointCharge.at(0, 0, 1e-9));
    Course course = new Course(new Frame(-1, -1, 1, 1), 1, 0.01, false, 10);
    assertRefused("A motion must start inside the frame.", one, in(1.1, 0), course);
    assertRefused(
        "A motion must start farther from every charge than the distance of a hit, 0.01 m.",
        one,
        in(0.005, 0),
        course);
  }

  private static void assertRefused(String sentence, Configuration c, Vector3D at, Course course) {
    TestCharge bead = new TestCharge(1e-9, 1e-6, at, Vector3D.ZERO);
    assertEquals(
        sentence,
        assertThrows(IllegalArgumentException.class, () -> run(c, bead, course)).getMessage());
  }

  @Test
  void aStartOnAChargeIsRefused() {
    Configuration one = Fields.charges(PointCharge.at(0, 0, 1e-9));
    TestCharge bead = new TestCharge(1e-9, 1e-6, in(0, 0), in(0.5, 0));
    assertEquals(
        "A motion cannot start where the field is not defined; here it starts on: point charge.",
        assertThrows(IllegalArgumentException.class, () -> run(one, bead, course(1, 1)))
            .getMessage());
  }

  @Test
  void whatCannotBeFollowedSaysSo() {
    Configuration one = Fields.charges(PointCharge.at(0, 0, -1e-9));
    TestCharge bead = new TestCharge(1e-9, 1e-6, in(0.1, 0), Vector3D.ZERO);
    Course blind = new Course(new Frame(-0.2, -0.2, 0.2, 0.2), 2, 1e-30, false, 100);
    assertInstanceOf(CourseEnd.NotFollowed.class, run(one, bead, blind).end());
  }
}
