package plainscale.command;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.function.IntConsumer;
import picocli.CommandLine.Option;
import plainscale.document.CellRunner;
import plainscale.document.Lesson;
import plainscale.document.WorkedLesson;
import plainscale.document.WrittenIn;
import plainscale.language.java.JavaCells;

/** Whether lessons whose cells are Java may run; without a word of the user they never do. */
final class JavaConsent {
  private static final String REFUSED =
      "%s: its cells are Java, which can do anything on this machine, so it was not run. If you trust who wrote it, add --allow-java.";

  @Option(
      names = "--allow-java",
      description =
          "Runs also lessons whose cells are Java. They can do all that you can do on this machine: allow it only if you trust who wrote them.")
  private boolean allowed;

  /** Who runs the cells of a lesson in Java; empty without consent, and for the notation. */
  Optional<CellRunner> runner(Lesson lesson) {
    return allowed && isJava(lesson) ? Optional.of(new JavaCells()::run) : Optional.empty();
  }

  /** Whether the lesson may run; if not, that is said. */
  boolean covers(Lesson lesson, PrintWriter remarks) {
    if (allowed || !isJava(lesson)) {
      return true;
    }
    remarks.println(REFUSED.formatted(lesson.name()));
    remarks.flush();
    return false;
  }

  /** Runs a lesson that this covers. */
  WorkedLesson work(Lesson lesson, IntConsumer progress) {
    return runner(lesson)
        .map(cells -> WorkedLesson.run(lesson, cells, progress))
        .orElseGet(() -> WorkedLesson.run(lesson, progress));
  }

  private static boolean isJava(Lesson lesson) {
    return lesson.writtenIn() == WrittenIn.JAVA;
  }
}
