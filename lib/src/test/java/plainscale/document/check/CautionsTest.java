package plainscale.document.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CautionsTest {
  private static final String LAST_WORD =
      "The rules of your school and those who are licensed to decide have the last word.";
  private static final String CAUTION = "{\"role\": \"caution\"}";
  private static final HazardNames TABLE = () -> List.of("open flame", "high voltage");

  @Test
  void aHazardNeedsACaution() {
    assertEquals(
        List.of(
            "error :0 The lesson names a hazard (open flame), and none of its cells is a caution. → write what to do about it in a text with role: \"caution\""),
        new TestLesson().head("{\"hazards\": [\"open flame\"]}").prose("# T").found("caution"));
    assertEquals(
        List.of(
            "error :0 The lesson names hazards (open flame, noise), and none of its cells is a caution. → write what to do about it in a text with role: \"caution\""),
        new TestLesson()
            .head("{\"hazards\": [\"open flame\", \"noise\"]}")
            .prose("# T\n\n> **Caution.** " + LAST_WORD)
            .found("caution"));
  }

  @Test
  void aHazardWithACautionIsInOrder() {
    assertEquals(
        List.of(),
        new TestLesson()
            .head("{\"hazards\": [\"open flame\"]}")
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
            .head("{\"hazards\": [\"open flme\", \"high voltage\", \"boredom\"]}")
            .prose(LAST_WORD, CAUTION);
    assertEquals(
        List.of(
            "remark :0 The table of hazards has none called “open flme”. → did you mean open flame?",
            "remark :0 The table of hazards has none called “boredom”. → "),
        lesson.found("caution", TABLE));
    assertEquals(List.of(), lesson.found("caution", List::of));
  }

  @Test
  void theTableOfHazardsIsReadWhereThereIsOne() {
    assertEquals(
        List.of("open flame", "noise"),
        List.copyOf(HazardNames.in("/plainscale/fixtures/hazards.tsv").all()));
    assertEquals(List.of(), List.copyOf(HazardNames.in("/plainscale/fixtures/none.tsv").all()));
  }
}
