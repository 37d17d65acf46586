package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is spelled can be read back, in every language and each scale that it has. */
class WordRoundTripTest {
  private static final int SAMPLES = 10_000;
  private static final int SMALLEST = -15;

  static Stream<Words> words() {
    return Arrays.stream(Language.values())
        .flatMap(l -> Arrays.stream(Scale.values()).map(s -> Words.of(l, s)))
        .filter(w -> w.spelled(BigDecimal.ONE).inWords());
  }

  @Test
  void allLanguagesAndScalesAreThere() {
    assertEquals(32, words().count());
    assertEquals(Language.values().length, words().map(Words::language).distinct().count());
  }

  @ParameterizedTest
  @MethodSource("words")
  void spelledNumbersAreReadBack(Words words) {
    WordReader reader = new WordReader(words.language(), words.scale());
    Random random = new Random(42);
    for (int i = 0; i < SAMPLES; i++) {
      BigDecimal value = sample(random, words);
      Spelling spelled = words.spelled(value);
      assertTrue(spelled.inWords(), value::toString);
      BigDecimal read = reader.read(spelled.text());
      assertEquals(0, value.compareTo(read), () -> value + " became " + spelled.text());
      assertEquals(words.spelled(trimmed(value)), words.spelled(trimmed(read)));
    }
  }

  @ParameterizedTest
  @MethodSource("words")
  void mixedNumbersAreReadBack(Words words) {
    WordReader reader = new WordReader(words.language(), words.scale());
    Random random = new Random(43);
    for (int i = 0; i < SAMPLES; i++) {
      BigDecimal value = sample(random, words);
      Spelling mixed = words.mixed(value);
      assertTrue(mixed.inWords(), value::toString);
      BigDecimal read = reader.readMixed(mixed.text());
      assertEquals(0, value.compareTo(read), () -> value + " became " + mixed.text());
      assertEquals(words.mixed(trimmed(value)), words.mixed(trimmed(read)));
    }
  }

  @Test
  void theReaderOfThisTestReads() {
    WordReader english = new WordReader(Language.ENGLISH, Scale.SHORT);
    assertEquals(0, new BigDecimal(8700).compareTo(english.read("eight thousand seven hundred")));
    assertEquals(
        0, new BigDecimal("0.0361").compareTo(english.read("thirty-six point one thousandths")));
    assertEquals(0, new BigDecimal("-8.7E+12").compareTo(english.readMixed("−8.7 trillion")));
    WordReader german = new WordReader(Language.GERMAN, Scale.MILLIARD);
    assertEquals(
        0,
        new BigDecimal(1_021_101)
            .compareTo(german.read("eine Million einundzwanzigtausend" + "einhunderteins")));
  }

  /** The same number with its figures alone: what a reader cannot know is taken away. */
  private static BigDecimal trimmed(BigDecimal value) {
    return value.stripTrailingZeros();
  }

  /**
   * One to eight figures or, for every eighth number, up to 24, at any order of magnitude that the
   * words have, both signs.
   */
  private static BigDecimal sample(Random random, Words words) {
    while (true) {
      int figures = 1 + random.nextInt(random.nextInt(8) == 0 ? 24 : 8);
      BigInteger digits = new BigInteger(80, random).mod(BigInteger.TEN.pow(figures));
      BigDecimal value = new BigDecimal(digits.add(BigInteger.ONE));
      int order = SMALLEST + random.nextInt(words.scale().reach() - SMALLEST);
      BigDecimal placed = value.scaleByPowerOfTen(order - value.precision() + 1);
      if (isSayable(placed, words)) {
        return random.nextInt(4) == 0 ? placed.negate() : placed;
      }
    }
  }

  /** In these scales fractions have names only down to some power, or not without gaps. */
  private static boolean isSayable(BigDecimal value, Words words) {
    boolean gaps =
        switch (words.scale()) {
          case SHORT, MILLIARD -> false;
          case LONG -> words.language() != Language.SPANISH;
          case INDIAN, REPEATED -> true;
        };
    return value.compareTo(BigDecimal.ONE) >= 0 || !gaps || words.mixed(value).inWords();
  }
}
