package plainscale.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plainscale.document.LessonPair.Outcome;

/** A notebook and a text are kept in step, and nothing is lost on the way. */
class LessonPairTest {
  private static final String TEXT =
      """
      ---
      plainscale: 1
      ---

      Words.

      ```plainscale
      x = 2
      ```
      """;

  @TempDir Path folder;

  private Path text;
  private Path notebook;

  @BeforeEach
  void place() {
    text = folder.resolve("a.md");
    notebook = folder.resolve("a.ipynb");
  }

  private Outcome keep() throws LessonException {
    return LessonPair.of(LessonFile.of(text)).keep();
  }

  private String refused() {
    return assertThrows(LessonException.class, this::keep).sentence();
  }

  private static void replace(Path file, String word, String other) throws IOException {
    String before = Files.readString(file);
    assertTrue(before.contains(word), before);
    Files.writeString(file, before.replace(word, other));
  }

  private void forget() throws IOException {
    Files.writeString(
        notebook, Files.readString(notebook).replaceAll(",\\s*\"twin\": \"[^\"]*\"", ""));
  }

  private static void time(Path file, long seconds) throws IOException {
    Files.setLastModifiedTime(file, FileTime.fromMillis(seconds * 1000));
  }

  /** With an output, as after a run in Jupyter. */
  private void run() throws IOException {
    replace(notebook, "\"outputs\": []", "\"outputs\": [{\"output_type\": \"stream\"}]");
  }

  @Test
  void whatIsMissingIsMade() throws Exception {
    Files.writeString(text, TEXT);
    assertEquals(Outcome.NOTEBOOK_MADE, keep());
    assertEquals(Outcome.IN_STEP, keep());
    Files.delete(text);
    assertEquals(Outcome.TEXT_MADE, keep());
    assertEquals(TEXT, Files.readString(text));
    assertEquals(Outcome.IN_STEP, keep());
  }

  @Test
  void withNeitherThereIsNothingToKeep() {
    assertEquals("There is no file " + text + ".", refused());
  }

  @Test
  void theSideThatChangedWinsWhicheverIsNewer() throws Exception {
    Files.writeString(text, TEXT);
    keep();
    replace(text, "x = 2", "x = 3");
    time(text, 1000);
    time(notebook, 2000);
    assertEquals(Outcome.NOTEBOOK_MADE, keep());
    assertEquals("x = 3", Lesson.read(notebook).cells().get(1).source());
    replace(notebook, "x = 3", "x = 4");
    time(text, 2000);
    time(notebook, 1000);
    assertEquals(Outcome.TEXT_MADE, keep());
    assertEquals(TEXT.replace("x = 2", "x = 4"), Files.readString(text));
    assertEquals(Outcome.IN_STEP, keep());
  }

  @Test
  void whatBothSidesChangedAlikeIsInStepAndRemembered() throws Exception {
    Files.writeString(text, TEXT);
    keep();
    replace(text, "x = 2", "x = 3");
    replace(notebook, "x = 2", "x = 3");
    assertEquals(Outcome.IN_STEP, keep());
    replace(notebook, "x = 3", "x = 4");
    assertEquals(Outcome.TEXT_MADE, keep());
  }

  @Test
  void changesOfBothSidesAreRefusedWithBothNamesAndNothingChanges() throws Exception {
    Files.writeString(text, TEXT);
    keep();
    replace(text, "x = 2", "x = 3");
    replace(notebook, "x = 2", "x = 4");
    String left = Files.readString(text);
    String right = Files.readString(notebook);
    assertEquals(
        "%1$s and %2$s have both changed since they held the same. Keep one: “convert %1$s --force” makes the notebook from the text, “convert %2$s --force” the text from the notebook. Nothing was changed."
            .formatted(text, notebook),
        refused());
    assertEquals(left, Files.readString(text));
    assertEquals(right, Files.readString(notebook));
  }

  @Test
  void withoutADigestTheNewerFileWins() throws Exception {
    Files.writeString(text, TEXT);
    keep();
    replace(text, "x = 2", "x = 3");
    forget();
    time(text, 2000);
    time(notebook, 1000);
    assertEquals(Outcome.NOTEBOOK_MADE, keep());
    replace(notebook, "x = 3", "x = 4");
    forget();
    time(text, 1000);
    time(notebook, 2000);
    assertEquals(Outcome.TEXT_MADE, keep());
    assertTrue(Files.readString(notebook).contains("\"twin\": \"sha256-"));
  }

