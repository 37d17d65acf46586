package plainscale.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A place of a lesson in one of its forms, whether there is a file or not.
 *
 * @param path the file; a link stands for what it points to
 * @param form what its name ends in
 */
public record LessonFile(Path path, LessonForm form) {
  private static final int BEGINNING = 1 << 13; // bytes in which the first line ends
  private static final int LARGEST_HEAD = 1 << 20; // bytes in which a head says what it is

  /**
   * The file of that name.
   *
   * @throws LessonException if its ending is of neither form
   */
  public static LessonFile of(Path path) throws LessonException {
    LessonForm form =
        LessonForm.ofName(path.toString())
            .orElseThrow(
                () ->
                    new LessonException(
                        path
                            + " is no lesson by its name; the name of a notebook ends in .ipynb, that of a text in .md."));
    return new LessonFile(path, form);
  }

  /** The place of the other form in that folder. */
  public LessonFile other(Path folder) {
    String name = String.valueOf(path.getFileName());
    String stem = name.substring(0, name.length() - form.ending().length());
    return new LessonFile(folder.resolve(stem + form.other().ending()), form.other());
  }

  /** The place of the other form beside it. */
  public LessonFile other() {
    Path folder = path.getParent();
    return other(folder == null ? Path.of("") : folder);
  }

  /** Whether there is a file. */
  public boolean exists() {
    return Files.exists(path);
  }

  /**
   * Whether the file says that it is a lesson, as a folder has other notebooks and texts too. One
   * that cannot be read may be one.
   */
  public boolean saysLesson() {
    try {
      if (form == LessonForm.TEXT) {
        return TextHead.isOurs(
            TextLines.of(beginning(LARGEST_HEAD).replace("\u00EF\u00BB\u00BF", "")));
      }
      try (Reader reader = Files.newBufferedReader(path)) {
        return !NotebookReader.isOfOtherLanguage(reader);
      }
    } catch (IOException e) {
      return true;
    }
  }

  /** Reads the lesson in it. */
  public Lesson read() throws LessonException {
    return Lesson.read(path);
  }

  /**
   * Writes a lesson there, whole or not at all: a text with the line ends of the text that it
   * replaces, a notebook without outputs and with the digest of its content.
   */
  public void write(Lesson lesson) throws LessonException {
    if (form == LessonForm.NOTEBOOK) {
      WholeFile.write(path, Twin.remember(lesson).notebook());
    } else {
      String text = lesson.text();
      WholeFile.write(path, endsInCrLf() ? TextLines.withCrLf(text) : text);
    }
  }

  private boolean endsInCrLf() {
    try {
      return TextLines.endInCrLf(beginning(BEGINNING));
    } catch (IOException e) {
      return false; // there is none, or none that can be read
    }
  }

  /** The first bytes, each as a sign. */
  private String beginning(int most) throws IOException {
    try (InputStream bytes = Files.newInputStream(path)) {
      return new String(bytes.readNBytes(most), StandardCharsets.ISO_8859_1);
    }
  }

  /** Puts a digest into the notebook that is there, of which all else stays, outputs too. */
  void remember(String digest) throws LessonException {
    try {
      JsonNode notebook = LessonJson.MAPPER.readTree(Files.readString(path));
      if (notebook instanceof ObjectNode object
          && Twin.put(object.withObjectProperty("metadata"), digest)) {
        WholeFile.write(path, LessonJson.text(object));
      }
    } catch (IOException e) {
      throw new LessonException(path + " cannot be read: " + e.getMessage() + ".");
    }
  }
}
