package plainscale.lessons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.document.Lesson;
import plainscale.document.LessonCell;
import plainscale.document.LessonException;
import plainscale.document.WorkedLesson;
import plainscale.document.WrittenIn;
import plainscale.render.Renderers;
import plainscale.sheet.Result;

/**
 * The examples of FORMAT.md: a block {@code markdown} is a lesson, or its cells without a head. It
 * is read and runs without mistakes and comes back as it stands; where a block {@code text}
 * follows, that is what is told about it.
 */
class FormatGuideTest {
  private static final Parser PARSER =
      Parser.builder().includeSourceSpans(IncludeSourceSpans.BLOCKS).build();
  private static final String HEAD = "---\nplainscale: 1\n---\n\n";

  record Example(int line, String text, String told) {
    /** Whatever stands without a head and is not told to lack it has one left out. */
    String whole() {
      return text.startsWith("---") || !told.isEmpty() ? text : HEAD + text;
    }

    @Override
    public String toString() {
      return "line " + line;
    }
  }

  static List<Example> examples() throws IOException {
    List<Example> examples = new ArrayList<>();
    Node node = PARSER.parse(Files.readString(Path.of("FORMAT.md"))).getFirstChild();
    for (; node != null; node = node.getNext()) {
      if (node instanceof FencedCodeBlock block && block.getInfo().equals("markdown")) {
        int line = block.getSourceSpans().get(0).getLineIndex() + 1;
        examples.add(new Example(line, block.getLiteral(), told(block.getNext())));
      }
    }
    assertFalse(examples.isEmpty(), "the guide has no examples");
    return examples;
  }

  private static String told(Node next) {
    return next instanceof FencedCodeBlock block && block.getInfo().equals("text")
        ? block.getLiteral().stripTrailing()
        : "";
  }

  @ParameterizedTest
  @MethodSource("examples")
  void whatIsToldIsWhatTheGuideSays(Example example) {
    String told;
    try {
      told = String.join("\n", Lesson.parse("lesson.md", example.whole()).remarks());
    } catch (LessonException e) {
      told = e.sentence();
    }
    assertEquals(example.told(), told);
  }

  @ParameterizedTest
  @MethodSource("examples")
  void aGoodExampleRunsAndComesBackAsItStands(Example example) throws LessonException {
    if (!example.told().isEmpty()) {
      return; // the other test
    }
    Lesson lesson = Lesson.parse("lesson.md", example.whole());
    assertEquals(example.whole(), lesson.text());
    if (lesson.writtenIn() == WrittenIn.JAVA) {
      return; // run by the kernel's tests
    }
    List<Result> mistakes =
        WorkedLesson.run(lesson, done -> {}).cells().stream()
            .flatMap(cell -> cell.results().stream())
            .filter(Result.Mistaken.class::isInstance)
            .toList();
    assertEquals("", Renderers.text(mistakes));
  }

  @Test
  void theFirstExampleIsAWholeLessonOfSomeTwentyLines() throws IOException, LessonException {
    Example first = examples().get(0);
    long lines = first.text().lines().filter(line -> !line.isBlank()).count();
    assertTrue(first.text().startsWith("---\n") && lines <= 20, lines + " lines");
    Lesson lesson = Lesson.parse("drop.md", first.text());
    assertEquals(5, lesson.cells().size());
    int minutes = lesson.cells().stream().mapToInt(cell -> cell.head().minutes().orElse(0)).sum();
    assertEquals(lesson.head().minutes().orElse(0), minutes);
  }

  @Test
  void theNamesInTheGuideAreThoseOfItsCells() throws IOException, LessonException {
    String guide = Files.readString(Path.of("FORMAT.md"));
    String names =
        examples().stream()
            .filter(example -> example.text().contains("cell guess"))
            .flatMap(example -> names(example).stream())
            .collect(Collectors.joining(" "));
    assertEquals("guess nothing-is-said-of count", names);
    assertTrue(guide.contains("the second one above is `nothing-is-said-of`"));
  }

  private static List<String> names(Example example) {
    try {
      return Lesson.parse("lesson.md", example.whole()).cells().stream()
          .map(LessonCell::id)
          .toList();
    } catch (LessonException e) {
      throw new AssertionError(e.sentence(), e);
    }
  }
}