  @Test
  void withoutADigestAndAtEqualTimesDifferentContentsAreRefused() throws Exception {
    Files.writeString(text, TEXT);
    keep();
    replace(text, "x = 2", "x = 3");
    forget();
    time(text, 1000);
    time(notebook, 1000);
    assertTrue(
        refused()
            .startsWith(text + " and " + notebook + " differ, and nothing tells which is newer. "));
  }

  @Test
  void outputsAreNoChangeAndStayWhenTheTextIsMade() throws Exception {
    Files.writeString(text, TEXT);
    keep();
    run();
    String before = Files.readString(notebook);
    assertEquals(Outcome.IN_STEP, keep());
    assertEquals(before, Files.readString(notebook));
    replace(notebook, "x = 2", "x = 3");
    assertEquals(Outcome.TEXT_MADE, keep());
    assertTrue(Files.readString(notebook).contains("\"stream\""));
    replace(text, "x = 3", "x = 4");
    assertEquals(Outcome.NOTEBOOK_MADE, keep());
    assertFalse(Files.readString(notebook).contains("\"stream\""));
  }

  @Test
  void whatAFrontEndSaysOfTheKernelIsNoChange() throws Exception {
    Files.writeString(text, TEXT);
    keep();
    replace(notebook, "\"file_extension\": \".pls\"", "\"version\": \"9\"");
    String before = Files.readString(notebook);
    assertEquals(Outcome.IN_STEP, keep());
    assertEquals(before, Files.readString(notebook));
  }

  @Test
  void aTextThatIsWrittenInAnotherWayIsInStepAndStays() throws Exception {
    String other =
        "---\n# a remark\nplainscale:   1\n---\nWords.\n\n\n\n~~~plainscale x\nx = 2\n~~~\n";
    Files.writeString(text, TEXT);
    keep();
    Files.writeString(text, other);
    assertEquals(Outcome.IN_STEP, keep());
    assertEquals(other, Files.readString(text));
  }

  @Test
  void aTextKeepsItsLineEnds() throws Exception {
    Files.writeString(text, TEXT.replace("\n", "\r\n"));
    keep();
    replace(notebook, "x = 2", "x = 3");
    assertEquals(Outcome.TEXT_MADE, keep());
    assertEquals(TEXT.replace("x = 2", "x = 3").replace("\n", "\r\n"), Files.readString(text));
  }

  @Test
  void aSideThatCannotBeReadLeavesBoth() throws Exception {
    Files.writeString(text, TEXT);
    keep();
    Files.writeString(text, "no head");
    String before = Files.readString(notebook);
    assertTrue(refused().startsWith("a.md begins without a head"));
    assertEquals(before, Files.readString(notebook));
    assertEquals("no head", Files.readString(text));
  }

  @Test
  void aNotebookWithoutOurMetadataRemembersToo() throws Exception {
    Files.writeString(notebook, new Notebooks().code("x = 2").lesson().notebook());
    assertEquals(Outcome.TEXT_MADE, keep());
    ObjectNode metadata = Lesson.read(notebook).metadata();
    assertEquals(1, metadata.at("/plainscale/format").asInt());
    assertTrue(metadata.at("/plainscale/twin").asText().startsWith("sha256-"));
    assertEquals(Outcome.IN_STEP, keep());
  }

  @Test
  void whatSaysThatItIsALessonIsTold() throws Exception {
    assertTrue(says("a.md", TEXT));
    assertTrue(says("a.md", "\uFEFF\r\n---\r\ntitle: x\r\nplainscale: 1"));
    assertFalse(says("a.md", "# Title\n\nplainscale: 1\n"));
    assertFalse(says("a.md", "---\ntitle: x\n---\nplainscale: 1\n"));
    assertTrue(says("a.ipynb", "{\"nbformat\": 4}"));
    assertTrue(says("a.ipynb", "broken"));
    assertFalse(says("a.ipynb", "{\"metadata\": {\"language_info\": {\"name\": \"python\"}}}"));
  }

  private boolean says(String name, String content) throws Exception {
    return LessonFile.of(Files.writeString(folder.resolve(name), content)).saysLesson();
  }

  @Test
  void aNameTellsTheForm() throws LessonException {
    assertEquals(Path.of("x/a.b.ipynb"), LessonFile.of(Path.of("x/a.b.md")).other().path());
    assertEquals(Path.of("A.md"), LessonFile.of(Path.of("A.IPYNB")).other().path());
    assertEquals(
        "a.txt is no lesson by its name; the name of a notebook ends in .ipynb, that of a text in .md.",
        assertThrows(LessonException.class, () -> LessonFile.of(Path.of("a.txt"))).sentence());
  }
}
