package plainscale.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
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

  @Test
  void aLinkStaysAndItsFileIsReplaced() throws Exception {
    Path file = Files.writeString(folder.resolve("a.html"), "old");
    Files.createDirectory(folder.resolve("links"));
    Path link = Files.createSymbolicLink(folder.resolve("links/b.html"), Path.of("../a.html"));
    Path second = Files.createSymbolicLink(folder.resolve("c.html"), link);
    WholeFile.write(second, "new");
    assertTrue(Files.isSymbolicLink(second) && Files.isSymbolicLink(link));
    assertEquals("new", Files.readString(file));
    assertEquals(List.of("a.html", "c.html", "links", "links/b.html"), names());
  }

  @Test
  void aLinkToWhatIsNotThereYetMakesIt() throws Exception {
    Path link = Files.createSymbolicLink(folder.resolve("b.html"), Path.of("made/a.html"));
    WholeFile.write(link, "new");
    assertEquals("new", Files.readString(folder.resolve("made/a.html")));
    assertTrue(Files.isSymbolicLink(link));
  }

  @Test
  void aLinkToItselfLeadsNowhere() throws Exception {
    Path ring = folder.resolve("ring.html");
    Files.createSymbolicLink(ring, ring.getFileName());
    assertEquals("The link " + ring + " leads nowhere. Nothing was changed.", refused(ring));
  }

  @Test
  void aFolderMayBeALink() throws Exception {
    Path real = Files.createDirectory(folder.resolve("real"));
    Path link = Files.createSymbolicLink(folder.resolve("link"), real);
    WholeFile.write(link.resolve("a.html"), "new");
    assertEquals("new", Files.readString(real.resolve("a.html")));
  }

  @Test
  void whoMayReadTheOlderFileMayReadTheNewOne() throws Exception {
    Path file = Files.writeString(folder.resolve("a.html"), "old");
    Assumptions.assumeTrue(
        file.getFileSystem().supportedFileAttributeViews().contains("posix"), "no such rights");
    Set<PosixFilePermission> mine = PosixFilePermissions.fromString("rw-r-----");
    Files.setPosixFilePermissions(file, mine);
    WholeFile.write(file, "new");
    assertEquals(mine, Files.getPosixFilePermissions(file));
  }
}
