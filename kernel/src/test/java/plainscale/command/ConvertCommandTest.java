package plainscale.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plainscale.document.Lesson;

/** {@code convert} on the command line. */
class ConvertCommandTest {
  private static final String TEXT =
      """
      ---
      plainscale: 1
      title: A small lesson
      ---

      Words.

      ```plainscale
      x = 2
      ```
      """;

  @TempDir private Path folder;
  private Path text;
  private Path notebook;
  private StringWriter out = new StringWriter();
  private StringWriter err = new StringWriter();

  @BeforeEach
  void write() throws IOException {
    text = Files.writeString(folder.resolve("a.md"), TEXT);
    notebook = folder.resolve("a.ipynb");
  }

  private int convert(Object... arguments) {
    out = new StringWriter();
    err = new StringWriter();
    String[] line =
        Stream.concat(Stream.of("convert"), Stream.of(arguments).map(Object::toString))
            .toArray(String[]::new);
    return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), line);
  }

  private String said() {
    return out.toString().strip();
  }

  private String refused() {
    return err.toString().strip();
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> folder.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .toList();
    }
  }

  private static void change(Path file) throws IOException {
    Files.writeString(file, Files.readString(file).replace("x = 2", "x = 3"));
  }

  @Test
  void aTextBecomesANotebookBesideItAndBack() throws Exception {
    assertEquals(0, convert(text));
    assertEquals(text + " → " + notebook, said());
    assertEquals("A small lesson", Lesson.read(notebook).title());
    Files.delete(text);
    assertEquals(0, convert(notebook));
    assertEquals(TEXT, Files.readString(text));
    assertEquals(List.of("a.ipynb", "a.md"), names());
  }

  @Test
  void aFileWithEqualContentIsInStepAndStays() throws IOException {
    convert(text);
    String before = Files.readString(notebook).replace("\"outputs\": []", "\"outputs\": [{}]");
    Files.writeString(notebook, before);
    assertEquals(0, convert(text));
    assertEquals(text + " and " + notebook + " are already in step", said());
    assertEquals(before, Files.readString(notebook));
  }

  @Test
  void aFileWithOtherContentIsReplacedByForceOnly() throws Exception {
    convert(text);
    change(notebook);
    String before = Files.readString(notebook);
    assertEquals(1, convert(text));
    assertEquals(
        notebook
            + " is there already and holds something else than "
            + text
            + "; add --force to replace it, or --both to let the side win that has changed. Nothing was changed.",
        refused());
    assertEquals(before, Files.readString(notebook));
    assertEquals(0, convert(text, "--force"));
    assertEquals("x = 2", Lesson.read(notebook).cells().get(1).source());
  }

  @Test
  void aFileThatIsNoLessonIsReplacedByForceOnly() throws IOException {
    Files.writeString(notebook, "my notes");
    assertEquals(1, convert(text));
    assertEquals("my notes", Files.readString(notebook));
    assertEquals(0, convert(text, "--force"));
    assertTrue(Files.readString(notebook).startsWith("{"));
  }

  @Test
  void anotherPlaceIsAFileOrAFolder() throws IOException {
    assertEquals(0, convert(text, "--out", folder.resolve("b/c.ipynb")));
    assertEquals(0, convert(text, "--out", folder.resolve("made")));
    assertEquals(List.of("a.md", "b/c.ipynb", "made/a.ipynb"), names());
  }

  @Test
  void anotherPlaceOfTheSameFormIsRefused() throws IOException {
    Path other = folder.resolve("b.md");
    assertEquals(1, convert(text, "--out", other));
    assertEquals(
        text
            + " and "
            + other
            + " are of the same form; from "
            + text
            + " comes a file that ends in .ipynb.",
        refused());
    Files.copy(text, other);
    assertEquals(1, convert(text, other, "--out", notebook));
    assertTrue(refused().startsWith("--out " + notebook + " is one file"), refused());
    assertEquals(List.of("a.md", "b.md"), names());
  }

  @Test
  void twoLessonsOfOneNameDoNotReplaceEachOther() throws IOException {
    Path other = folder.resolve("other/a.md");
    Files.createDirectory(other.getParent());
    Files.writeString(other, TEXT.replace("x = 2", "x = 3"));
    Path made = folder.resolve("made");
    assertEquals(1, convert(text, other, "--out", made, "--force"));
    assertEquals(
        "%s and %s would both become %s; convert them into two folders."
            .formatted(text, other, made.resolve("a.ipynb")),
        refused());
    assertTrue(Files.readString(made.resolve("a.ipynb")).contains("x = 2"));
  }

  @Test
  void aFolderStandsForTheLessonsInIt() throws IOException {
    Files.createDirectories(folder.resolve("more/.hidden"));
    Files.writeString(folder.resolve("more/b.md"), TEXT);
    Files.writeString(folder.resolve("more/.hidden/c.md"), TEXT);
    Files.writeString(folder.resolve("README.md"), "# No lesson\n");
    Files.writeString(
        folder.resolve("p.ipynb"),
        "{\"nbformat\": 4, \"metadata\": {\"kernelspec\": {\"language\": \"python\"}}}");
    Path made = folder.resolve("made");
    assertEquals(0, convert(folder, "--out", made));
    assertTrue(said().contains("README.md is no lesson; it was passed over"), said());
    assertTrue(said().contains("p.ipynb is no lesson; it was passed over"), said());
    assertTrue(Files.exists(made.resolve("a.ipynb")));
    assertTrue(Files.exists(made.resolve("more/b.ipynb")));
    assertFalse(Files.exists(made.resolve("README.ipynb")));
    assertFalse(Files.exists(made.resolve("more/.hidden/c.ipynb")));
  }

  @Test
  void aFolderWithBothFormsTellsWhetherTheyDiffer() throws IOException {
    convert(text);
    assertEquals(0, convert(folder));
    assertEquals(text + " and " + notebook + " are already in step", said());
    change(text);
    assertEquals(1, convert(folder, "--force"));
    assertEquals(
        text
            + " and "
            + notebook
            + " differ, and both are named; name the one that counts, or add --both. Nothing was changed.",
        refused());
  }

  @Test
  void aFolderWithoutLessonsIsRefused() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    assertEquals(1, convert(empty));
    assertTrue(refused().startsWith("There is no lesson in the folder " + empty), refused());
  }

  @Test
  void oneLessonThatFailsDoesNotKeepTheOthersBack() throws IOException {
    Path bad = Files.writeString(folder.resolve("bad.md"), "---\nplainscale: 1\n");
    assertEquals(1, convert(bad, text));
    assertEquals(
        "bad.md, line 1: the head that opens here is not closed; put a line --- after it.",
        refused());
    assertEquals(List.of("a.ipynb", "a.md", "bad.md"), names());
  }

  @Test
  void bothKeepsPairsInStepWhicheverIsNamed() throws Exception {
    assertEquals(0, convert(text, "--both"));
    assertEquals(text + " → " + notebook, said());
    assertEquals(0, convert(folder, "--both"));
    assertEquals(text + " and " + notebook + " are already in step", said());
    change(notebook);
    assertEquals(0, convert(text, "--both"));
    assertEquals(notebook + " → " + text, said());
    assertEquals(TEXT.replace("x = 2", "x = 3"), Files.readString(text));
    Files.delete(text);
    assertEquals(0, convert(text, "--both"), err.toString());
    assertTrue(Files.exists(text));
  }

  @Test
  void bothSidesChangedIsRefusedAndOneOfThemCanBeNamed() throws Exception {
    convert(text);
    change(text);
    Files.writeString(notebook, Files.readString(notebook).replace("Words.", "Words!"));
    assertEquals(1, convert(folder, "--both"));
    assertTrue(refused().startsWith(text + " and " + notebook + " have both changed"), refused());
    assertTrue(refused().contains("“convert " + notebook + " --force”"), refused());
    assertEquals(0, convert(notebook, "--force"));
    assertEquals(TEXT.replace("Words.", "Words!"), Files.readString(text));
    assertEquals(0, convert(folder, "--both"));
  }

  @Test
  void bothGoesWithNeitherForceNorOut() {
    assertEquals(2, convert(text, "--both", "--force"));
    assertTrue(refused().contains("leave out --force."), refused());
    assertEquals(2, convert(text, "--both", "--out", folder));
    assertTrue(refused().contains("leave out --out."), refused());
    assertFalse(Files.exists(notebook));
  }

  @Test
  void aLinkIsFollowedAndStays() throws IOException {
    Files.createDirectory(folder.resolve("elsewhere"));
    Path real = Files.writeString(folder.resolve("elsewhere/real.ipynb"), "older");
    Files.createSymbolicLink(notebook, real);
    Path link = Files.createSymbolicLink(folder.resolve("b.md"), text);
    assertEquals(0, convert(text, "--force"));
    assertTrue(Files.isSymbolicLink(notebook));
    assertTrue(Files.readString(real).contains("x = 2"));
    assertEquals(0, convert(link));
    assertTrue(Files.exists(folder.resolve("b.ipynb")));
  }

  @Test
  void whatTheReaderRemarksIsTold() throws IOException {
    Files.writeString(text, "\uFEFF" + TEXT);
    assertEquals(0, convert(text));
    assertTrue(said().startsWith(text + ": Line 1: the byte-order mark was passed over"), said());
  }

  @Test
  void runAndHandoutReadATextToo() throws IOException {
    assertEquals(0, Main.run(new PrintWriter(out), new PrintWriter(err), "run", text.toString()));
    assertTrue(out.toString().contains("== a.md: A small lesson"), out.toString());
    assertTrue(out.toString().contains("x = 2"), out.toString());
    Path made = folder.resolve("handouts");
    String[] handout = {"handout", text.toString(), "--out", made.toString()};
    assertEquals(0, Main.run(new PrintWriter(out), new PrintWriter(err), handout));
    assertTrue(Files.readString(made.resolve("a.html")).contains("A small lesson"));
  }

  @Test
  void whatTheReaderRemarksIsToldByRun() throws IOException {
    Files.writeString(text, TEXT.replace("```plainscale", "```plainscale rol: text"));
    assertEquals(
        0, Main.run(new PrintWriter(out), new PrintWriter(err, true), "run", text.toString()));
    assertEquals(text + ": Line 8: a cell says nothing as “rol”; did you mean role?", refused());
  }

  @Test
  void aTextWithAMistakeIsOneSentenceForRunAndHandout() throws IOException {
    Files.writeString(text, "# Words\n");
    for (String command : List.of("run", "handout")) {
      err = new StringWriter();
      assertEquals(
          1, Main.run(new PrintWriter(out), new PrintWriter(err, true), command, text.toString()));
      assertTrue(refused().startsWith("a.md begins without a head"), refused());
      assertEquals(1, refused().lines().count());
    }
  }
}
