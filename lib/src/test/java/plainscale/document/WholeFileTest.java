package plainscale.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file is written whole or not at all. */
class WholeFileTest {
  @TempDir Path folder;

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .map(f -> folder.relativize(f).toString())
          .filter(n -> !n.isEmpty())
          .sorted()
          .toList();
    }
  }

  private static String refused(Path file) {
    String sentence =
        assertThrows(LessonException.class, () -> WholeFile.write(file, "new")).sentence();
    assertTrue(sentence.endsWith(" Nothing was changed."), sentence);
    return sentence;
  }

  @Test
  void foldersAreMadeAndTheTextIsUtf8() throws Exception {
    WholeFile.write(folder.resolve("a/b/c.html"), "θ = 30°");
    assertEquals("θ = 30°", Files.readString(folder.resolve("a/b/c.html")));
    assertEquals(List.of("a", "a/b", "a/b/c.html"), names());
  }

  @Test
  void anOlderFileIsReplaced() throws Exception {
    Path file = Files.writeString(folder.resolve("a.html"), "old and longer");
    WholeFile.write(file, "new");
    assertEquals("new", Files.readString(file));
    assertEquals(List.of("a.html"), names());
  }

  @Test
  void whereTheFolderIsAFileNothingIsChanged() throws Exception {
    Path older = Files.writeString(folder.resolve("older"), "old");
    String sentence = refused(older.resolve("a.html"));
    assertTrue(sentence.contains(older.toString()), sentence);
    assertEquals("old", Files.readString(older));
    assertEquals(List.of("older"), names());
  }

  @Test
  void whereTheTargetIsAFolderWithFilesNothingIsChanged() throws Exception {
    Path target = Files.createDirectory(folder.resolve("a.html"));
    Files.writeString(target.resolve("older"), "old");
    String sentence = refused(target);
    assertTrue(sentence.contains(target.toString()), sentence);
    assertEquals("old", Files.readString(target.resolve("older")));
    assertEquals(List.of("a.html", "a.html/older"), names());
  }

  @Test
  void aTextThatCannotBeWrittenLeavesTheOlderFile() throws Exception {
    Path file = Files.writeString(folder.resolve("a.html"), "old");
    assertThrows(LessonException.class, () -> WholeFile.write(file, "lone surrogate \ud800"));
    assertEquals("old", Files.readString(file));
    assertEquals(List.of("a.html"), names());
  }
}
