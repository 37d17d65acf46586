package plainscale.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import plainscale.document.Edition;
import plainscale.document.Lesson;
import plainscale.document.LessonException;
import plainscale.document.WholeFile;
import plainscale.document.WorkedLesson;
import plainscale.document.edition.Fading;
import plainscale.document.edition.Handout;

/** {@code handout}: one HTML file for each lesson and edition. */
@Command(
    name = "handout",
    mixinStandardHelpOptions = true,
    description =
        "Runs lessons and writes a handout for each edition of each, one HTML file that needs no network; without a file, the lessons that ship.",
    footer = {
      "",
      "Examples:",
      "  java -jar plainscale.jar handout my-lesson.ipynb --out handouts",
      "  java -jar plainscale.jar handout my-lesson.ipynb --edition student --faded 2"
    })
final class HandoutCommand implements Callable<Integer> {
  private static final String ALL = "all";
  private static final String NO_EDITION =
      "There is no edition “%s”. Try: worked, teacher, student, projector or all.";
  private static final String NO_STEPS = "“%s” is no number of steps. Try: 0, 1, 2, … or all.";

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FILE", description = "Notebooks (.ipynb) or texts (.md).")
  private List<Path> files = List.of();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where the handouts go; made if it is not there. Default: ${DEFAULT-VALUE}",
      defaultValue = "handouts")
  private Path out = Path.of("handouts");

  @Option(
      names = "--edition",
      paramLabel = "EDITION",
      description =
          "worked: the worked example (the default); teacher: with key, notes and timing; student: with blanks; projector: large, a step at a time; all. May be repeated.")
  private List<String> editions = List.of(Edition.WORKED.word());

  @Option(
      names = "--faded",
      paramLabel = "STEPS",
      description =
          "How many steps of each derivation students find, counted from its end: 0, 1, …, all. Default: ${DEFAULT-VALUE}",
      defaultValue = "1")
  private String faded = Fading.LAST.toString();

  @Override
  public Integer call() throws LessonException {
    Set<Edition> wanted = wanted();
    Fading fading = fading();
    Progress progress = new Progress(spec.commandLine().getOut());
    long mistakes = 0;
    for (Lesson lesson : Lessons.of(files, spec.commandLine().getErr())) {
      int all = lesson.cells().size();
      WorkedLesson worked =
          WorkedLesson.run(lesson, done -> progress.show(lesson.title(), done, all));
      List<Path> written = write(worked, wanted, fading);
      String places = written.stream().map(Path::toString).collect(Collectors.joining(", "));
      progress.done(lesson.title() + ": " + all + " cells, " + mistakes(worked) + " → " + places);
      mistakes += worked.mistakes();
    }
    return mistakes == 0 ? 0 : Main.FAILED;
  }

  /** The editions in their own order, each once. */
  private Set<Edition> wanted() {
    Set<Edition> wanted = EnumSet.noneOf(Edition.class);
    for (String word : editions) {
      if (word.equals(ALL)) {
        wanted.addAll(EnumSet.allOf(Edition.class));
      } else {
        wanted.add(Edition.named(word).orElseThrow(() -> refused(NO_EDITION.formatted(word))));
      }
    }
    return wanted;
  }

  private Fading fading() {
    return Fading.named(faded).orElseThrow(() -> refused(NO_STEPS.formatted(faded)));
  }

  private CommandLine.ParameterException refused(String sentence) {
    return new CommandLine.ParameterException(spec.commandLine(), sentence);
  }

  private List<Path> write(WorkedLesson worked, Set<Edition> wanted, Fading fading)
      throws LessonException {
    List<Path> written = new ArrayList<>();
    for (Edition edition : wanted) {
      Path file = out.resolve(Handout.fileName(worked, edition));
      WholeFile.write(file, Handout.html(worked, edition, fading));
      written.add(file);
    }
    return written;
  }

  private static String mistakes(WorkedLesson worked) {
    long mistakes = worked.mistakes();
    return mistakes == 0
        ? "no mistakes"
        : mistakes + (mistakes == 1 ? " mistake" : " mistakes") + ", shown in place";
  }
}
