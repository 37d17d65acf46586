package plainscale.render;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plainscale.magnitude.Writing;
import plainscale.quantity.Quantity;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/** What a program prints of a quantity is what the notation shows of it. */
class ProgramTextTest {
  private static final String[] UNITS = {"m", "°", "°C", "N·m²/C²", "mg", ""};

  @Test
  void aQuantityReadsAsTheNotationShowsIt() {
    Random random = new Random(42);
    for (int i = 0; i < 4000; i++) {
      String text = UNITS[random.nextInt(UNITS.length)];
      UnitOfMeasure unit = text.isEmpty() ? UnitOfMeasure.ONE : UnitParser.parse(text);
      BigDecimal value = decimal(random, 20);
      BigDecimal doubt = decimal(random, 3).abs();
      assertSame(Quantity.written(value, unit));
      assertSame(Quantity.measured("x", value, doubt, unit));
      assertSame(Quantity.exact(value, unit));
    }
    assertSame(Quantity.number(BigDecimal.ZERO));
    assertSame(Quantity.written(new BigDecimal("0.000"), UnitOfMeasure.ONE));
    assertSame(Quantity.written(new BigDecimal("0E+3"), UnitOfMeasure.ONE));
  }

  private static BigDecimal decimal(Random random, int digits) {
    long unscaled = (long) (random.nextGaussian() * Math.pow(10, random.nextInt(digits) % 17));
    return BigDecimal.valueOf(unscaled, random.nextInt(24) - 8);
  }

  private static void assertSame(Quantity quantity) {
    assertEquals(ValueText.number(quantity.shown(), Writing.USUAL), quantity.toString());
  }
}
