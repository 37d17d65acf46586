package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DigitsTest {
  static List<Fixture> rows() {
    return Fixture.rows("digits.tsv", 30);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void readsAsInTheFixture(Fixture row) {
    Digits digits = Digits.of(row.number("value"), style(row.text("style")));
    assertEquals(row.text("text"), digits.text());
    assertEquals(row.text("plain"), digits.plain());
    assertEquals(row.count("figures"), digits.significantFigures());
    assertEquals(row.count("placeholders"), digits.placeholderZeros());
    assertEquals(row.count("leading"), digits.leadingZeros());
    assertTrue(digits.full());
  }

  private static DigitStyle style(String name) {
    return switch (name) {
      case "SI" -> DigitStyle.SI;
      case "SI_COMMA" -> DigitStyle.SI_COMMA;
      default -> DigitStyle.of(Locale.forLanguageTag(name));
    };
  }

  @Test
  void runsTellFiguresFromPlaceHolders() {
    assertEquals(
        List.of(
            new Run(Role.SIGN, "\u2212"),
            new Run(Role.SIGNIFICANT, "8"),
            new Run(Role.SEPARATOR, "\u202f"),
            new Run(Role.SIGNIFICANT, "7"),
            new Run(Role.PLACEHOLDER, "00"),
            new Run(Role.SEPARATOR, "\u202f"),
            new Run(Role.PLACEHOLDER, "000")),
        Digits.of(new BigDecimal("-8.7E+6")).runs());
    assertEquals(
        List.of(
            new Run(Role.LEADING_ZERO, "0"),
            new Run(Role.MARKER, "."),
            new Run(Role.LEADING_ZERO, "00"),
            new Run(Role.SIGNIFICANT, "50")),
        Digits.of(new BigDecimal("0.0050")).runs());
  }

  @Test
  void thePlainNumberIsTheNumberAndTheRunsKeepItsFigures() {
    Random random = new Random(20);
    for (int i = 0; i < 5000; i++) {
      BigDecimal value =
          new BigDecimal(new BigInteger(1 + random.nextInt(60), random), random.nextInt(199) - 99);
      Digits digits = Digits.of(random.nextBoolean() ? value : value.negate());
      assertEquals(0, new BigDecimal(digits.plain()).compareTo(digits.value()));
      String stripped = digits.text().replace("\u202f", "").replace('\u2212', '-');
      assertEquals(digits.plain(), stripped);
      if (value.signum() != 0) {
        assertEquals(value.precision(), digits.significantFigures());
      }
    }
  }

  @Test
  void localeDigitsStayZeroToNine() {
    Digits digits = Digits.of(new BigDecimal("123"), DigitStyle.of(Locale.forLanguageTag("ar-EG")));
    assertEquals("123", digits.text());
  }

  @Test
  void writesAsManyPlacesAsItPromisesAndNoMore() {
    assertTrue(Digits.of(new BigDecimal("1E+399")).full());
    assertFalse(Digits.of(new BigDecimal("1E+400")).full());
    assertTrue(Digits.of(new BigDecimal("1E-399")).full());
    assertFalse(Digits.of(new BigDecimal("1E-400")).full());
    Digits power = Digits.of(new BigDecimal("-8.7E+400"));
    assertEquals("\u22128.7 × 10⁴⁰⁰", power.text());
    assertEquals("-8.7E+400", power.plain());
    assertEquals(2, power.significantFigures());
    assertEquals(0, power.integerPlaces());
  }
}
