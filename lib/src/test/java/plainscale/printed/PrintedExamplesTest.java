package plainscale.printed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.printed.Verdict.Outcome;

/**
 * Whether the project gets the textbooks' answers. The examples stand in {@code
 * src/test/resources/plainscale/printed}; the summary goes to {@code target/printed-examples.txt}.
 */
class PrintedExamplesTest {
  private static final Path FILES = Path.of("src/test/resources/plainscale/printed");
  private static final Path SUMMARY = Path.of("target/printed-examples.txt");
  private static final int FEWEST = 500;

  private static final List<Worked> EXAMPLES =
      ExampleReader.all(FILES).stream().map(Worked::of).toList();

  static List<Worked> examples() {
    return EXAMPLES;
  }

  @Test
  void noExampleIsLost() throws IOException {
    Summary summary = new Summary(EXAMPLES);
    summary.write(SUMMARY);
    System.out.println(summary.line());
    assertTrue(EXAMPLES.size() >= FEWEST, summary.line());
    assertEquals(
        EXAMPLES.size(), EXAMPLES.stream().map(worked -> worked.example().id()).distinct().count());
  }

  /** A book's constants are told by its answers. */
  @Test
  void someAnswersComeOutWithOneSetOfConstantsOnly() {
    List<BothSets.Match> matches = BothSets.of(EXAMPLES);
    assertTrue(matches.contains(BothSets.Match.CODATA_ONLY), BothSets.line(matches));
    assertTrue(matches.contains(BothSets.Match.TEXTBOOK_ONLY), BothSets.line(matches));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("examples")
  void theCellGivesThePrintedAnswers(Worked example) {
    List<String> failures =
        example.verdicts().stream()
            .filter(verdict -> verdict.outcome() == Outcome.FAIL)
            .map(Verdict::line)
            .toList();
    assertEquals(List.of(), failures);
  }
}
