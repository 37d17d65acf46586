package plainscale.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import plainscale.document.Handout;
import plainscale.document.Lesson;
import plainscale.document.LessonException;
import plainscale.document.WholeFile;
import plainscale.document.WorkedLesson;

/** {@code handout}: one HTML file for each lesson. */
@Command(
    name = "handout",
    mixinStandardHelpOptions = true,
    description =
        "Runs lessons and writes a handout for each, one HTML file that needs no network; without a file, the lessons that ship.",
    footer = {"", "Example:", "  java -jar plainscale.jar handout my-lesson.ipynb --out handouts"})
final class HandoutCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FILE", description = "Notebooks (.ipynb) or texts (.md).")
  private List<Path> files = List.of();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where the handouts go; made if it is not there. Default: ${DEFAULT-VALUE}",
      defaultValue = "handouts")
  private Path out = Path.of("handouts");

  @Override
  public Integer call() throws LessonException {
    Progress progress = new Progress(spec.commandLine().getOut());
    long mistakes = 0;
    for (Lesson lesson : Lessons.of(files, spec.commandLine().getErr())) {
      int all = lesson.cells().size();
      WorkedLesson worked =
          WorkedLesson.run(lesson, done -> progress.show(lesson.title(), done, all));
      Path file = out.resolve(lesson.stem() + ".html");
      WholeFile.write(file, Handout.html(worked));
      progress.done(lesson.title() + ": " + all + " cells, " + mistakes(worked) + " → " + file);
      mistakes += worked.mistakes();
    }
    return mistakes == 0 ? 0 : Main.FAILED;
  }

  private static String mistakes(WorkedLesson worked) {
    long mistakes = worked.mistakes();
    return mistakes == 0
        ? "no mistakes"
        : mistakes + (mistakes == 1 ? " mistake" : " mistakes") + ", shown in place";
  }
}
