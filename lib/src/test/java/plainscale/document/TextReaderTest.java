package plainscale.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Texts as teachers type them, good and bad: what becomes of them, and what they are told. */
class TextReaderTest {
  private static final String HEAD = "---\nplainscale: 1\n---\n";

  @TempDir Path folder;

  /** Signs for what a table cannot show. */
  private static String typed(String text) {
    return text.replace("⏎", "\n")
        .replace("⇥", "\t")
        .replace("␍", "\r")
        .replace("␀", "\0")
        .replace("␛", "\u001b");
  }

  private static Lesson read(String text) throws LessonException {
    return Lesson.parse("bad.md", text);
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "refused-texts.tsv",
      delimiter = '\t',
      quoteCharacter = '\u0001',
      numLinesToSkip = 1)
  void whatIsMalformedIsRefusedWithItsLineAndTheRepair(String text, String sentence) {
    String told = assertThrows(LessonException.class, () -> read(typed(text)), text).sentence();
    assertEquals(sentence, told);
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "remarked-texts.tsv",
      delimiter = '\t',
      quoteCharacter = '\u0001',
      numLinesToSkip = 1)
  void whatWasMendedOrLooksWrongIsRemarked(String text, String remark) throws LessonException {
    assertEquals(List.of(remark), read(typed(text)).remarks());
  }

