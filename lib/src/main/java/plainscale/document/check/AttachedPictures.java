package plainscale.document.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plainscale.document.LessonCell;
import plainscale.document.ProseText;

/** Attached pictures that no text shows, and pictures that are not attached. */
record AttachedPictures() implements Rule {
  private static final String ATTACHMENT = "attachment:";

  @Override
  public String name() {
    return "attachment";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    return lesson.texts().flatMap(cell -> check(lesson, cell));
  }

  private Stream<Finding> check(CheckedLesson lesson, LessonCell.Prose cell) {
    List<String> attached = new ArrayList<>();
    cell.attachments().fieldNames().forEachRemaining(attached::add);
    List<ProseText.Picture> shown =
        lesson.text(cell).pictures().stream()
            .filter(picture -> picture.source().startsWith(ATTACHMENT))
            .toList();
    Set<String> names = shown.stream().map(AttachedPictures::name).collect(Collectors.toSet());
    return Stream.concat(
        shown.stream()
            .filter(picture -> !attached.contains(name(picture)))
            .map(picture -> missing(cell, picture)),
        attached.stream().filter(name -> !names.contains(name)).map(name -> unused(cell, name)));
  }

  private static String name(ProseText.Picture picture) {
    return picture.source().substring(ATTACHMENT.length());
  }

  private Finding missing(LessonCell.Prose cell, ProseText.Picture picture) {
    return CheckedLesson.at(cell, picture.line())
        .warning(
            this,
            "No picture %s is attached to the cell.".formatted(name(picture)),
            "drop the picture onto the cell in JupyterLab, or take it out of the text");
  }

  private Finding unused(LessonCell.Prose cell, String name) {
    return CheckedLesson.at(cell)
        .remark(
            this,
            "The attached picture %s is not shown.".formatted(name),
            "write ![what it shows](attachment:%s), or take it out of the cell".formatted(name));
  }
}
