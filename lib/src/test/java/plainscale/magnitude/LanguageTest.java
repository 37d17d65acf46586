package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LanguageTest {

  @ParameterizedTest
  @CsvSource({
    "en, ENGLISH, SHORT",
    "en-US, ENGLISH, SHORT",
    "en-GB, BRITISH, SHORT",
    "en-AU, BRITISH, SHORT",
    "en-NZ, BRITISH, SHORT",
    "en-IE, BRITISH, SHORT",
    "en-IN, INDIAN_ENGLISH, INDIAN",
    "es, SPANISH, LONG",
    "es-MX, SPANISH, LONG",
    "fr-CA, FRENCH, MILLIARD",
    "de-CH, GERMAN, MILLIARD",
    "pt, BRAZILIAN, SHORT",
    "pt-BR, BRAZILIAN, SHORT",
    "pt-PT, PORTUGUESE, LONG",
    "pt-AO, PORTUGUESE, LONG",
    "it-CH, ITALIAN, MILLIARD",
    "hi-IN, HINDI, INDIAN",
  })
  void aPlaceChoosesLanguageAndScale(String tag, Language language, Scale scale) {
    Locale locale = Locale.forLanguageTag(tag);
    assertEquals(Optional.of(language), Language.of(locale));
    assertEquals(scale, language.defaultScale());
    assertEquals(Optional.of(scale), Words.of(locale).map(Words::scale));
  }

  @ParameterizedTest
  @ValueSource(strings = {"und", "ja", "sv-SE", "und-IN"})
  void anUnknownLanguageIsNone(String tag) {
    Locale locale = Locale.forLanguageTag(tag);

    assertEquals(Optional.empty(), Language.of(locale));
    assertEquals(Optional.empty(), Words.of(locale));
  }

  @Test
  void wordsOfAPlaceHaveItsDigits() {
    BigDecimal value = new BigDecimal("8.7E+12");
    assertEquals("8,7 Billionen", mixed("de-DE", value));
    assertEquals("8.7 billones", mixed("es-MX", value));
    assertEquals("8,7 biliões", mixed("pt-PT", value));
    assertEquals("8.7 lakh crore", mixed("en-IN", value));
  }

  private static String mixed(String tag, BigDecimal value) {
    return Words.of(Locale.forLanguageTag(tag)).orElseThrow().mixed(value).text();
  }

  @Test
  void aScaleHasAName() {
    assertEquals(Optional.of(Scale.INDIAN), Scale.named("indian"));
    assertEquals(Optional.of(Scale.REPEATED), Scale.named("repeated"));
    assertEquals(Optional.empty(), Scale.named("tall"));
  }
}
