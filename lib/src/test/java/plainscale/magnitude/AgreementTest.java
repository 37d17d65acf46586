package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AgreementTest {
  private static Words words(String tag) {
    return Words.of(Locale.forLanguageTag(tag)).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "es, 2E+6, LARGE", // 2 millones de veces
    "es, 1.234567E+6, LARGE", // 1,234567 millones de veces
    "es, 4.19E+11, LARGE", // 419.000 millones de veces
    "es, 6.15E+4, OTHER", // 61,5 mil veces
    "es, 1E+90, OTHER", // has no name: 1 × 10⁹⁰ veces
    "es, 1.5, OTHER",
    "es, 1, ONE",
    "fr, 1E+3, OTHER", // 1000 fois
    "fr, 6.5E+5, OTHER", // 650 mille fois
    "fr, 1.94E+12, LARGE", // 1,94 billion de fois
    "pt-BR, 1.5, ONE", // 1,5 vez
    "pt-BR, 37, OTHER",
    "pt-PT, 1.5E+9, LARGE", // 1,5 mil milhões de vezes
    "it, 2E+3, OTHER", // 2 mila volte
    "it, -2E+9, LARGE", // 2 miliardi di volte
    "en, 1E+6, LARGE"
  })
  void theNounAgreesWithTheNumberAsItIsWritten(String tag, BigDecimal value, Agreement agreement) {
    assertEquals(agreement, Agreement.of(words(tag).mixed(value).text(), value, words(tag)));
  }

  @ParameterizedTest
  @CsvSource({"8.7E+12, LARGE", "1.2E+6, OTHER"})
  void allInWordsTheLastWordCounts(BigDecimal value, Agreement agreement) {
    // ocho billones setecientos mil millones; un millón doscientos mil
    String spelled = words("es").spelled(value).text();
    assertEquals(agreement, Agreement.of(spelled, value, words("es")));
  }

  @Test
  void endlessDecimalsDoNoHarm() {
    BigDecimal tiny = new BigDecimal("1E-5000");
    assertEquals(Agreement.OTHER, Agreement.of("1 × 10⁻⁵⁰⁰⁰", tiny, words("fr")));
  }
}
