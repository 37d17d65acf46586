package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PerspectiveTest {
  static List<Fixture> rows() {
    return Fixture.rows("perspectives-check.tsv", 7);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void saysWhatAHandCalculationGives(Fixture row) {
    Perspective.Rule rule = Perspective.Rule.valueOf(row.text("rule").toUpperCase(Locale.ROOT));
    Perspective line = Perspective.of(row.number("count"), rule).orElseThrow();
    assertEquals(row.text("text"), line.text(Words.ENGLISH));
    assertEquals(rule, line.rule());
  }

  @Test
  void theFirstRuleThatFitsIsUsedAndNamed() {
    assertEquals(
        Perspective.Rule.COUNTING, Perspective.of(new BigDecimal("8.7E+12")).orElseThrow().rule());
    // Too many years, too few ages of the universe: the row of millimetres steps in.
    assertEquals(
        Perspective.Rule.LENGTH, Perspective.of(new BigDecimal("1.0E+17")).orElseThrow().rule());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-8.7E+12", "12", "3.05E-16", "1E+60", "1E+1000000000"})
  void staysSilentWhereNoRuleHelps(String count) {
    assertEquals(Optional.empty(), Perspective.of(new BigDecimal(count)));
  }

  @Test
  void everyCountFromAMillionToTheSixthDecadeOfGalaxiesFindsALine() {
    for (int power = 6; power < 30; power++) {
      BigDecimal count = new BigDecimal("3.1E+" + power);
      Perspective line = Perspective.of(count).orElseThrow();
      assertTrue(line.times().compareTo(BigDecimal.ONE) > 0, line::phrase);
      assertFalse(line.source().isEmpty());
      assertFalse(line.text(Words.ENGLISH).contains("{"), line::phrase);
    }
  }
}
