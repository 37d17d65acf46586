package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import plainscale.sheet.Trend.Kind;

/** Sequences whose limits are known from their Taylor series (any textbook of analysis). */
class TrendTest {
  private static Trend of(DoubleUnaryOperator function, double noise) {
    List<Trend.Sample> samples =
        IntStream.range(0, 7)
            .mapToDouble(k -> Math.pow(10, -k))
            .map(function)
            .mapToObj(f -> new Trend.Sample(f, noise * Math.abs(f)))
            .toList();
    return Trend.of(samples);
  }

  private static Trend of(DoubleUnaryOperator function) {
    return of(function, 1e-15);
  }

  private static void assertLimit(double expected, Trend trend) {
    assertEquals(Kind.LIMIT, trend.kind());
    assertEquals(expected, trend.number(), Math.max(trend.error(), 1e-15));
    assertTrue(trend.figures() >= 3, trend::toString);
  }

  private static void assertPower(Kind kind, double exponent, Trend trend) {
    assertEquals(kind, trend.kind());
    assertEquals(exponent, trend.exponent(), 0.005);
  }

  @Test
  void limitsAreExtrapolated() {
    assertLimit(1, of(x -> Math.sin(x) / x));
    assertLimit(Math.E, of(x -> Math.pow(1 + x, 1 / x), 1e-10));
    assertLimit(0.5, of(x -> (Math.sqrt(1 + x) - 1) / x, 1e-10));
    assertLimit(-3, of(x -> Math.sqrt(x) - 3));
    assertLimit(2, of(x -> 2 + Math.cbrt(x)));
  }

  @Test
  void aSlowApproachIsExtrapolatedAndKnownToFewerFigures() {
    Trend slow = of(x -> 2 + Math.sqrt(x) + x);
    assertEquals(2, slow.number(), slow.error());
    // the last row is 1E−3 off
    assertTrue(Math.abs(slow.number() - 2) < 2e-5 && slow.figures() <= 5, slow::toString);
  }

  @Test
  void whatApproachesByNoPowerIsKnownToItsLastStep() {
    Trend trend = of(x -> 1 + x * (2 + Math.sin(Math.log(x))));
    assertLimit(1, trend);
    assertEquals(1e-5, trend.error(), 3e-5);
    assertEquals(Kind.UNCLEAR, of(x -> x * (2 + Math.sin(Math.log(x)))).kind());
  }

  @Test
  void powersGoToZeroOrGrow() {
    assertPower(Kind.ZERO, 1, of(Math::sin));
    assertPower(Kind.ZERO, 2, of(x -> 1 / (1 + x) * x * x));
    assertPower(Kind.ZERO, 1.5, of(x -> x * Math.sqrt(x)));
    assertPower(Kind.GROWS, -1, of(x -> 1 / Math.sin(x)));
    assertPower(Kind.GROWS, -2, of(x -> -1 / (x * x) + 1 / x));
    assertPower(Kind.GROWS, -0.5, of(x -> 1 / Math.sqrt(x) + 5));
  }

  @Test
  void logarithmsAndExponentialsAreNoPowers() {
    assertEquals(Kind.SLOWLY, of(Math::log).kind());
    assertEquals(-Math.log(10), of(Math::log).number(), 1e-12);
    List<Trend.Sample> falling =
        IntStream.of(1, 10, 100).mapToObj(t -> new Trend.Sample(Math.exp(-t), 0)).toList();
    assertEquals(Kind.QUICKLY_ZERO, Trend.of(falling).kind());
  }

  @Test
  void whatDoesNotSettleHasNoLimit() {
    assertEquals(Kind.UNCLEAR, of(x -> Math.sin(1 / x)).kind());
    assertEquals(Kind.UNCLEAR, of(x -> Math.sin(Math.log(x))).kind());
    assertEquals(Kind.UNCLEAR, of(x -> x < 1e-5 ? 3 : 2).kind());
    assertEquals(Kind.UNCLEAR, Trend.of(List.of(new Trend.Sample(1, 0))).kind());
  }

  @Test
  void whatRoundingLeftIsNoLimit() {
    assertEquals(Kind.SAME, of(x -> 4.0 + 1e-14 * Math.sin(1 / x)).kind());
    // settled from the third row on, but known no better than to its noise
    Trend noisy = of(x -> 1 + x * x + 1e-4 * Math.sin(1 / x), 1e-4);
    assertEquals(Kind.LIMIT, noisy.kind());
    assertTrue(noisy.error() > 1e-4 && noisy.figures() <= 3, noisy::toString);
  }
}
