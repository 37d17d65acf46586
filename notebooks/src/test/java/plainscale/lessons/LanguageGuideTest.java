package plainscale.lessons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The examples of LANGUAGE.md show what the guide says. */
class LanguageGuideTest {
  static List<Guide.Example> examples() throws IOException {
    return Guide.examples(Files.readString(Path.of("LANGUAGE.md")));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void theExampleShowsWhatTheGuideSays(Guide.Example example) {
    assertEquals(example.documented(), example.shown(), example.source());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "```plainscale\n1 + 1\n```\n",
        "```plainscale\n1 + 1\n```\n\nWords between.\n\n```text\n2\n```\n",
        "```text\n2\n```\n",
        "```plainscale\n1 + 1\n```\n\n```text\n2\n```\n\n```text\n2\n```\n",
        "```plainscale\n1 + 1\n```\n\n```plainscale\n1 + 1\n```\n\n```text\n2\n```\n",
        "No examples.\n"
      })
  void aGuideWithoutPairsOfBlocksIsRefused(String guide) {
    assertThrows(AssertionError.class, () -> Guide.examples(guide));
  }

  @ParameterizedTest
  @ValueSource(strings = {"2\nNote: more", "", "3"})
  void otherOutputThanTheProgramsIsSeen(String output) {
    String guide = "```plainscale\n1 + 1\n```\n\n```text\n" + output + "\n```\n";
    Guide.Example example = Guide.examples(guide).get(0);
    assertNotEquals(example.documented(), example.shown());
  }

  @Test
  void examplesBelowOneHeadingShareASheetAndOthersDoNot() {
    String use = "```plainscale\nx\n```\n```text\n…\n```\n";
    String define = "```plainscale\nx = 2\n```\n```text\nx = 2\n```\n";
    List<Guide.Example> examples =
        Guide.examples("## One\n" + define + use + "## Two\n" + use.repeat(1));
    assertEquals("x = 2", examples.get(1).shown());
    assertEquals(
        "I do not know “x” in this sheet.", examples.get(2).shown().lines().findFirst().orElse(""));
  }
}
