package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.ibm.icu.text.RuleBasedNumberFormat;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class WordsTest {
  private static final int SAMPLES = 10_000;

  static List<Fixture> rows() {
    return Fixture.rows("words.tsv", 90);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void readsAsInTheFixture(Fixture row) {
    Words words = Words.of(Scale.valueOf(row.text("scale")));
    BigDecimal value = row.number("value");
    Spelling spelling =
        row.text("form").equals("mixed") ? words.mixed(value) : words.spelled(value);
    assertEquals(Spelling.of(row.text("text")), spelling);
  }

  @Test
  void agreesWithIcuForIntegersThatIcuKnows() {
    RuleBasedNumberFormat icu =
        new RuleBasedNumberFormat(Locale.ENGLISH, RuleBasedNumberFormat.SPELLOUT);
    Random random = new Random(41);
    for (int i = 0; i < SAMPLES; i++) {
      // As many short numbers as long ones, so that every group boundary is met.
      long number = (long) Math.pow(10, 15 * random.nextDouble());
      assertEquals(icu.format(number), Words.ENGLISH.spelled(BigDecimal.valueOf(number)).text());
    }
  }

  @Test
  void wordsCanBeReadBackAndWrittenAgain() {
    Random random = new Random(42);
    for (int i = 0; i < SAMPLES; i++) {
      BigDecimal value = sample(random);
      Spelling words = Words.ENGLISH.spelled(value);
      assertTrue(words.inWords(), value::toString);
      BigDecimal read = WordReader.read(words.text());
      assertEquals(0, value.compareTo(read), () -> value + " became " + words.text());
      assertEquals(words, Words.ENGLISH.spelled(read));
    }
  }

  /** One to eight figures, any order of magnitude that has names, both signs. */
  private static BigDecimal sample(Random random) {
    BigInteger figures =
        BigInteger.valueOf(1 + random.nextInt((int) Math.pow(10, 1 + random.nextInt(8))));
    int order = random.nextInt(63 + 65) - 62;
    BigDecimal value = new BigDecimal(figures);
    BigDecimal placed = value.scaleByPowerOfTen(order - value.precision() + 1);
    return random.nextInt(4) == 0 ? placed.negate() : placed;
  }

  @Test
  void theReaderOfThisTestReads() {
    assertEquals(new BigDecimal("8700"), WordReader.read("eight thousand seven hundred"));
    assertEquals(new BigDecimal("0.0361"), WordReader.read("thirty-six point one thousandths"));
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
  void noScaleUsesAWordThatItDoesNotHave() {
    assertFalse(Words.of(Scale.INDIAN).mixed(new BigDecimal("1E-7")).inWords());
    assertFalse(Words.of(Scale.INDIAN).mixed(new BigDecimal("1E+21")).inWords());
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
  }

  @Test
  void tooManyFiguresAreNotSpelled() {
    BigDecimal value = new BigDecimal("3." + "1".repeat(500));
    assertFalse(Words.ENGLISH.spelled(value).inWords());
    assertTrue(Words.ENGLISH.spelled(value).text().length() < 40);
  }
}
