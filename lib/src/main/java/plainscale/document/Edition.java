package plainscale.document;

import java.util.Locale;
import java.util.Optional;

/** For whom a lesson is printed. */
public enum Edition {
  /** The worked example as the notebook shows it, without what is for the teacher. */
  WORKED,
  /** With the key, notes, timing, cautions and common slips. */
  TEACHER,
  /** With blanks to fill in by hand; nothing of the key is in it. */
  STUDENT,
  /** Large, one step at a time. */
  PROJECTOR;

  /** The edition as it is written in a lesson and on the command line. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The edition of that word. */
  public static Optional<Edition> named(String word) {
    return ByWord.find(values(), Edition::word, word);
  }
}
