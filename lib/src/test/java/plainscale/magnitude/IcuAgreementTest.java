package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.ibm.icu.text.RuleBasedNumberFormat;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * ICU4J spells whole numbers below 10^18, and says the same as the speller but for the listed
 * differences. The speller asks ICU4J for small groups only; here whole numbers are compared.
 */
class IcuAgreementTest {
  private static final int SAMPLES = 10_000;
  private static final String NOT_COMPARABLE = "*";

  @ParameterizedTest
  @EnumSource(Language.class)
  void agreesButForTheListedDifferences(Language language) {
    Words words = Words.of(language, language.defaultScale());
    RuleBasedNumberFormat icu =
        new RuleBasedNumberFormat(language.locale(), RuleBasedNumberFormat.SPELLOUT);
    List<Fixture> listed =
        Fixture.rows("icu-differences.tsv", 1).stream()
            .filter(row -> row.text("language").equals(language.name()))
            .toList();
    Set<Fixture> met = new HashSet<>();
    Random random = new Random(41);
    for (int i = 0; i < SAMPLES; i++) {
      long number = sample(random);
      String theirs = icu.format(number, rules(language)).replace("\u00ad", "");
      String ours = words.spelled(BigDecimal.valueOf(number)).text();
      compare(theirs, ours, listed, met);
    }
    assertEquals(new HashSet<>(listed), met, "a listed difference never occurred");
  }

  private static String rules(Language language) {
    boolean saysAnd = language == Language.BRITISH || language == Language.INDIAN_ENGLISH;
    return saysAnd ? "%spellout-numbering-verbose" : "%spellout-numbering";
  }

  private static void compare(String theirs, String ours, List<Fixture> listed, Set<Fixture> met) {
    String expected = theirs;
    for (Fixture row : listed) {
      Matcher matcher = Pattern.compile(row.text("pattern")).matcher(expected);
      if (matcher.find()) {
        met.add(row);
        if (row.text("becomes").equals(NOT_COMPARABLE)) {
          assertNotEquals(theirs, ours);
          return;
        }
        expected = matcher.replaceAll(row.text("becomes").replace('_', ' '));
      }
    }
    assertEquals(expected, ours, () -> "ICU4J says " + theirs);
  }

  /** One to six groups, many of them zero, small or whole hundreds, so that every joint is met. */
  private static long sample(Random random) {
    long number = 0;
    int groups = 1 + random.nextInt(6);
    for (int i = 0; i < groups; i++) {
      int group =
          switch (random.nextInt(6)) {
            case 0, 1 -> 0;
            case 2 -> random.nextInt(100);
            case 3 -> 100 * random.nextInt(10);
            default -> random.nextInt(1000);
          };
      number = 1000 * number + group;
    }
    return number;
  }
}
