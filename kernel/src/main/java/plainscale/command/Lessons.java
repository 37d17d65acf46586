package plainscale.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import plainscale.document.Lesson;
import plainscale.document.LessonException;
import plainscale.lessons.ShippedLessons;

/** The lessons that a command line names; without names, those that ship. */
final class Lessons {
  private Lessons() {}

  static List<Lesson> of(List<Path> files) throws LessonException {
    List<Lesson> lessons = new ArrayList<>();
    if (files.isEmpty()) {
      for (Map.Entry<String, String> shipped : ShippedLessons.texts().entrySet()) {
        lessons.add(Lesson.parse(shipped.getKey(), shipped.getValue()));
      }
    }
    for (Path file : files) {
      lessons.add(Lesson.read(file));
    }
    return lessons;
  }
}
