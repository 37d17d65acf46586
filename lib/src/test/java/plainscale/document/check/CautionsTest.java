package plainscale.document.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CautionsTest {
  private static final String LAST_WORD =
      "The rules of the school and those who are licensed to decide have the last word.";
  private static final String CAUTION = "{\"role\": \"caution\"}";

  @Test
  void aHazardNeedsACaution() {
    assertEquals(
        List.of(
            "error :0 The lesson names a hazard (flames), and none of its cells is a caution. → write caution flames in a cell, or what to do about it in a text with role: \"caution\""),
        new TestLesson().head("{\"hazards\": [\"flames\"]}").prose("# T").found("caution"));
    assertEquals(
        List.of(
            "error :0 The lesson names hazards (flames, latex), and none of its cells is a caution. → write caution flames, latex in a cell, or what to do about it in a text with role: \"caution\""),
        new TestLesson()
            .head("{\"hazards\": [\"flames\", \"latex\"]}")
            .prose("# T\n\n> **Caution.** " + LAST_WORD)
            .found("caution"));
  }

  @Test
  void aHazardWithACautionIsInOrder() {
    assertEquals(
        List.of(),
        new TestLesson()
            .head("{\"hazards\": [\"flames\"]}")
            .prose("# T\n\n> **Caution.** No scarves. " + LAST_WORD, CAUTION)
            .found("caution"));
  }

  @Test
  void aCautionLeavesTheLastWordToLocalRulesAndLicensedPeople() {
    assertEquals(
        List.of(
            "warning c1:0 The caution does not say that local rules and licensed people decide. → add: "
                + LAST_WORD),
        new TestLesson()
            .prose("Generators have rules of their own. Go to school.", CAUTION)
            .found("caution"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        LAST_WORD,
        "Keep away. Local rules decide.",
        "Follow the regulations of your country.",
        "Ask whoever is licensed under the laws that hold\nwhere you teach."
      })
  void thatSentenceIsKnownByItsWords(String words) {
    assertEquals(List.of(), new TestLesson().prose(words, CAUTION).found("caution"));
  }

  @Test
  void inOtherLanguagesItsAbsenceIsARemark() {
    assertEquals(
        List.of(
            "remark c1:0 I find no sentence in the caution that local rules and licensed people decide; I know it in English only. → see that it stands there"),
        new TestLesson()
            .head("{\"locale\": \"de-CH\"}")
            .prose("Die Regeln der Schule gehen vor.", CAUTION)
            .found("caution"));
  }

  @Test
  void aHazardThatHasNoNameIsRemarked() {
    TestLesson lesson =
        new TestLesson()
            .head("{\"hazards\": [\"flams\", \"high_voltage\", \"boredom\"]}")
            .prose(LAST_WORD, CAUTION);
    assertEquals(
        List.of(
            "remark :0 The table of hazards has none called “flams”. → write flames or glass or capacitors",
            "remark :0 The table of hazards has none called “boredom”. → "),
        lesson.found("caution"));
  }

  @Test
  void theStatementIsACautionWithTheLastWord() {
    assertEquals(
        List.of(),
        new TestLesson()
            .head("{\"hazards\": [\"flames\"]}")
            .code("caution flames", CAUTION)
            .found("caution"));
  }

  @Test
  void theHazardOfAStatementIsNamedInTheHead() {
    assertEquals(
        List.of(
            "remark c1:2 The lesson does not name the hazard flames, of which this line is a caution. → write it into hazards in the metadata of the lesson"),
        new TestLesson()
            .head("{\"hazards\": [\"latex\"]}")
            .code("1 + 1\ncaution flames, latex")
            .found("caution"));
  }

  @Test
  void aValueThatSetsOffACautionIsToldOnce() {
    String values =
        "given P = 5 mW \"power of the laser\"\ngiven P_2 = 6 mW \"power of the other laser\"";
    assertEquals(
        List.of(
            "warning c1:1 A value sets off the caution of lasers, which the lesson does not name as a hazard. → write lasers into hazards in the metadata of the lesson, and caution lasers in a cell"),
        new TestLesson().code(values).found("caution"));
    assertEquals(
        List.of(),
        new TestLesson()
            .head("{\"hazards\": [\"lasers\"]}")
            .prose(LAST_WORD, CAUTION)
            .code(values)
            .found("caution"));
  }
}
