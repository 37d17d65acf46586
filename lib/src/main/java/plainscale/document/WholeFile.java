package plainscale.document;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Objects;
import java.util.UUID;

/** Writes a file whole or not at all: beside its place first, then moved. */
public final class WholeFile {
  private WholeFile() {}

  /**
   * Writes the text as UTF-8, making the folder if needed.
   *
   * @throws LessonException with a sentence that names the place
   */
  public static void write(Path file, String text) throws LessonException {
    Path folder = Objects.requireNonNull(file.toAbsolutePath().getParent(), "a file has a folder");
    try {
      Files.createDirectories(folder);
      Path beside =
          folder.resolve(
              "." + UUID.randomUUID() + ".part"); // not a temporary file: those are private
      try {
        Files.writeString(beside, text);
        move(beside, file);
      } finally {
        Files.deleteIfExists(beside);
      }
    } catch (AccessDeniedException e) {
      throw new LessonException(
          "The folder "
              + folder
              + " does not let me write; choose another one. Nothing was changed.");
    } catch (FileSystemException e) {
      String reason = e.getReason() == null ? "" : " (" + e.getReason() + ")";
      throw new LessonException("I cannot write " + file + reason + ". Nothing was changed.");
    } catch (IOException e) {
      throw new LessonException(
          "I cannot write " + file + ": " + e.getMessage() + ". Nothing was changed.");
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
