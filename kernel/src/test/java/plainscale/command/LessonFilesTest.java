package plainscale.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plainscale.document.Lesson;
import plainscale.document.LessonException;
import plainscale.document.LessonFile;

/** The lessons that a folder holds. */
class LessonFilesTest {
  private static final String TEXT = "---\nplainscale: 1\n---\n\nWords.\n";

  @TempDir private Path folder;
  private Path text;
  private Path notebook;

  @BeforeEach
  void write() throws IOException, LessonException {
    text = Files.writeString(folder.resolve("a.md"), TEXT);
    notebook = folder.resolve("a.ipynb");
    LessonFile.of(notebook).write(Lesson.read(text));
    Files.writeString(folder.resolve("README.md"), "# Words\n");
  }

  @Test
  void aFolderHasItsLessonsAndTellsWhatIsNone() throws LessonException {
    LessonFiles found = LessonFiles.in(folder);
    assertEquals(List.of(notebook, text), found.lessons());
    assertEquals(List.of(folder.resolve("README.md")), found.others());
  }

  @Test
  void ofTwoFilesThatHoldTheSameTheTextIsLookedAt() throws IOException, LessonException {
    assertEquals(List.of(text), LessonFiles.in(folder).once());
    Files.writeString(text, TEXT + "\nMore words.\n");
    assertEquals(List.of(notebook, text), LessonFiles.in(folder).once());
    Files.writeString(notebook, "broken");
    assertEquals(List.of(notebook, text), LessonFiles.in(folder).once());
  }

  @Test
  void aFileThatIsNamedStandsForItself() throws LessonException {
    Path readme = folder.resolve("README.md");
    assertEquals(List.of(readme), LessonFiles.in(readme).once());
  }

  @Test
  void aFolderWithoutLessonsIsRefused() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    String told = assertThrows(LessonException.class, () -> LessonFiles.in(empty)).sentence();
    assertEquals(
        "There is no lesson in the folder "
            + empty
            + ": no notebook (.ipynb), and no text (.md) with a head.",
        told);
  }
}
