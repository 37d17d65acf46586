package plainscale.document.check;

import java.util.stream.Stream;
import plainscale.document.LessonCell;
import plainscale.document.LessonHead;
import plainscale.document.ProseText;

/** Pictures in prose that say nothing to whoever does not see them. */
record PictureWords() implements Rule {
  @Override
  public String name() {
    return "picture-words";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    return lesson
        .texts()
        .filter(cell -> !hasAlternative(cell))
        .flatMap(cell -> check(lesson, cell));
  }

  private static boolean hasAlternative(LessonCell cell) {
    return !cell.metadata().path(LessonHead.KEY).path("alternative").asText("").isBlank();
  }

  private Stream<Finding> check(CheckedLesson lesson, LessonCell.Prose cell) {
    return lesson.text(cell).pictures().stream()
        .filter(picture -> picture.alternative().isBlank())
        .map(picture -> wordless(cell, picture));
  }

  private Finding wordless(LessonCell.Prose cell, ProseText.Picture picture) {
    String source = picture.source().startsWith("data:") ? "data:…" : picture.source();
    return CheckedLesson.at(cell, picture.line())
        .warning(
            this,
            "The picture %s has no words for whoever does not see it.".formatted(source),
            "write ![what it shows](%s)".formatted(source));
  }
}
