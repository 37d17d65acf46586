package plainscale.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitParserTest {

  @ParameterizedTest
  @CsvSource({
    "m/s, m/s",
    "m s^-1, m/s",
    "m·s⁻¹, m/s",
    "m*s^-1, m/s",
    "m.s^−1, m/s",
    "kg m^2/s^2, kg·m²/s²",
    "kg m²/s², kg·m²/s²",
    "N m^2/C^2, N·m²/C²",
    "1/mol, 1/mol",
    "mol^-1, 1/mol",
    "W/(m^2 K^4), W/(m²·K⁴)",
    "W/(m² K⁴), W/(m²·K⁴)",
    "m^3/(kg s^2), m³/(kg·s²)",
    "' m / s ', m/s",
    "1, ''"
  })
  void manyWritingsPrintAsOne(String text, String printed) {
    assertEquals(printed, UnitParser.parse(text).text());
  }

  /** The Unified Code for Units of Measure, case sensitive; values from memory. */
  @ParameterizedTest
  @CsvSource({
    "m3.kg-1.s-2, m^3/(kg s^2), 1",
    "kg.m/s2, N, 1",
    "[lb_av], kg, 0.45359237",
    "[in_i], m, 0.0254",
    "[ft_i], m, 0.3048",
    "[mi_i], m, 1609.344",
    "[gal_us], m^3, 0.003785411784",
    "m[Hg], Pa, 133322",
    "Cel, K, 1",
    "/s, 1/s, 1",
    "J/(kg.K), m^2/(s^2 K), 1"
  })
  void aUcumCodeIsReadWhereThePlainReadingFails(String code, String unit, String factor) {
    UnitOfMeasure read = UnitParser.parse(code);
    UnitOfMeasure expected = UnitParser.parse(unit);
    assertEquals(expected.kind(), read.kind());
    double ratio = read.factor().doubleValue() / expected.factor().doubleValue();
    double number = new BigDecimal(factor).doubleValue();
    assertEquals(number, ratio, number * 1e-5);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // text | sentence begins | marked | a repair
        "metre | I do not know the unit “metre”. | metre | m",
        "seconds | I do not know the unit “seconds”. | seconds | s",
        "sec | I do not know the unit “sec”. | sec | s",
        "in | I do not know the unit “in”. | in | inch",
        "Kg | I do not know the unit “Kg”. | Kg | kg",
        "m/Sec | I do not know the unit “Sec”. | Sec | s",
        "kg mtr | I do not know the unit “mtr”. | mtr | ",
        "HZ | I do not know the unit “HZ”. | HZ | Hz",
        "pa | I do not know the unit “pa”. | pa | Pa",
        "newton | I do not know the unit “newton”. | newton | N",
        "amp | I do not know the unit “amp”. | amp | A",
        "m/s/s | After one / in a unit a second part is doubtful | m/s/s | m/(s s)",
        "J/kg K | After one / in a unit a second part is doubtful | J/kg K | J/(kg K)",
        "J/°C | °C is a scale with its own zero | J/°C | J/K",
        "m^ | A whole number is missing after ^ | | ",
        "m^x | A whole number is missing after ^ | x | ",
        "m^0 | An exponent in a unit runs from −12 to 12 | 0 | ",
        "m^13 | An exponent in a unit runs from −12 to 12 | 13 | ",
        "m/(s | A bracket in this unit is not closed. | | ",
        "m/ | A unit is missing here. | | ",
        "pa | I do not know the unit “pa”. | pa | Pa",
        "ma | I do not know the unit “ma”. | ma | mA",
        "J/kg.K | After one / in a unit a second part is doubtful | J/kg.K | J/(kg.K)",
        "(m^12)^12 | An exponent in a unit runs from −12 to 12 | (m^12)^12 | ",
        "m⁴²⁹⁴⁹⁶⁷²⁹⁸ | An exponent in a unit runs from −12 to 12 | ⁴²⁹⁴⁹⁶⁷²⁹⁸ | ",
        "J80643 | An exponent in a unit runs from −12 to 12 | 80643 | ",
        "/0 | I cannot read “0” as part of a unit. | 0 | ",
        "0 | I cannot read “0” as part of a unit. | 0 | ",
        "m+s | I cannot read “+s” as part of a unit. | +s | ",
        "$ | I cannot read “$” as part of a unit. | $ | ",
        "[lb_av]80643 | I cannot read | [lb_av]80643 | ",
        "J/[lb_av].K | I cannot read | [lb_av].K | ",
        "[HP] | I cannot read “[HP]” as part of a unit. | [HP] | hp",
        "[h] | I cannot read “[h]” as part of a unit. | [h] | ",
        "J.[m_e] | I cannot read “[m_e]” as part of a unit. | [m_e] | ",
        "Newton | I do not know the unit “Newton”. | Newton | N",
        "KILOGRAMS | I do not know the unit “KILOGRAMS”. | KILOGRAMS | kg"
      })
  void aBadTextGetsASentenceAPlaceAndWhereSensibleARepair(
      String text, String sentence, String marked, String repair) {
    UnitException e = assertThrows(UnitException.class, () -> UnitParser.parse(text));
    assertTrue(String.valueOf(e.getMessage()).startsWith(sentence), e.getMessage());
    assertTrue(e.start() >= 0 && e.start() <= e.end() && e.end() <= text.length());
    assertEquals(marked == null ? "" : marked, text.substring(e.start(), e.end()));
    assertTrue(repair == null || e.repairs().contains(repair), e.repairs()::toString);
  }

  @Test
  void everyRepairIsAUnitThatCanBeRead() {
    for (String wrong :
        "metre sec in Kg HZ pa newton m/s/s J/kg K J/°C mtr ohms volts Sec".split(" ", -1)) {
      try {
        UnitParser.parse(wrong);
      } catch (UnitException e) {
        e.repairs().forEach(UnitParser::parse);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {121, 5000})
  void aTextThatIsTooLongIsRefusedAtOnce(int length) {
    String text = "m".repeat(length);
    UnitException e = assertThrows(UnitException.class, () -> UnitParser.parse(text));
    assertEquals("This unit is too long to be one.", e.getMessage());
  }

  @Test
  void anyTextIsAUnitOrACleanRefusalInsideTheText() {
    String alphabet = "mskgNJ°%µ1234567890^⁻²³·*./() -−[]_'{}$é\uD83D\uDE00\n\t";
    Random random = new Random(5);
    int read = 0;
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = 1 + random.nextInt(8); n > 0; n--) {
        text.append(alphabet.charAt(random.nextInt(alphabet.length())));
      }
      read += isRead(text.toString()) ? 1 : 0;
    }
    assertTrue(read > 500, read + " were units");
  }

  private static boolean isRead(String text) {
    try {
      UnitOfMeasure unit = UnitParser.parse(text);
      assertEquals(unit.kind(), UnitParser.parse(unit.text()).kind(), text);
      return true;
    } catch (UnitException e) {
      assertTrue(e.start() >= 0 && e.start() <= e.end() && e.end() <= text.length(), text);
      return false;
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"((((((((((((((((((((m))))))))))))))))))))", "m m m m m m m m m m m m"})
  void deepBracketsAndManyFactorsAreRead(String text) {
    assertTrue(UnitParser.parse(text).factors().size() >= 1);
  }
}
