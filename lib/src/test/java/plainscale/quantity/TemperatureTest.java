package plainscale.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.quantity.Quantities.q;
import static plainscale.quantity.Quantities.text;

import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.units.UnitParser;

/** Readings of a temperature scale are points, their differences are amounts. */
class TemperatureTest {

  /** University Physics volume 2, Example 1.1 (m58385): 25 °C is 77 °F and 298 K. */
  @ParameterizedTest
  @CsvSource({
    "25 °C, °F, 77 °F",
    "25 °C, K, 298 K",
    "77 °F, °C, 25 °C", // University Physics 2, example 1.1 (m58385), the other way round
    "25.00 °C, K, 298.15 K",
    "298.15 K, °C, 25.00 °C",
    "-40 °C, °F, -40 °F",
    "0 °C, °F, 32 °F",
    "0 K, °C, -273 °C",
    "0 °C, K, 273 K"
  })
  void aReadingIsConvertedWithItsZero(String reading, String unit, String shown) {
    assertEquals(shown, text(q(reading).in(UnitParser.parse(unit))));
  }

  @Test
  void anUncertaintyIsConvertedWithoutTheZero() {
    Quantity reading = q("25.0±0.5 °C");
    assertEquals(0.5, reading.uncertainty().standard(), 1e-15);
    assertEquals("77.0±0.9 °F", text(reading.in(UnitParser.parse("°F"))));
    assertEquals("298.2±0.5 K", text(reading.in(UnitParser.parse("K")))); // 298.15, a tie
  }

  @Test
  void twoReadingsHaveADifferenceInKelvins() {
    assertEquals("5 K", text(q("25 °C").minus(q("20 °C"))));
    assertEquals("5.0 K", text(q("77.0 °F").minus(q("68.0 °F"))));
    assertEquals("0 K", text(q("25 °C").minus(q("77 °F"))));
    assertFalse(q("25 °C").minus(q("20 °C")).isReading());
  }

  @Test
  void aReadingMovesByAnAmount() {
    assertEquals("30 °C", text(q("25 °C").plus(q("5 K"))));
    assertEquals("30 °C", text(q("5 K").plus(q("25 °C"))));
    assertEquals("20 °C", text(q("25 °C").minus(q("5 K"))));
    assertTrue(q("25 °C").minus(q("5 K")).isReading());
    assertEquals("86 °F", text(q("77 °F").plus(q("5.0 K"))));
  }

  static Stream<UnaryOperator<Quantity>> meaningless() {
    return Stream.of(
        t -> t.plus(q("20 °C")),
        t -> t.times(q("2")),
        t -> q("2").times(t),
        t -> t.over(q("2")),
        t -> q("2 J").over(t),
        t -> t.power(q("2")),
        t -> q("2").power(t),
        Quantity::negate,
        t -> t.apply(ElementaryFunction.SQRT),
        t -> t.apply(ElementaryFunction.ABS),
        t -> t.plus(q("2 m")));
  }

  @ParameterizedTest
  @MethodSource("meaningless")
  void whatHasNoMeaningIsRefusedForAReadingButNotForKelvins(UnaryOperator<Quantity> operation) {
    QuantityException e = assertThrows(QuantityException.class, () -> operation.apply(q("25 °C")));
    assertEquals(QuantityException.Fault.UNIT, e.fault());
    assertTrue(e.sentence().endsWith("."));
  }

  @Test
  void theRefusalOffersBothMeanings() {
    QuantityException e = assertThrows(QuantityException.class, () -> q("2").times(q("25 °C")));
    assertEquals(
        "25 °C is a point on a scale; a product or a power of it has no meaning.", e.sentence());
    assertEquals(2, e.repairs().size());
  }

  @Test
  void inKelvinsItTakesPartInProducts() {
    assertEquals("596 K", text(q("2").times(q("25 °C").in(UnitParser.parse("K")))));
  }
}
