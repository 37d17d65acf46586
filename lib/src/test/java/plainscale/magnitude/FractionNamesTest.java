package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.ibm.icu.text.RuleBasedNumberFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * In these languages the name of a fraction is the ordinal of its power, which ICU4J knows up to
 * 10^15 (German has a word of its own). Each difference is listed with its reason.
 */
class FractionNamesTest {

  @ParameterizedTest
  @CsvSource({
    "ENGLISH, %spellout-ordinal, 'one '",
    "SPANISH, %spellout-ordinal-feminine, 'un '",
    "FRENCH, %spellout-ordinal-masculine, 'un '",
    "BRAZILIAN, %spellout-ordinal-masculine, 'um '",
    "PORTUGUESE, %spellout-ordinal-masculine, 'um '",
    "ITALIAN, %spellout-ordinal-masculine, 'un '",
  })
  void aFractionIsNamedAsTheOrdinal(Language language, String rules, String one) {
    Words words = Words.of(language, language.defaultScale());
    RuleBasedNumberFormat icu =
        new RuleBasedNumberFormat(language.locale(), RuleBasedNumberFormat.SPELLOUT);
    List<List<String>> differences = new ArrayList<>();
    long size = 1;
    for (int power = 1; power <= 15; power++) {
      size *= 10;
      Optional<String> ours = words.nameOf(-power);
      String theirs = icu.format(size, rules).replace("\u00ad", "").replaceFirst("^" + one, "");
      if (ours.isPresent() && !ours.get().equals(theirs)) {
        differences.add(List.of(Integer.toString(power), theirs, ours.get()));
      }
    }
    assertEquals(listed(language), differences);
  }

  private static List<List<String>> listed(Language language) {
    return Fixture.rows("icu-fraction-differences.tsv", 1).stream()
        .filter(row -> row.text("language").equals(language.name()))
        .map(row -> List.of(row.text("power"), row.text("theirs"), row.text("ours")))
        .toList();
  }
}
