package plainscale.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DataFolderTest {
  @TempDir Path root;
  private DataFolder folder;

  @BeforeEach
  void files() throws IOException {
    Path notebooks = Files.createDirectories(root.resolve("notebooks/sub"));
    Files.writeString(root.resolve("secret.csv"), "a\n1\n");
    Files.createDirectory(root.resolve("notebooks-other"));
    Files.writeString(root.resolve("notebooks-other/x.csv"), "a\n1\n");
    Files.writeString(root.resolve("notebooks/balls.csv"), "d (cm)\n14.0\n");
    Files.writeString(notebooks.resolve("deep.csv"), "d (cm)\n14.0\n");
    Files.createSymbolicLink(root.resolve("notebooks/out.csv"), root.resolve("secret.csv"));
    Files.createSymbolicLink(root.resolve("notebooks/up"), root);
    Files.createSymbolicLink(root.resolve("notebooks/in.csv"), Path.of("balls.csv"));
    Files.createSymbolicLink(root.resolve("notebooks/null.csv"), Path.of("/dev/null"));
    folder = new DataFolder(root.resolve("notebooks"));
  }

  @Test
  void filesInsideAreRead() {
    assertEquals(1, folder.table("balls.csv").rows());
    assertEquals(1, folder.table("sub/deep.csv").rows());
    assertEquals(1, folder.table("sub/../balls.csv").rows());
    assertEquals(1, folder.table("in.csv").rows());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "../secret.csv|leads out of the notebook's folder",
        "sub/../../secret.csv|leads out of the notebook's folder",
        "../notebooks-other/x.csv|leads out of the notebook's folder",
        "out.csv|leads out of the notebook's folder",
        "up/secret.csv|leads out of the notebook's folder",
        "null.csv|leads out of the notebook's folder",
        "/etc/passwd|is not a name beside the notebook",
        "C:\\data.csv|is not a name beside the notebook",
        "\\\\server\\x.csv|is not a name beside the notebook",
        "~/x.csv|is not a name beside the notebook",
        "file:///etc/passwd|is not a name beside the notebook",
        "''|is not a name beside the notebook",
        "sub|is a folder, not a file",
        ".|is a folder, not a file",
        "up/none.csv|There is no file",
      })
  void everythingElseIsRefused(String name, String sentence) {
    DataException e = assertThrows(DataException.class, () -> folder.bytes(name));
    assertTrue(e.sentence().contains(sentence), e.sentence());
    assertFalse(e.sentence().contains(root.toString()), e.sentence());
    assertFalse(e.repairs().contains("secret.csv"));
  }

  @Test
  void aZeroByteInAName() {
    assertThrows(DataException.class, () -> folder.bytes("a\0b.csv"));
  }

  @Test
  void aNameNearbyIsOffered() {
    DataException e = assertThrows(DataException.class, () -> folder.bytes("bals.csv"));
    assertEquals("There is no file “bals.csv” beside the notebook.", e.sentence());
    assertEquals(List.of("balls.csv"), e.repairs());
  }

  @Test
  void aLargeFileIsRefused() throws IOException {
    try (RandomAccessFile large =
        new RandomAccessFile(root.resolve("notebooks/large.csv").toFile(), "rw")) {
      large.setLength(Limits.BYTES + 1L);
    }
    DataException e = assertThrows(DataException.class, () -> folder.bytes("large.csv"));
    assertEquals("“large.csv” is larger than 64 MB.", e.sentence());
  }
}
