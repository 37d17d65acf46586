package plainscale.lessons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.document.Lesson;
import plainscale.document.LessonCell;
import plainscale.document.LessonException;
import plainscale.document.LessonFile;

/** Every lesson that ships is there in both forms, and both hold the same. */
class LessonFormsTest {
  private static final String REPAIR =
      "bring both forms into step: java -jar kernel/target/plainscale.jar convert notebooks/%s.md --both;"
          + " if only the layout differs, with --force instead of --both";
  private static final Pattern TABLE = Pattern.compile("(?m)^data \"([^\"]*)\"");

  @TempDir Path folder;

  static List<String> lessons() {
    List<String> lessons = names(ShippedLessons.texts().keySet(), ".md");
    assertFalse(lessons.isEmpty(), "no lesson ships");
    return lessons;
  }

  private static List<String> names(Iterable<String> files, String ending) {
    SortedSet<String> names = new TreeSet<>();
    files.forEach(file -> names.add(file.substring(0, file.length() - ending.length())));
    return List.copyOf(names);
  }

  @Test
  void bothFormsOfEveryLessonShip() {
    assertEquals(lessons(), names(ShippedLessons.notebooks().keySet(), ".ipynb"));
  }

  private String made(Path from) throws LessonException, IOException {
    LessonFile source = LessonFile.of(from);
    LessonFile target = source.other(folder);
    target.write(source.read());
    return Files.readString(target.path());
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void theNotebookIsWhatItsTextMakes(String name) throws LessonException, IOException {
    assertEquals(
        made(Path.of(name + ".md")),
        Files.readString(Path.of(name + ".ipynb")),
        () -> REPAIR.formatted(name));
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void theTextIsWhatItsNotebookMakes(String name) throws LessonException, IOException {
    assertEquals(
        made(Path.of(name + ".ipynb")),
        Files.readString(Path.of(name + ".md")),
        () -> REPAIR.formatted(name));
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void nothingIsRemarkedAndTheMinutesAddUp(String name) throws LessonException {
    Lesson lesson = Lesson.read(Path.of(name + ".md"));
    assertEquals(List.of(), lesson.remarks());
    int minutes = lesson.cells().stream().mapToInt(cell -> cell.head().minutes().orElse(0)).sum();
    assertEquals(lesson.head().minutes().orElse(-1), minutes);
  }

  @Test
  void theTablesThatShipAreThoseThatLessonsRead() throws LessonException {
    SortedSet<String> read = new TreeSet<>();
    for (String name : lessons()) {
      for (LessonCell cell : Lesson.read(Path.of(name + ".md")).cells()) {
        Matcher table = TABLE.matcher(cell.source());
        while (cell instanceof LessonCell.Code && table.find()) {
          read.add(table.group(1));
        }
      }
    }
    assertEquals(
        read.stream().collect(Collectors.toList()), List.copyOf(ShippedLessons.tables().keySet()));
  }
}
