package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The three definitions, common practice, no source; the numbers are worked by hand. */
class OrdersTest {
  @ParameterizedTest
  @CsvSource({
    "FLOOR, 8.7E+12, 12",
    "NEAREST, 8.7E+12, 13",
    "RATIO, 8.7E+12, 13",
    "FLOOR, 1000, 3",
    "NEAREST, 3.1, 0",
    "NEAREST, 3.2, 1", // √10 = 3.162
    "FLOOR, 0.02, -2",
    "NEAREST, 0.02, -2",
    "NEAREST, 0.04, -1",
    "FLOOR, -999, 2"
  })
  void ofOneNumber(Orders orders, String value, long order) {
    assertEquals(order, orders.of(new BigDecimal(value)));
  }

  // 8.7E+12 over 2.0E+3 is 4.35E+9, and log10 of that 9.64.
  @ParameterizedTest
  @CsvSource({"FLOOR, 9", "NEAREST, 10", "RATIO, 10"})
  void betweenTwo(Orders orders, long between) {
    assertEquals(between, orders.between(new BigDecimal("8.7E+12"), new BigDecimal("2.0E+3")));
  }

  // 9.9 and 10: one floor apart, no ratio to speak of.
  @ParameterizedTest
  @CsvSource({"FLOOR, 1", "NEAREST, 0", "RATIO, 0"})
  void theDefinitionsDifferMostAroundAPowerOfTen(Orders orders, long between) {
    assertEquals(between, orders.between(BigDecimal.TEN, new BigDecimal("9.9")));
  }

  @ParameterizedTest
  @EnumSource(Orders.class)
  void eachSaysWhatItIs(Orders orders) {
    assertEquals(false, orders.definition(Language.ENGLISH).isBlank());
  }
}
