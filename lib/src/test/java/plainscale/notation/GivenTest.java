package plainscale.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The forms of a given. */
class GivenTest {
  private static final Names NAMES = KnownNames.of("m", "s");

  private static Statement.Given given(String text) {
    return (Statement.Given) Notation.parse("given " + text, NAMES).get(0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "m = 2.70 ± 0.05 g          | 2.70   | 0.05   | g",
        "m = 2.70 +- 0.05 g         | 2.70   | 0.05   | g",
        "m = 2.70 +/- 0.05 g        | 2.70   | 0.05   | g",
        "m = (2.70 ± 0.05) g        | 2.70   | 0.05   | g",
        "m = 2.70 g ± 0.05 g        | 2.70   | 0.05   | g",
        "m = 2.70 kg ± 50 g         | 2.70   | 0.05   | kg",
        "m = 2.70(5) g              | 2.70   | 0.05   | g",
        "m = 2.70(15) [g]           | 2.70   | 0.15   | g",
        "G = 6.67430(15)e-11 m³/(kg s²) | 6.67430E-11 | 1.5E-15 | m³/(kg·s²)",
        "d = 14.0 cm ± 2 %          | 14.0   | 0.280  | cm",
        "d = -14.0 cm ± 2 %         | -14.0  | 0.280  | cm",
        "p = 80 % ± 5 %             | 80     | 5      | %",
        "T = 20.5 ± 0.5 °C          | 20.5   | 0.5    | °C",
        "x = -1.5 ± 0.1 m           | -1.5   | 0.1    | m",
        "r = 1.5 ± 0.1              | 1.5    | 0.1    | ''"
      })
  void hasAValueAnUncertaintyAndAUnit(
      String text, BigDecimal value, BigDecimal uncertainty, String unit) {
    Measurement m = given(text).measurement();
    assertEquals(value, m.value());
    assertEquals(0, uncertainty.compareTo(m.uncertainty().orElseThrow()));
    assertEquals(unit, m.unit().text());
    assertEquals(false, m.count());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "m = 2.70 g      | 2.70 | g   | false",
        "F = 5.3×10⁻³ N  | 0.0053 | N | false",
        "a = 9.81 m/s²   | 9.81 | m/s² | false",
        "a = 9.81 m s⁻²  | 9.81 | m/s² | false",
        "s = 2 m         | 2    | m   | false",
        "n = 12          | 12   | ''  | true",
        "n = 12.0        | 12.0 | ''  | false",
        "θ = 30°         | 30   | °   | false"
      })
  void withoutUncertaintyItsDigitsAreItsFigures(
      String text, BigDecimal value, String unit, boolean count) {
    Measurement m = given(text).measurement();
    assertEquals(value, m.value());
    assertEquals(true, m.uncertainty().isEmpty());
    assertEquals(unit, m.unit().text());
    assertEquals(count, m.count());
  }

  @Test
  void whatFollowsTheNumberIsAlwaysAUnit() {
    assertEquals("m", given("s = 2 m").measurement().unit().text());
    assertEquals("s", given("t = 2 s").measurement().unit().text());
  }

  @Test
  void theDescriptionIsTheTextInQuotationMarks() {
    assertEquals("mass of one ball", given("m = 2 g \"mass of one ball\"").description());
    assertEquals("mass", given("m = 2 g “mass”").description());
    assertEquals("the \"big\" one", given("m = 2 g \"the \\\"big\\\" one\"").description());
    assertEquals("", given("m = 2 g").description());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "given m = 3 + 4       | A given is a measured number; what is computed is defined without the word given.",
        "given m = 3 * 4       | A given is a measured number; what is computed is defined without the word given.",
        "given m = 3 x 10^8 m  | A power of ten is written with × or with e.",
        "given m = 3*10^8 m    | A power of ten is written with × or with e.",
        "given m = 1 000 m     | A number is written without spaces.",
        "given m = s           | A given is a measured number; what is computed is defined without the word given.",
        "given m = (2.70) g    | A bracket in a given holds a value and its uncertainty.",
        "given m = 2.70 g ± 0.05 s | Value and uncertainty are written in units of the same kind.",
        "given m = 2.70 ± 5 %  | …",
        "given m = 2.70 q      | I do not know the unit “q”.",
        "given m = ± 2 g       | Here there is “±”; a measured number belongs here."
      })
  void anythingElseIsRefused(String source, String sentence) {
    if (sentence.equals("…")) {
      RefusalTest.problem(source, NAMES);
    } else {
      assertEquals(sentence, RefusalTest.problem(source, NAMES).sentence());
    }
  }
}
