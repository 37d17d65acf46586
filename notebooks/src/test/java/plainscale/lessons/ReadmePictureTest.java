package plainscale.lessons;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import plainscale.document.Lesson;
import plainscale.document.LessonException;
import plainscale.document.WholeFile;
import plainscale.document.WorkedLesson;
import plainscale.picture.Mark;
import plainscale.picture.NestedSquares;
import plainscale.picture.SvgWriter;
import plainscale.sheet.Result;

/**
 * The picture of the README is what the program draws of the lesson with two balls. To renew it:
 *
 * <pre>
 * mvn test -pl notebooks -am -Dplainscale.renew=true -Dtest=ReadmePictureTest -Dsurefire.failIfNoSpecifiedTests=false
 * </pre>
 */
class ReadmePictureTest {
  private static final Path PICTURE = Path.of("two-balls.svg");
  private static final String LESSON = "two-balls.ipynb";

  @Test
  void thePictureIsWhatTheProgramDraws() throws IOException, LessonException {
    String drawn = drawn();
    if (Boolean.getBoolean("plainscale.renew")) {
      WholeFile.write(PICTURE, drawn);
    }
    assertEquals(drawn, Files.readString(PICTURE));
  }

  private static String drawn() throws LessonException {
    String text = Objects.requireNonNull(ShippedLessons.texts().get(LESSON));
    WorkedLesson worked = WorkedLesson.run(Lesson.parse(LESSON, text), done -> {});
    Result.Contrasted contrast =
        worked.cells().stream()
            .flatMap(cell -> cell.results().stream())
            .filter(Result.Contrasted.class::isInstance)
            .map(Result.Contrasted.class::cast)
            .findFirst()
            .orElseThrow();
    assertEquals("Electrons: moved, and there anyway", contrast.title());
    List<Mark> marks = contrast.sides().stream().map(ReadmePictureTest::mark).toList();
    return SvgWriter.write(
        NestedSquares.of(contrast.title(), marks.get(0), marks.get(1), contrast.writing()));
  }

  private static Mark mark(Result.Side side) {
    return new Mark(side.label().description(), side.shown().value(), side.shown().unit().text());
  }
}
