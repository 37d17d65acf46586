package plainscale.document;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.MalformedInputException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A lesson: what it says of itself, and cells, read from a notebook (nbformat 4) or a text.
 *
 * <pre>{@code
 * Lesson lesson = Lesson.read(Path.of("lesson.ipynb"));
 * }</pre>
 *
 * @param name the name of its file
 * @param metadata all the metadata of its notebook; not to be changed
 * @param cells its cells, in order
 * @param remarks what the reader of the file mended or left out
 * @param home the folder in which its file lies
 */
public record Lesson(
    String name,
    ObjectNode metadata,
    List<LessonCell> cells,
    List<String> remarks,
    @Nullable Path home) {
  private static final long LARGEST = 1L << 26; // bytes of a text

  /** Keeps its own copies of the lists. */
  public Lesson {
    cells = List.copyOf(cells);
    remarks = List.copyOf(remarks);
  }

  /** A lesson that lies in no folder. */
  public Lesson(String name, ObjectNode metadata, List<LessonCell> cells) {
    this(name, metadata, cells, List.of(), null);
  }

  /** The folder in which its file lies, and with it the files that its cells may read. */
  public Optional<Path> folder() {
    return Optional.ofNullable(home);
  }

  /** The same in that folder. */
  public Lesson in(@Nullable Path folder) {
    return new Lesson(name, metadata, cells, remarks, folder);
  }

  /**
   * Reads a lesson from a notebook, whose outputs are passed over since they are computed anew, or
   * from a text. The ending of the name tells which ({@code .ipynb}, {@code .md}), else the
   * beginning of the file.
   *
   * @throws LessonException with a sentence that names the file
   */
  public static Lesson read(Path file) throws LessonException {
    String shown = file.getFileName() == null ? file.toString() : file.getFileName().toString();
    if (Files.isDirectory(file)) {
      throw new LessonException(shown + " is a folder; a lesson is a file.");
    }
    try {
      return read(file, shown).in(file.toAbsolutePath().getParent());
    } catch (NoSuchFileException e) {
      throw new LessonException("There is no file " + file + ".");
    } catch (MalformedInputException e) {
      throw new LessonException(
          shown + " is not a text in UTF-8, so it is no lesson; save it as UTF-8.");
    } catch (AccessDeniedException e) {
      throw new LessonException(shown + " may not be read; look who may read it.");
    } catch (FileSystemException e) {
      String reason = e.getReason() == null ? "" : " (" + e.getReason() + ")";
      throw new LessonException(shown + " cannot be read" + reason + ".");
    } catch (IOException e) {
      throw new LessonException(shown + " cannot be read: " + e.getMessage() + ".");
    }
  }

  private static Lesson read(Path file, String shown) throws LessonException, IOException {
    if (LessonForm.ofName(shown).equals(Optional.of(LessonForm.NOTEBOOK))) {
      try (var reader = Files.newBufferedReader(file)) {
        return NotebookReader.read(shown, reader);
      }
    }
    if (Files.size(file) > LARGEST) {
      throw new LessonException(shown + " has more than 64 megabytes; a lesson has less.");
    }
    return parse(shown, Files.readString(file));
  }

  /** Reads a lesson from text in either form; {@code file} is its name in messages. */
  public static Lesson parse(String file, String text) throws LessonException {
    Optional<LessonForm> form = LessonForm.ofName(file).or(() -> LessonForm.ofBeginning(text));
    if (form.isEmpty()) {
      throw new LessonException(
          file
              + " is neither a notebook nor the text of a lesson, which begins with a line --- and a line plainscale: 1.");
    }
    if (form.get() == LessonForm.TEXT) {
      return TextReader.read(file, text);
    }
    try {
      return NotebookReader.read(file, new StringReader(text));
    } catch (IOException e) {
      throw new LessonException(file + " cannot be read: " + e.getMessage() + ".");
    }
  }

  /** The lesson as a notebook (nbformat 4.5) without outputs. */
  public String notebook() {
    return NotebookWriter.write(this);
  }

  /**
   * The lesson as a text: a head, then CommonMark with fenced cells. Equal lessons give equal
   * texts.
   *
   * @throws LessonException if it holds half of a character, or is written in a newer format
   */
  public String text() throws LessonException {
    return TextWriter.write(this);
  }

  /** What it says of itself under our key. */
  public LessonHead head() {
    return LessonHead.of(metadata);
  }

  /** What its cells are written in. */
  public WrittenIn writtenIn() {
    return WrittenIn.of(metadata).orElse(WrittenIn.NOTATION);
  }

  /** The title that it gives itself, else its first heading, else the name of the file. */
  public String title() {
    return head()
        .title()
        .or(
            () ->
                cells.stream()
                    .filter(LessonCell.Prose.class::isInstance)
                    .flatMap(cell -> cell.source().lines())
                    .filter(line -> line.startsWith("# "))
                    .map(line -> line.substring(2).strip())
                    .findFirst())
        .orElse(name);
  }

  /** The name of the file without its ending. */
  public String stem() {
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }
}