  /** How a text falls into cells: each as its kind, its id and its source. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "words⏎⏎more words                               | Prose words: words⏎⏎more words",
        "words⏎```plainscale⏎x = 2⏎```⏎words             | Prose words: words; Code x: x = 2; Prose words-2: words",
        "⏎⏎words⏎⏎⏎                                     | Prose words: words",
        "words⏎<!-- cell -->⏎words                       | Prose words: words; Prose words-2: words",
        "<!-- cell b -->⏎                                 | Prose b: ",
        "<!-- cell b role: note -->⏎words                | Prose b: words",
        "<!--cell b-->⏎words                              | Prose b: words",
        "<!-- a comment -->⏎words                         | Prose a-comment: <!-- a comment -->⏎words",
        "~~~plainscale⏎x = 2⏎~~~                         | Code x: x = 2",
        "``` Plainscale⏎x = 2⏎```                        | Code x: x = 2",
        "```plainscale a, role: text⏎x = 2⏎```           | Code a: x = 2",
        "```plainscale⏎```                                | Code cell: ",
        "```plainscale⏎⏎```                               | Code cell: ",
        "````plainscale⏎```⏎````                          | Code cell: ```",
        "- item⏎  ```plainscale⏎  x⏎  ```                | Prose item: - item⏎  ```plainscale⏎  x⏎  ```",
        "> ```plainscale⏎> x⏎> ```                        | Prose plainscale: > ```plainscale⏎> x⏎> ```",
        "````⏎```plainscale⏎```⏎````                      | Prose cell: ````⏎```plainscale⏎```⏎````",
        "~~~⏎```plainscale⏎```⏎~~~                        | Prose cell: ~~~⏎```plainscale⏎```⏎~~~",
        "<!-- a⏎```plainscale⏎```⏎-->                     | Prose a: <!-- a⏎```plainscale⏎```⏎-->",
        "```text⏎x⏎```                                    | Prose text: ```text⏎x⏎```",
        "```text-cell b⏎⏎words⏎```⏎words                 | Prose b: ⏎words; Prose words: words",
        "```raw-cell⏎x⏎```⏎words                          | Raw x: x; Prose words: words",
        "Heading⏎---⏎words                                | Prose heading: Heading⏎---⏎words",
        "given m = 2 g⏎```plainscale⏎given m = 2 g⏎```   | Prose given-m-g: given m = 2 g; Code given-m-g-2: given m = 2 g",
        "👩‍🔬 θ⏎                                           | Prose cell: 👩‍🔬 θ"
      })
  void aTextFallsIntoCells(String body, String cells) throws LessonException {
    String read =
        read(HEAD + typed(body)).cells().stream()
            .map(cell -> cell.getClass().getSimpleName() + " " + cell.id() + ": " + cell.source())
            .collect(Collectors.joining("; "));
    assertEquals(typed(cells), read.stripTrailing());
  }

  @Test
  void anIdThatIsWrittenKeepsItsCellAndOthersAvoidIt() throws LessonException {
    Lesson lesson = read(HEAD + "words\n\n<!-- cell words -->\nother\n");
    assertEquals(List.of("words-2", "words"), lesson.cells().stream().map(LessonCell::id).toList());
    assertEquals(List.of(), lesson.remarks());
  }

  @Test
  void aCellKnowsItsLine() throws LessonException {
    Lesson lesson = read(HEAD + "\nwords\n\n```plainscale\nx = 2\n```\n");
    assertEquals(List.of(5, 8), lesson.cells().stream().map(LessonCell::line).toList());
  }

  @Test
  void whatALessonAndACellSayOfThemselvesAreTheMetadataOfTheNotebook() throws LessonException {
    Lesson lesson =
        read(
            """
            ---
            plainscale: 1
            title: "Two balls: a charge"
            minutes: 45
            aims:
            - weigh
            - count
            hazards: [electrostatics, water]
            authors: [A. Nobody, 7, true, no]
            ---
            <!-- cell role: question, minutes: 5, lines: 3, blank: {student: all} -->
            How many?
            """);
    assertEquals("Two balls: a charge", lesson.head().title().orElse(""));
    assertEquals(45, lesson.head().minutes().orElse(0));
    assertEquals(List.of("weigh", "count"), lesson.head().aims());
    assertEquals(List.of("electrostatics", "water"), lesson.head().hazards());
    assertEquals(
        "[\"A. Nobody\",7,true,\"no\"]", lesson.metadata().at("/plainscale/authors").toString());
    assertEquals("plainscale", lesson.metadata().at("/kernelspec/name").asText());
    CellHead cell = lesson.cells().get(0).head();
    assertEquals(Role.QUESTION, cell.role().orElse(null));
    assertEquals(5, cell.minutes().orElse(0));
    assertEquals(Blank.ALL, cell.blanks().get(Edition.STUDENT));
  }

  @Test
  void aFieldOfAWrongTypeIsKeptAndCountsAsNotThere() throws LessonException {
    String head = "---\nplainscale: 1\nminutes: [4]\ntitle: 7\naims: none\n---\n";
    Lesson lesson = read(head + "words\n");
    assertTrue(lesson.head().minutes().isEmpty());
    assertTrue(lesson.head().title().isEmpty());
    assertEquals(List.of(), lesson.head().aims());
    assertTrue(lesson.text().startsWith("---\nplainscale: 1\ntitle: 7\nminutes: [4]\n"));
  }

  @Test
  void carriageReturnsAtTheEndsOfLinesAreAConvention() throws LessonException {
    String text = HEAD + "words\n\n```plainscale\nx = 2\ny = 3\n```\n";
    Lesson feeds = read(text);
    Lesson both = read(text.replace("\n", "\r\n"));
    assertEquals(feeds, both);
    assertEquals("x = 2\ny = 3", both.cells().get(1).source());
  }

  @Test
  void aByteOrderMarkIsRemarked() throws LessonException {
    Lesson lesson = read("\uFEFF" + HEAD + "words\n");
    assertEquals("words", lesson.cells().get(0).source());
    assertEquals(
        List.of("Line 1: the byte-order mark was passed over; save without it."), lesson.remarks());
  }

  @Test
  void bytesThatAreNoTextAreRefused() throws IOException {
    byte[] utf16 = (HEAD + "words\n").getBytes(StandardCharsets.UTF_16);
    Path file = Files.write(folder.resolve("wide.md"), utf16);
    String told = assertThrows(LessonException.class, () -> Lesson.read(file)).sentence();
    assertEquals("wide.md is not a text in UTF-8, so it is no lesson; save it as UTF-8.", told);
  }

  @Test
  void withoutAnEndingTheBeginningOfTheFileTells() throws LessonException {
    assertEquals("words", Lesson.parse("lesson", HEAD + "words").cells().get(0).source());
    String told = assertThrows(LessonException.class, () -> Lesson.parse("a.txt", "x")).sentence();
    assertEquals(
        "a.txt is neither a notebook nor the text of a lesson, which begins with a line --- and a line plainscale: 1.",
        told);
  }

  @Test
  void aLinkIsReadAsTheFileThatItPointsTo() throws IOException, LessonException {
    Path file = Files.writeString(folder.resolve("lesson.md"), HEAD + "words\n");
    Path link = Files.createSymbolicLink(folder.resolve("link.md"), file.getFileName());
    assertEquals("words", Lesson.read(link).cells().get(0).source());
    Path ring = folder.resolve("ring.md");
    Files.createSymbolicLink(ring, ring.getFileName());
    String told = assertThrows(LessonException.class, () -> Lesson.read(ring)).sentence();
    assertTrue(told.startsWith("ring.md cannot be read ("), told);
  }

  @Test
  void nestingWithoutEndIsReadOrRefused() throws LessonException {
    assertInstanceOf(LessonCell.Prose.class, read(HEAD + "> ".repeat(50_000)).cells().get(0));
    String brackets = "---\nplainscale: 1\na: " + "[".repeat(50_000) + "\n---\nx\n";
    assertThrows(LessonException.class, () -> read(brackets));
    String closed = "---\nplainscale: 1\na: " + "[".repeat(5000) + "]".repeat(5000) + "\n---\nx\n";
    assertEquals(
        "bad.md, line 3: brackets are nested more than 1000 deep.",
        assertThrows(LessonException.class, () -> read(closed)).sentence());
  }
}
