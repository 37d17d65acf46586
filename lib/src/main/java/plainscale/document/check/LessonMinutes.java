package plainscale.document.check;

import java.util.List;
import java.util.stream.Stream;

/** Times of cells that do not add up to the time of the lesson. */
record LessonMinutes() implements Rule {
  @Override
  public String name() {
    return "minutes";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    List<Integer> minutes =
        lesson.lesson().cells().stream()
            .flatMap(cell -> cell.head().minutes().stream().boxed())
            .toList();
    if (minutes.isEmpty() || lesson.lesson().head().minutes().isEmpty()) {
      return Stream.empty();
    }
    int all = lesson.lesson().head().minutes().getAsInt();
    long sum = minutes.stream().mapToLong(Integer::longValue).sum();
    if (sum == all) {
      return Stream.empty();
    }
    String sentence =
        "The lesson takes %d minutes, and its cells take %d together.".formatted(all, sum);
    String repair = "write minutes: %d, or change the minutes of the cells".formatted(sum);
    return Stream.of(lesson.whole().warning(this, sentence, repair));
  }
}
