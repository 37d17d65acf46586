package plainscale.document.check;

import java.util.stream.Stream;

/** A lesson in Java whose cells were not run. */
record CellsNotRun() implements Rule {
  @Override
  public String name() {
    return "not-run";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    return lesson.wasRun()
        ? Stream.empty()
        : Stream.of(
            lesson
                .whole()
                .remark(
                    this,
                    "The cells are in Java, which can do anything on this machine, so they were not run.",
                    "--allow-java if you trust who wrote them"));
  }
}
