package plainscale.lessons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import plainscale.render.Renderers;
import plainscale.sheet.Result;

/**
 * The picture and the text of the README are what the program makes of the lesson with two balls.
 * To renew the picture:
 *
 * <pre>
 * mvn test -pl notebooks -am -Dplainscale.renew=true -Dtest=ReadmeTest -Dsurefire.failIfNoSpecifiedTests=false
 * </pre>
 */
class ReadmeTest {
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

  @Test
  void theTextIsWhatTheProgramPrints() throws IOException, LessonException {
    String printed = Renderers.text(List.of(contrast()));
    String readme = Files.readString(Path.of("../README.md"));
    assertTrue(readme.contains("```text\n" + printed + "\n```"), printed);
  }

  private static String drawn() throws LessonException {
    Result.Contrasted contrast = contrast();
    List<Mark> marks = contrast.sides().stream().map(ReadmeTest::mark).toList();
    return SvgWriter.write(
        NestedSquares.of(contrast.title(), marks.get(0), marks.get(1), contrast.writing()));
  }

  private static Result.Contrasted contrast() throws LessonException {
    String text = Objects.requireNonNull(ShippedLessons.notebooks().get(LESSON));
    WorkedLesson worked = WorkedLesson.run(Lesson.parse(LESSON, text), done -> {});
    return worked.cells().stream()
        .flatMap(cell -> cell.results().stream())
        .filter(Result.Contrasted.class::isInstance)
        .map(Result.Contrasted.class::cast)
        .findFirst()
        .orElseThrow();
  }

  private static Mark mark(Result.Side side) {
    return new Mark(side.label().description(), side.shown().value(), side.shown().unit().text());
  }
}
