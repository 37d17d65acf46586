package plainscale.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static plainscale.quantity.Quantities.assertSameQuantity;
import static plainscale.quantity.Quantities.exact;
import static plainscale.quantity.Quantities.q;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import java.util.function.BinaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/** Laws of arithmetic, for values and for what comes from one source of uncertainty. */
class QuantityLawsTest {
  private static final int SAMPLES = 300;
  private static final List<List<String>> UNITS =
      List.of(
          List.of("m", "cm", "µm", "inch", "ly"),
          List.of("kg", "g", "lb", "mg"),
          List.of("s", "min", "ms"),
          List.of("N", "mN", "lbf", "kg m/s^2"),
          List.of("C", "nC"),
          List.of("rad", "°"));
  private static final Quantity ONE = q("1");

  /** Two quantities of one kind and one of any. */
  record Trio(Quantity x, Quantity y, Quantity z) {}

  static Stream<Trio> trios() {
    Random random = new Random(7);
    return IntStream.range(0, SAMPLES).mapToObj(i -> trio(random));
  }

  private static Trio trio(Random random) {
    List<String> alike = UNITS.get(random.nextInt(UNITS.size()));
    List<String> any = UNITS.get(random.nextInt(UNITS.size()));
    return new Trio(sample(random, alike), sample(random, alike), sample(random, any));
  }

  private static Quantity sample(Random random, List<String> units) {
    UnitOfMeasure unit = UnitParser.parse(units.get(random.nextInt(units.size())));
    int digits = 1 + random.nextInt(9999);
    BigDecimal value = BigDecimal.valueOf(random.nextBoolean() ? digits : -digits, 3);
    return switch (random.nextInt(4)) {
      case 0 -> Quantity.exact(value, unit);
      case 1 -> Quantity.written(value, unit);
      default -> Quantity.measured("x", value, value.abs().movePointLeft(1), unit);
    };
  }

  @ParameterizedTest
  @MethodSource("trios")
  void sumsAndProductsCommute(Trio t) {
    assertSameQuantity(t.x.plus(t.y), t.y.plus(t.x), "x + y");
    assertSameQuantity(t.x.times(t.z), t.z.times(t.x), "x z");
  }

  @ParameterizedTest
  @MethodSource("trios")
  void sumsAndProductsAssociate(Trio t) {
    associates(t.x, t.y, t.x.plus(t.x), Quantity::plus);
    if (!t.x.kind().angle() && !t.z.kind().angle()) {
      associates(t.x, t.y, t.z, Quantity::times);
    }
  }

  private static void associates(
      Quantity x, Quantity y, Quantity z, BinaryOperator<Quantity> operation) {
    Quantity left = operation.apply(operation.apply(x, y), z);
    assertSameQuantity(left, operation.apply(x, operation.apply(y, z)), "brackets");
  }

  @ParameterizedTest
  @MethodSource("trios")
  void productsDistributeOverSums(Trio t) {
    assertSameQuantity(t.z.times(t.x.plus(t.y)), t.z.times(t.x).plus(t.z.times(t.y)), "z (x + y)");
  }

  @ParameterizedTest
  @MethodSource("trios")
  void whatIsAddedCanBeTakenAway(Trio t) {
    assertSameQuantity(t.x, t.x.plus(t.y).minus(t.y), "x + y - y");
    assertSameQuantity(t.x.negate(), t.y.minus(t.x).minus(t.y), "-x");
  }

  @ParameterizedTest
  @MethodSource("trios")
  void whatIsMultipliedCanBeDivided(Trio t) {
    if (!t.x.kind().angle() && !t.z.kind().angle()) {
      assertSameQuantity(t.x, t.x.times(t.z).over(t.z), "x z/z");
      assertSameQuantity(t.x, t.x.over(t.z).times(t.z), "x/z z");
      assertSameQuantity(t.x.over(t.z), t.x.times(ONE.over(t.z)), "x (1/z)");
    }
  }

  @ParameterizedTest
  @MethodSource("trios")
  void nothingIsLeftOfXMinusX(Trio t) {
    Quantity nothing = t.x.minus(t.x);
    assertEquals(0, nothing.value().signum());
    assertEquals(0.0, nothing.uncertainty().standard());
    assertEquals(0.0, t.x.plus(t.x).minus(q("2").times(t.x)).uncertainty().standard());
  }

  @ParameterizedTest
  @MethodSource("trios")
  void xOverXIsExactlyOne(Trio t) {
    assertSameQuantity(ONE, t.x.over(t.x), "x/x");
  }

  @ParameterizedTest
  @MethodSource("trios")
  void powersAreProductsOfOneSource(Trio t) {
    Quantity x = t.x.kind().angle() ? t.x.over(exact("1", "rad")) : t.x;
    assertSameQuantity(x.times(x), x.power(q("2")), "x^2");
    assertSameQuantity(x.times(x).times(x), x.power(q("3")), "x^3");
    assertSameQuantity(ONE.over(x), x.power(q("-1")), "x^-1");
    assertSameQuantity(x, x.power(q("1")), "x^1");
    Quantity size = x.apply(ElementaryFunction.ABS);
    assertSameQuantity(size, x.times(x).power(q("0.5")), "(x x)^0.5");
    assertSameQuantity(size, x.times(x).apply(ElementaryFunction.SQRT), "sqrt(x x)");
  }

  @ParameterizedTest
  @MethodSource("trios")
  void anotherUnitIsTheSameQuantity(Trio t) {
    for (List<String> alike : UNITS) {
      UnitOfMeasure other = UnitParser.parse(alike.get(alike.size() - 1));
      if (other.kind().equals(t.x.kind())) {
        Quantity there = t.x.in(other);
        assertSame(t.x.value(), there.value());
        assertEquals(other, there.displayUnit());
        assertSameQuantity(t.x, there.in(t.x.displayUnit()), "there and back");
        BigDecimal number = other.fromCoherent(t.x.value());
        assertSameQuantity(exactly(t.x), Quantity.exact(number, other), "read in " + other);
      }
    }
  }

  private static Quantity exactly(Quantity x) {
    return Quantity.computed(x.value(), x.kind(), Uncertainty.NONE, Figures.EXACT);
  }

  @Test
  void twoMeasurementsOfTheSameValueAreTwoSources() {
    Quantity one = q("5.0±0.5 cm");
    Quantity other = q("5.0±0.5 cm");
    assertEquals(0.0, one.minus(one).uncertainty().standard());
    assertEquals(Math.hypot(0.005, 0.005), one.minus(other).uncertainty().standard(), 1e-15);
  }

  @Test
  void twiceTheSameSourceAddsUpAndTwoSourcesDoNot() {
    // JCGM 100:2008, 5.2.2: ten resistors of 1000 Ω, each compared with one standard of 100 mΩ.
    Quantity same = q("1000±0.1 Ω");
    Quantity series = same;
    Quantity independent = same;
    for (int i = 1; i < 10; i++) {
      series = series.plus(same);
      independent = independent.plus(q("1000±0.1 Ω"));
    }
    assertEquals(1.0, series.uncertainty().standard(), 1e-12);
    assertEquals(0.32, independent.uncertainty().standard(), 0.005);
  }
}
