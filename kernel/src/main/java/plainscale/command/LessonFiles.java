package plainscale.command;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import plainscale.document.LessonException;

/** The lessons that a place on the command line means. */
final class LessonFiles {
  private static final String ENDING = ".ipynb";

  private LessonFiles() {}

  /**
   * A file itself; of a folder the lessons in it and in its folders, hidden ones left out, in the
   * order of their names.
   *
   * @throws LessonException if the folder has none, or cannot be read
   */
  static List<Path> in(Path place) throws LessonException {
    if (!Files.isDirectory(place)) {
      return List.of(place);
    }
    TreeSet<Path> lessons = new TreeSet<>();
    try {
      Files.walkFileTree(place, new Collector(place, lessons));
    } catch (IOException e) {
      throw new LessonException("The folder " + place + " cannot be read: " + e.getMessage() + ".");
    }
    if (lessons.isEmpty()) {
      throw new LessonException("There is no lesson (" + ENDING + ") in the folder " + place + ".");
    }
    return List.copyOf(lessons);
  }

  private static final class Collector extends SimpleFileVisitor<Path> {
    private final Path top;
    private final Set<Path> lessons;

    Collector(Path top, Set<Path> lessons) {
      this.top = top;
      this.lessons = lessons;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
      return isHidden(folder) && !folder.equals(top)
          ? FileVisitResult.SKIP_SUBTREE
          : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
      if (!isHidden(file) && file.toString().endsWith(ENDING)) {
        lessons.add(file);
      }
      return FileVisitResult.CONTINUE;
    }

    private static boolean isHidden(Path path) {
      return String.valueOf(path.getFileName()).startsWith(".");
    }
  }
}
