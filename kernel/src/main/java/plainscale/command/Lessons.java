package plainscale.command;

import java.io.PrintWriter;
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

  /** Reads them; what their readers remark is written there. */
  static List<Lesson> of(List<Path> files, PrintWriter remarks) throws LessonException {
    List<Lesson> lessons = new ArrayList<>();
    if (files.isEmpty()) {
      for (Map.Entry<String, String> shipped : ShippedLessons.notebooks().entrySet()) {
        lessons.add(Lesson.parse(shipped.getKey(), shipped.getValue()));
      }
    }
    for (Path file : files) {
      Lesson lesson = Lesson.read(file);
      lesson.remarks().forEach(remark -> remarks.println(file + ": " + remark));
      lessons.add(lesson);
    }
    remarks.flush();
    return lessons;
  }
}
