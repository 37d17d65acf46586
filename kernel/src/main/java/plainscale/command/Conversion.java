package plainscale.command;

import java.util.List;
import plainscale.document.Lesson;
import plainscale.document.LessonException;
import plainscale.document.LessonFile;
import plainscale.document.Twin;

/**
 * One lesson from its one form to its other.
 *
 * @param source the file that counts
 * @param target the file that is made
 */
record Conversion(LessonFile source, LessonFile target) {

  /** What became of it, and what the reader of the source remarked. */
  record Report(String sentence, List<String> remarks) {}

  /**
   * Makes the target; one that is there and holds something else is replaced only by force.
   *
   * @throws LessonException if it is not, or if a file cannot be read or written
   */
  Report run(boolean force) throws LessonException {
    Lesson lesson = source.read();
    boolean there = target.exists();
    if (there && !force) {
      if (!holds(lesson)) {
        throw new LessonException(
            "%2$s is there already and holds something else than %1$s; add --force to replace it, or --both to let the side win that has changed. Nothing was changed."
                .formatted(source.path(), target.path()));
      }
      return new Report(inStep(), lesson.remarks());
    }
    target.write(lesson);
    return new Report(source.path() + " → " + target.path(), lesson.remarks());
  }

  /** Where both files were named: they are in step, or it is not told which one counts. */
  Report compare() throws LessonException {
    Lesson lesson = source.read();
    if (!holds(lesson)) {
      throw new LessonException(
          "%s and %s differ, and both are named; name the one that counts, or add --both. Nothing was changed."
              .formatted(source.path(), target.path()));
    }
    return new Report(inStep(), lesson.remarks());
  }

  private String inStep() {
    return source.path() + " and " + target.path() + " are already in step";
  }

  private boolean holds(Lesson lesson) throws LessonException {
    String digest = Twin.digest(lesson);
    try {
      return Twin.digest(target.read()).equals(digest);
    } catch (LessonException e) {
      return false; // it is no lesson
    }
  }
}
