package plainscale.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.time.Duration;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GlobTest {

  @ParameterizedTest
  @CsvSource({
    "'',       '',        true",
    "'',       a,         false",
    "*,        '',        true",
    "*,        anything,  true",
    "?,        a,         true",
    "?,        '',        false",
    "a*c,      abc,       true",
    "a*c,      ac,        true",
    "a*c,      abcd,      false",
    "a*b*c,    aXbYbZc,   true",
    "*ab*ab*,  abab,      true",
    "*ab*ab*,  aba,       false",
    "a?c*,     abcdef,    true",
    "**,       x,         true",
    "a.c,      abc,       false",
    "[a],      a,         false",
  })
  void starsAndQuestionMarksMatchTheWholeText(String pattern, String text, boolean expected) {
    assertEquals(expected, Glob.matches(pattern, text));
  }

  @Test
  void aStarCrossesLines() {
    assertEquals(true, Glob.matches("a*z", "a\nb\nz"));
  }

  /** A backtracking matcher would need longer than the universe is old. */
  @Test
  void manyStarsDoNotTakeForever() {
    String pattern = "*a".repeat(100) + "b";
    Assertions.assertTimeoutPreemptively(
        Duration.ofSeconds(20), () -> assertFalse(Glob.matches(pattern, "a".repeat(5_000))));
  }
}
