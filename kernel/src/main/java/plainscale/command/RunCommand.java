package plainscale.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import plainscale.document.Lesson;
import plainscale.document.LessonException;
import plainscale.document.LessonText;
import plainscale.document.WorkedLesson;

/** {@code run}: a lesson's results in the terminal. */
@Command(
    name = "run",
    mixinStandardHelpOptions = true,
    description = "Runs lessons and prints their results; without a file, the lessons that ship.",
    footer = {"", "Example:", "  java -jar plainscale.jar run my-lesson.ipynb"})
final class RunCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FILE", description = "Notebooks (.ipynb) or texts (.md).")
  private List<Path> files = List.of();

  @Mixin private JavaConsent java = new JavaConsent();

  @Override
  public Integer call() throws LessonException {
    PrintWriter out = spec.commandLine().getOut();
    long mistakes = 0;
    for (Lesson lesson : Lessons.of(files, spec.commandLine().getErr())) {
      if (!java.covers(lesson, spec.commandLine().getErr())) {
        mistakes += files.isEmpty() ? 0 : 1;
        continue;
      }
      out.println("== " + lesson.name() + ": " + lesson.title());
      out.println();
      WorkedLesson worked = java.work(lesson, done -> {});
      for (WorkedLesson.WorkedCell cell : worked.cells()) {
        out.println(LessonText.of(cell));
        out.println();
      }
      mistakes += worked.mistakes();
    }
    out.flush();
    return mistakes == 0 ? 0 : Main.FAILED;
  }
}
