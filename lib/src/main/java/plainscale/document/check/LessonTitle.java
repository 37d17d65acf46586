package plainscale.document.check;

import java.util.Optional;
import java.util.stream.Stream;
import plainscale.document.ProseText;

/** A lesson without a title, or with two. */
record LessonTitle() implements Rule {
  @Override
  public String name() {
    return "title";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    Optional<String> title = lesson.lesson().head().title();
    Optional<CheckedLesson.Said> heading =
        lesson.said().filter(said -> said.passage().kind() == ProseText.Kind.TITLE).findFirst();
    if (title.isEmpty() && heading.isEmpty()) {
      return Stream.of(
          lesson
              .whole()
              .warning(
                  this,
                  "The lesson has no title.",
                  "begin its first text with # and the title, or write title: \"…\""));
    }
    return title.isEmpty()
        ? Stream.empty()
        : heading.stream().flatMap(said -> other(title.get(), said));
  }

  private Stream<Finding> other(String title, CheckedLesson.Said heading) {
    String words = squeezed(heading.passage().text());
    boolean legible = words.indexOf(ProseText.ELSEWHERE) < 0;
    if (!legible || words.equals(squeezed(title))) {
      return Stream.empty();
    }
    String sentence =
        "The first heading is “%s”, and the title of the lesson “%s”."
            .formatted(words, squeezed(title));
    return Stream.of(
        CheckedLesson.at(heading.cell(), heading.passage().line())
            .remark(this, sentence, "write the same in both places"));
  }

  private static String squeezed(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }
}
