package plainscale.lessons;

import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import plainscale.document.Lesson;
import plainscale.document.LessonException;
import plainscale.document.WrittenIn;

/** The lessons that ship and are written in the notation; one in Java is the kernel's to test. */
final class NotationLessons {
  private NotationLessons() {}

  static SortedMap<String, String> notebooks() {
    return inNotation(ShippedLessons.notebooks());
  }

  static SortedMap<String, String> texts() {
    return inNotation(ShippedLessons.texts());
  }

  private static SortedMap<String, String> inNotation(Map<String, String> files) {
    SortedMap<String, String> lessons = new TreeMap<>(files);
    lessons.entrySet().removeIf(file -> isJava(file.getKey(), file.getValue()));
    return lessons;
  }

  private static boolean isJava(String file, String text) {
    try {
      return Lesson.parse(file, text).writtenIn() == WrittenIn.JAVA;
    } catch (LessonException e) {
      throw new AssertionError(e);
    }
  }
}
