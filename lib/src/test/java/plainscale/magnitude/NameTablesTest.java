package plainscale.magnitude;

import static java.util.stream.Collectors.toSet;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.ibm.icu.text.PluralRules;
import com.ibm.icu.text.RuleBasedNumberFormat;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.table.Table;

/** The tables of languages and names hold together, row by row. */
class NameTablesTest {
  private static final Set<String> SCALES =
      Arrays.stream(Scale.values()).map(Scale::word).collect(toSet());

  static List<Table.Row> names() {
    return Table.read(Grammar.class, "scale-names.tsv");
  }

  static List<Table.Row> languages() {
    return Table.read(Grammar.class, "languages.tsv");
  }

  @ParameterizedTest
  @MethodSource("names")
  void aNameHasASourceAndAPlace(Table.Row row) {
    assertFalse(row.get("source").isEmpty());
    assertTrue(SCALES.containsAll(List.of(row.get("scales").split(" ", -1))));
    assertTrue(languages().stream().anyMatch(l -> l.get("names").equals(row.get("names"))));
    assertFalse(row.get("other").isEmpty() && row.get("part").isEmpty());
    assertEquals(row.get("part").isEmpty(), row.get("parts").isEmpty());
  }

  @Test
  void aPowerHasOneNameInAScaleAndANameOnePower() {
    Set<String> seen = new HashSet<>();
    for (Table.Row row : names()) {
      for (String scale : row.get("scales").split(" ", -1)) {
        String place = row.get("names") + " " + scale + " ";
        assertTrue(seen.add(place + row.get("power")), row::toString);
        Set<String> words = new HashSet<>();
        for (String column : List.of("one", "other", "part", "parts")) {
          words.add(row.get(column));
        }
        words.remove("");
        words.forEach(word -> assertTrue(seen.add(place + word), place + word));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("languages")
  void aLanguageHasItsRulesAndItsSource(Table.Row row) {
    assertFalse(row.get("source").isEmpty());
    assertTrue(Arrays.stream(Language.values()).anyMatch(l -> l.tag().equals(row.get("tag"))));
    assertTrue(List.of("", "tens", "round").contains(row.get("when")));
    assertEquals(row.get("last").isEmpty(), row.get("when").isEmpty());
    assertTrue(List.of("named", "digits").contains(row.get("thousands")));
  }

  @Test
  void everyLanguageHasItsOwnRowAndNoPlaceChoosesTwo() {
    assertEquals(Language.values().length, languages().size());
    Set<String> places = new HashSet<>();
    for (Table.Row row : languages()) {
      for (String place : row.get("locales").split(" ", -1)) {
        assertTrue(places.add(place), place);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void icuHasTheRuleSetsAndOneIsTheOnlySingularCount(Language language) {
    Grammar grammar = Grammar.of(language);
    RuleBasedNumberFormat icu =
        new RuleBasedNumberFormat(grammar.icuLocale(), RuleBasedNumberFormat.SPELLOUT);
    for (Form form : Form.values()) {
      assertTrue(List.of(icu.getRuleSetNames()).contains(grammar.ruleSet(form)));
    }
    PluralRules plurals = PluralRules.forLocale(grammar.icuLocale());
    for (int count = 1; count < 1_000_000; count += count < 2000 ? 1 : 997) {
      assertEquals(count == 1, plurals.select(count).equals(PluralRules.KEYWORD_ONE));
    }
  }

  /** A gap between two names that no small group can fill would stop the speller. */
  @ParameterizedTest
  @MethodSource("plainscale.magnitude.WordRoundTripTest#words")
  void everyPowerBelowTheReachCanBeSaid(Words words) {
    for (int power = 0; power < words.scale().reach(); power++) {
      BigDecimal value = BigDecimal.ONE.scaleByPowerOfTen(power);
      assertTrue(words.spelled(value).inWords());
      assertTrue(words.mixed(value).inWords());
    }
    assertFalse(words.spelled(BigDecimal.ONE.scaleByPowerOfTen(words.scale().reach())).inWords());
  }
}
