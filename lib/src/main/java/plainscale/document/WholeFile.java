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

/**
 * Writes a file whole or not at all: beside its place first, then moved. A link stays; what it
 * points to is replaced. Who may read and write the older file may do so with the new one.
 */
public final class WholeFile {
  private static final int MOST_LINKS = 40; // one after another, as in Linux

  private WholeFile() {}

  /**
   * Writes the text as UTF-8, making the folder if needed.
   *
   * @throws LessonException with a sentence that names the place
   */
  public static void write(Path file, String text) throws LessonException {
    Path place = behindLinks(file);
    Path folder = Objects.requireNonNull(place.toAbsolutePath().getParent(), "a file has a folder");
    try {
      if (!Files.isDirectory(folder)) {
        Files.createDirectories(folder);
      }
      Path beside =
          folder.resolve(
              "." + UUID.randomUUID() + ".part"); // not a temporary file: those are private
      try {
        Files.writeString(beside, text);
        permit(place, beside);
        move(beside, place);
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

  private static Path behindLinks(Path file) throws LessonException {
    Path place = file;
    for (int i = 0; i < MOST_LINKS; i++) {
      if (!Files.isSymbolicLink(place)) {
        return place;
      }
      try {
        place = place.resolveSibling(Files.readSymbolicLink(place));
      } catch (IOException e) {
        break;
      }
    }
    throw new LessonException("The link " + file + " leads nowhere. Nothing was changed.");
  }

  private static void permit(Path older, Path newer) throws IOException {
    if (Files.exists(older)
        && older.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      Files.setPosixFilePermissions(newer, Files.getPosixFilePermissions(older));
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
