package plainscale.document;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A lesson: a title and cells, read from a notebook (nbformat 4).
 *
 * <pre>{@code
 * Lesson lesson = Lesson.read(Path.of("lesson.ipynb"));
 * }</pre>
 */
public record Lesson(String name, String title, List<LessonCell> cells, @Nullable Path home) {
  private static final long LARGEST = 50L << 20;

  /** Keeps its own copy of the cells. */
  public Lesson {
    cells = List.copyOf(cells);
  }

  /** A lesson that lies in no folder. */
  public Lesson(String name, String title, List<LessonCell> cells) {
    this(name, title, cells, null);
  }

  /** The folder in which its file lies, and with it the files that its cells may read. */
  public Optional<Path> folder() {
    return Optional.ofNullable(home);
  }

  /**
   * Reads a notebook file; its outputs are not read, since they are computed anew.
   *
   * @throws LessonException with a sentence that names the file
   */
  public static Lesson read(Path file) throws LessonException {
    String shown = file.getFileName() == null ? file.toString() : file.getFileName().toString();
    try {
      if (Files.isDirectory(file)) {
        throw new LessonException(shown + " is a folder; a lesson is a file.");
      }
      if (Files.size(file) > LARGEST) {
        throw new LessonException(
            shown + " is larger than 50 MB; clear the outputs in JupyterLab and save it again.");
      }
      Lesson lesson = parse(shown, Files.readString(file));
      return new Lesson(lesson.name, lesson.title, lesson.cells, file.toAbsolutePath().getParent());
    } catch (NoSuchFileException e) {
      throw new LessonException("There is no file " + file + ".");
    } catch (MalformedInputException e) {
      throw new LessonException(shown + " is not a text in UTF-8, so it is not a notebook.");
    } catch (IOException e) {
      throw new LessonException(shown + " cannot be read: " + e.getMessage() + ".");
    }
  }

  /** Reads the text of a notebook; {@code file} is its name in messages. */
  public static Lesson parse(String file, String json) throws LessonException {
    return NotebookReader.read(file, json);
  }

  /** The name of the file without its ending. */
  public String stem() {
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }
}
