package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.magnitude.Expansion.Rule;

class ExpansionTest {
  private static Expansion expand(String value) {
    return Expansion.of(new BigDecimal(value), Writing.USUAL);
  }

  private static List<String> texts(Expansion expansion) {
    return expansion.steps().stream()
        .map(s -> s.rule() + " " + s.count() + ": " + s.after().replace('\u202f', ' '))
        .toList();
  }

  @Test
  void aLargeNumberIsMovedFilledGroupedNamedAndRead() {
    assertEquals(
        List.of(
            "WRITE 13: 4.7 × 10¹³",
            "MOVE_RIGHT 13: 47____________",
            "FILL 12: 47000000000000",
            "GROUP 3: 47 000 000 000 000",
            "NAME 5: 47 trillion | 000 billion | 000 million | 000 thousand | 000",
            "READ 0: 47 trillion",
            "SPELL 0: forty-seven trillion"),
        texts(expand("4.7E+13")));
  }

  @Test
  void aFractionIsMovedToTheLeft() {
    List<String> texts = texts(expand("5.3E-16"));
    assertEquals("MOVE_LEFT 16: _._______________53", texts.get(1));
    assertEquals("FILL 16: 0.00000000000000053", texts.get(2));
    assertEquals("READ 0: 530 quintillionths", texts.get(5));
  }

  @Test
  void aSmallNumberHasFewSteps() {
    assertEquals(
        List.of("WRITE 1: 4.2 × 10¹", "MOVE_RIGHT 1: 42", "SPELL 0: forty-two"),
        texts(expand("42")));
    assertEquals(List.of("WRITE 0: 0", "SPELL 0: zero"), texts(expand("0")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"4.7E+13", "5.3E-16", "1234567", "-8.7E+12", "0.05", "6.02214076E+23"})
  void theBlankFormGivesNothingAwayButTheShape(String value) {
    for (Expansion.Step step : expand(value).steps()) {
      if (step.rule() != Rule.WRITE) {
        assertFalse(step.blank().matches(".*[0-9a-z].*"), step.blank());
        boolean digits = step.rule() != Rule.READ && step.rule() != Rule.SPELL;
        int places = step.after().replaceAll("[^0-9_]", "").length();
        assertTrue(
            !digits || step.blank().replaceAll("[^☐_]", "").length() == places, step.blank());
      }
    }
  }

  @Test
  void aNumberOfMoreThanAHundredDigitsIsRefused() {
    assertEquals(100, Digits.of(new BigDecimal("1E+99")).integerPlaces());
    assertFalse(expand("1E+99").steps().isEmpty());
    assertThrows(IllegalArgumentException.class, () -> expand("1E+100"));
    assertThrows(IllegalArgumentException.class, () -> expand("1E+400"));
  }
}
