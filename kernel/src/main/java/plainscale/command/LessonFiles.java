package plainscale.command;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import plainscale.document.LessonException;
import plainscale.document.LessonFile;
import plainscale.document.LessonForm;
import plainscale.document.Twin;

/**
 * The lessons that a place on the command line means.
 *
 * @param lessons the files of lessons, in the order of their names
 * @param others files that look like lessons by their names and say that they are none
 */
record LessonFiles(List<Path> lessons, List<Path> others) {

  LessonFiles {
    lessons = List.copyOf(lessons);
    others = List.copyOf(others);
  }

  /**
   * A file itself; of a folder the lessons in it and in its folders, hidden ones left out.
   *
   * @throws LessonException if the folder has none, or cannot be read
   */
  static LessonFiles in(Path place) throws LessonException {
    if (!Files.isDirectory(place)) {
      return new LessonFiles(List.of(place), List.of());
    }
    Collector found = new Collector(place);
    try {
      Files.walkFileTree(place, found);
    } catch (IOException e) {
      throw new LessonException("The folder " + place + " cannot be read: " + e.getMessage() + ".");
    }
    if (found.lessons.isEmpty()) {
      throw new LessonException(
          "There is no lesson in the folder "
              + place
              + ": no notebook (.ipynb), and no text (.md) with a head.");
    }
    Collections.sort(found.lessons);
    Collections.sort(found.others);
    return new LessonFiles(found.lessons, found.others);
  }

  /** Of a notebook and a text that hold the same only the text, which has lines. */
  List<Path> once() {
    Set<Path> texts = new HashSet<>(lessons);
    List<Path> once = new ArrayList<>(lessons);
    once.removeIf(file -> repeats(file, texts));
    return once;
  }

  private static boolean repeats(Path file, Set<Path> texts) {
    try {
      LessonFile lesson = LessonFile.of(file);
      LessonFile text = lesson.other();
      return lesson.form() == LessonForm.NOTEBOOK
          && texts.contains(text.path())
          && Twin.digest(lesson.read()).equals(Twin.digest(text.read()));
    } catch (LessonException e) {
      return false; // whoever reads it will be told
    }
  }

  private static final class Collector extends SimpleFileVisitor<Path> {
    private final Path top;
    private final List<Path> lessons = new ArrayList<>();
    private final List<Path> others = new ArrayList<>();

    Collector(Path top) {
      this.top = top;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
      return isHidden(folder) && !folder.equals(top)
          ? FileVisitResult.SKIP_SUBTREE
          : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
      LessonForm.ofName(file.toString())
          .filter(form -> !isHidden(file) && !Files.isDirectory(file))
          .map(form -> new LessonFile(file, form).saysLesson() ? lessons : others)
          .ifPresent(kind -> kind.add(file));
      return FileVisitResult.CONTINUE;
    }

    private static boolean isHidden(Path path) {
      return String.valueOf(path.getFileName()).startsWith(".");
    }
  }
}
