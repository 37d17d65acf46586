package plainscale.document.check;

import java.util.stream.Stream;
import plainscale.document.LessonHead;

/** A lesson that was written for a later version of the format. */
record FormatVersion() implements Rule {
  static boolean isNewer(CheckedLesson lesson) {
    return lesson.lesson().head().format() > LessonHead.VERSION;
  }

  @Override
  public String name() {
    return "format";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    if (!isNewer(lesson) || lesson.isText()) {
      return Stream.empty(); // the reader of texts has said so
    }
    String sentence =
        "The lesson is of format %d, and this program knows format %d; what is new in it is passed over."
            .formatted(lesson.lesson().head().format(), LessonHead.VERSION);
    return Stream.of(lesson.whole().remark(this, sentence, "use a newer Plainscale"));
  }
}
