package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class WordsTest {
  static List<Fixture> rows() {
    return Fixture.rows("words.tsv", 500);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void readsAsInTheFixture(Fixture row) {
    Language language = Language.valueOf(row.text("language"));
    Words words =
        Words.of(language, Scale.valueOf(row.text("scale")))
            .with(language.tag().matches("en-.*") ? DigitStyle.SI : DigitStyle.SI_COMMA);
    BigDecimal value = row.number("value");
    Spelling spelling =
        row.text("form").equals("mixed") ? words.mixed(value) : words.spelled(value);
    assertEquals(Spelling.of(row.text("text")), spelling);
  }

  @ParameterizedTest
  @ValueSource(strings = {"1E+66", "-2.5E+70", "9.99E-64", "1E-1000000000", "1E+1000000000"})
  void aNumberWithoutANameBecomesAPowerOfTenWithARemark(String number) {
    BigDecimal value = new BigDecimal(number);
    for (Spelling words : List.of(Words.ENGLISH.mixed(value), Words.ENGLISH.spelled(value))) {
      assertFalse(words.inWords());
      assertEquals(PowerOfTen.of(value).text(), words.text());
      assertTrue(words.remark().orElseThrow().startsWith("There is no name for a"));
    }
  }

  @Test
  void whatALanguageDoesNotHaveIsNotMadeUp() {
    Words hindi = Words.of(Language.HINDI, Scale.MILLIARD);
    Spelling large = hindi.spelled(new BigDecimal("8.7E+12"));
    assertEquals("8.7 × 10¹²", large.text());
    assertEquals(Optional.of("The language has no words of this scale."), large.remark());
    Spelling small = hindi.in(Scale.INDIAN).mixed(new BigDecimal("5.3E-8"));
    assertEquals("5.3 × 10⁻⁸", small.text());
    assertEquals(Optional.of("The language has no words for fractions here."), small.remark());
    assertEquals(Optional.empty(), Words.of(Language.GERMAN, Scale.SHORT).nameOf(9));
    assertFalse(Words.of(Language.PORTUGUESE, Scale.LONG).mixed(new BigDecimal("1E-9")).inWords());
  }

  @Test
  void aFractionIsOfOneUnit() {
    assertEquals("of", Words.ENGLISH.ofOne());
    assertEquals("von", Words.of(Language.GERMAN, Scale.MILLIARD).ofOne());
    assertEquals("de", Words.of(Language.SPANISH, Scale.LONG).ofOne());
    assertEquals("di", Words.of(Language.ITALIAN, Scale.MILLIARD).ofOne());
  }

  @Test
  void noScaleUsesAWordThatItDoesNotHave() {
    assertFalse(Words.of(Scale.INDIAN).mixed(new BigDecimal("1E-7")).inWords());
    assertFalse(Words.of(Scale.INDIAN).mixed(new BigDecimal("1E+42")).inWords());
    assertFalse(Words.of(Scale.LONG).mixed(new BigDecimal("1E-9")).inWords());
    assertEquals("1 milliardth", Words.of(Scale.MILLIARD).mixed(new BigDecimal("1E-9")).text());
  }

  @Test
  void mixedDigitsFollowTheStyle() {
    Words german = Words.ENGLISH.with(DigitStyle.SI_COMMA);
    assertEquals("8,7 trillion", german.mixed(new BigDecimal("8.7E+12")).text());
  }

  @Test
  void powersHaveNamesOfTheirOwn() {
    assertEquals(Optional.of("trillionth"), Words.ENGLISH.nameOf(-12));
    assertEquals(Optional.of("one"), Words.ENGLISH.nameOf(0));
    assertEquals(Optional.of("vigintillion"), Words.ENGLISH.nameOf(63));
    assertEquals(Optional.empty(), Words.ENGLISH.nameOf(64));
    assertEquals(Optional.empty(), Words.of(Scale.LONG).nameOf(9));
    Words german = Words.of(Language.GERMAN, Scale.MILLIARD);
    assertEquals(Optional.of("Milliarde"), german.nameOf(9));
    assertEquals(Optional.of("Milliardstel"), german.nameOf(-9));
    assertEquals(Optional.of("mille"), Words.of(Language.ITALIAN, Scale.MILLIARD).nameOf(3));
  }

  @Test
  void tooManyFiguresAreNotSpelled() {
    BigDecimal value = new BigDecimal("3." + "1".repeat(500));
    assertFalse(Words.ENGLISH.spelled(value).inWords());
    assertTrue(Words.ENGLISH.spelled(value).text().length() < 40);
  }
}
