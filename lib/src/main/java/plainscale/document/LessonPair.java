package plainscale.document;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.attribute.FileTime;
import java.util.Optional;

/**
 * The notebook and the text of one lesson, kept in step: the side wins that has changed since both
 * held the same, which the notebook remembers as a digest.
 *
 * @param text the text
 * @param notebook the notebook
 */
public record LessonPair(LessonFile text, LessonFile notebook) {
  private static final String REPAIR =
      " Keep one: “convert %1$s --force” makes the notebook from the text,"
          + " “convert %2$s --force” the text from the notebook. Nothing was changed.";

  /** What was done. */
  public enum Outcome {
    /** Both hold the same. */
    IN_STEP,
    /** The text was made from the notebook. */
    TEXT_MADE,
    /** The notebook was made from the text. */
    NOTEBOOK_MADE
  }

  /** The pair to which a file belongs. */
  public static LessonPair of(LessonFile either) {
    return either.form() == LessonForm.TEXT
        ? new LessonPair(either, either.other())
        : new LessonPair(either.other(), either);
  }

  /**
   * Brings both into step; what is missing is made.
   *
   * @throws LessonException if both sides changed, or one cannot be read or written; then the files
   *     are as before
   */
  public Outcome keep() throws LessonException {
    if (!notebook.exists()) {
      return makeNotebook(text.read());
    }
    Lesson there = notebook.read();
    String digest = Twin.digest(there);
    if (!text.exists()) {
      return makeText(there, digest);
    }
    Lesson written = text.read();
    String textDigest = Twin.digest(written);
    if (digest.equals(textDigest)) {
      notebook.remember(digest);
      return Outcome.IN_STEP;
    }
    return textWins(Twin.remembered(there), textDigest, digest)
        ? makeNotebook(written)
        : makeText(there, digest);
  }

  private boolean textWins(Optional<String> common, String textDigest, String notebookDigest)
      throws LessonException {
    if (common.isEmpty()) {
      return isTextNewer();
    }
    if (common.get().equals(notebookDigest)) {
      return true;
    }
    if (common.get().equals(textDigest)) {
      return false;
    }
    throw refused("%1$s and %2$s have both changed since they held the same.");
  }

  /** Without a digest the times of the files tell. */
  private boolean isTextNewer() throws LessonException {
    try {
      FileTime textTime = Files.getLastModifiedTime(text.path());
      int order = textTime.compareTo(Files.getLastModifiedTime(notebook.path()));
      if (order != 0) {
        return order > 0;
      }
    } catch (IOException e) {
      // told below
    }
    throw refused("%1$s and %2$s differ, and nothing tells which is newer.");
  }

  private LessonException refused(String why) {
    return new LessonException((why + REPAIR).formatted(text.path(), notebook.path()));
  }

  private Outcome makeNotebook(Lesson lesson) throws LessonException {
    notebook.write(lesson);
    return Outcome.NOTEBOOK_MADE;
  }

  private Outcome makeText(Lesson lesson, String digest) throws LessonException {
    text.write(lesson);
    notebook.remember(digest);
    return Outcome.TEXT_MADE;
  }
}
