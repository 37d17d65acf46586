package plainscale.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.quantity.Quantities.q;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import plainscale.units.Kind;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/** Every row of the table of functions, by looping over it: a new row cannot dodge these tests. */
class ElementaryFunctionTest {
  private static final double STEP = 1e-4;
  private static final double CLOSE = 1e-7;
  private static final double SINGULAR = 0.05;
  private static final int FEWEST = 30;

  /** Points on both sides of zero and up to ±3 where the function has a value all around. */
  private static double[] points(ElementaryFunction f) {
    double[] points =
        DoubleStream.generate(new Random(11)::nextDouble)
            .map(r -> 6 * r - 3)
            .limit(200)
            .filter(x -> Math.abs(x) > SINGULAR)
            .filter(x -> f.defined(x - SINGULAR) && f.defined(x) && f.defined(x + SINGULAR))
            .filter(x -> Math.abs(f.value(x)) < 15) // clear of a pole
            .toArray();
    assertTrue(points.length >= FEWEST, f + " is met at " + points.length + " points");
    return points;
  }

  /** The central difference of fourth order. */
  private static double slope(ElementaryFunction f, double x) {
    double near = f.value(x + STEP) - f.value(x - STEP);
    double far = f.value(x + 2 * STEP) - f.value(x - 2 * STEP);
    return (8 * near - far) / (12 * STEP);
  }

  @ParameterizedTest
  @EnumSource
  void theDerivativeIsTheCentralDifference(ElementaryFunction f) {
    for (double x : points(f)) {
      double slope = f.derivative(x);
      assertEquals(slope(f, x), slope, CLOSE * Math.max(1, Math.abs(slope)), () -> f + " at " + x);
    }
  }

  @ParameterizedTest
  @EnumSource
  void aQuantityGetsTheValueAndTheSlopeOfTheRow(ElementaryFunction f) {
    double u = 0.001;
    for (double x : points(f)) {
      Quantity y = argument(f, x, u).apply(f);
      assertEquals(f.value(x), y.value().doubleValue(), 1e-13 * Math.abs(f.value(x)));
      double expected = Math.abs(f.derivative(x)) * u;
      assertEquals(expected, y.uncertainty().standard(), 1e-12 * expected);
    }
  }

  private static Quantity argument(ElementaryFunction f, double x, double u) {
    boolean angle = f.takes() == ElementaryFunction.Takes.ANGLE;
    UnitOfMeasure unit = angle ? UnitParser.parse("rad") : UnitOfMeasure.ONE;
    return Quantity.measured("x", new BigDecimal(x), BigDecimal.valueOf(u), unit);
  }

  @ParameterizedTest
  @EnumSource
  void theKindOfTheResultIsTheOneOfTheRow(ElementaryFunction f) {
    Quantity y = argument(f, 0.5, 0.1).apply(f);
    boolean angle = f.gives() == ElementaryFunction.Gives.ANGLE;
    assertEquals(angle ? Kind.ANGLE : Kind.NUMBER, y.kind());
    if (f.takes() != ElementaryFunction.Takes.ANY) {
      assertThrows(QuantityException.class, () -> q("2.0 m").apply(f));
    }
  }

  @ParameterizedTest
  @EnumSource
  void outsideTheDomainThereIsASentence(ElementaryFunction f) {
    boolean everywhere = DoubleStream.of(-2, 0, 2, Math.PI / 2, 1e-9).allMatch(f::defined);
    assertEquals(everywhere, f.outside().isEmpty(), f::outside);
    assertEquals(f.outside().isEmpty(), !f.outside().endsWith("."));
  }

  @ParameterizedTest
  @EnumSource
  void theNameLeadsToTheRow(ElementaryFunction f) {
    assertEquals(Optional.of(f), ElementaryFunction.named(f.text()));
  }

  @Test
  void aNameWithoutRowLeadsNowhere() {
    assertFalse(ElementaryFunction.named("sinus").isPresent());
  }

  @ParameterizedTest
  @CsvSource({
    "ASIN, 1.5, No angle has a sine above 1 or below −1.",
    "ACOS, -1.01, No angle has a cosine above 1 or below −1.",
    "LN, 0, A logarithm exists for positive numbers only.",
    "LOG10, -2, A logarithm exists for positive numbers only.",
    "SQRT, -4, A negative quantity has no square root here.",
    "EXP, 1000, This number is too large: beyond 10³⁰⁰ a sheet does not compute."
  })
  void outsideTheDomainNothingIsComputed(ElementaryFunction f, String x, String sentence) {
    QuantityException e = assertThrows(QuantityException.class, () -> q(x).apply(f));
    assertEquals(sentence, e.sentence());
  }

  @Test
  void aSlopeWithoutEndHasNoUncertainty() {
    assertThrows(QuantityException.class, () -> q("0.0±0.1 m^2").apply(ElementaryFunction.SQRT));
    assertThrows(QuantityException.class, () -> q("1.00±0.01").apply(ElementaryFunction.ASIN));
    assertEquals(0, q("0").apply(ElementaryFunction.SQRT).value().signum());
  }

  @ParameterizedTest
  @CsvSource({
    "SIN, 30, 0.5",
    "SIN, 180, 0",
    "COS, 90, 0",
    "COS, 60, 0.5",
    "TAN, 45, 1",
    "TAN, 180, 0",
    "SIN, 720, 0",
  })
  void knownAnglesGiveKnownNumbers(ElementaryFunction f, String degrees, String number) {
    Quantity angle = Quantities.exact(degrees, "°");
    assertEquals(number, Quantities.text(angle.apply(f)));
  }

  @ParameterizedTest
  @CsvSource({"SQRT, 4.0 m^2, 2.0 m", "CBRT, 27 m^3, 3.0 m", "ABS, -2.5 s, 2.5 s"})
  void aUnitGoesThroughWithTheNumber(ElementaryFunction f, String x, String y) {
    assertEquals(y, Quantities.text(q(x).apply(f)));
  }

  @ParameterizedTest
  @CsvSource({"-35, 6.30511676014699E-16", "-300, 5.14820022241201E-131", "-350, 0", "-1e6, 0"})
  void anExponentialIsSmallButNotDust(BigDecimal x, BigDecimal expected) {
    BigDecimal value = Quantity.number(x).apply(ElementaryFunction.EXP).value();
    double size = Math.max(expected.doubleValue(), 1e-300);
    assertEquals(expected.doubleValue(), value.doubleValue(), 1e-12 * size); // from mpmath
  }
}
