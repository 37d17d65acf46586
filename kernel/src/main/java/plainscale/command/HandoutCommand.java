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
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import plainscale.document.Edition;
import plainscale.document.Lesson;
import plainscale.document.LessonException;
import plainscale.document.WholeFile;
import plainscale.document.WorkedLesson;
import plainscale.document.WrittenIn;
import plainscale.document.edition.Fading;
import plainscale.document.edition.Handout;
import plainscale.document.edition.StudentNotebook;

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
      "  java -jar plainscale.jar handout my-lesson.ipynb --edition student --faded 2",
      "  java -jar plainscale.jar handout my-lesson.ipynb --edition student --notebook"
    })
final class HandoutCommand implements Callable<Integer> {
  private static final String ALL = "all";
  private static final String NO_EDITION =
      "There is no edition “%s”. Try: worked, teacher, student, projector or all.";
  private static final String NO_NOTEBOOK =
      "Only the students' edition is written as a notebook. Try: --edition student --notebook";
  private static final String ONLY_WORKED =
      "%s: its cells are Java, and blanks are made from the notation, so there is only the worked edition.";
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

  @Option(
      names = "--notebook",
      description =
          "The students' edition as a notebook to rework in JupyterLab, instead of a page: cells that compute from what they put in the place of each ?.")
  private boolean notebook;

  @Mixin private JavaConsent java = new JavaConsent();

  @Override
  public Integer call() throws LessonException {
    Set<Edition> wanted = wanted();
    refuseOtherNotebooks(wanted);
    Fading fading = fading();
    Progress progress = new Progress(spec.commandLine().getOut());
    long mistakes = 0;
    for (Lesson lesson : Lessons.of(files, spec.commandLine().getErr())) {
      if (!java.covers(lesson, spec.commandLine().getErr())) {
        mistakes += files.isEmpty() ? 0 : 1;
        continue;
      }
      int all = lesson.cells().size();
      WorkedLesson worked = java.work(lesson, done -> progress.show(lesson.title(), done, all));
      List<Path> written = write(worked, available(lesson, wanted), fading);
      String places = written.stream().map(Path::toString).collect(Collectors.joining(", "));
      String counted = all + " cells, " + mistakes(worked) + blanks(worked);
      progress.done(lesson.title() + ": " + counted + " → " + places);
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

  /** Blanks are made from the notation; of Java cells only the worked example can be printed. */
  private Set<Edition> available(Lesson lesson, Set<Edition> wanted) throws LessonException {
    if (lesson.writtenIn() == WrittenIn.NOTATION) {
      return wanted;
    }
    if (!wanted.contains(Edition.WORKED)) {
      throw new LessonException(ONLY_WORKED.formatted(lesson.name()));
    }
    return EnumSet.of(Edition.WORKED);
  }

  private void refuseOtherNotebooks(Set<Edition> wanted) {
    if (notebook && !wanted.contains(Edition.STUDENT)) {
      throw refused(NO_NOTEBOOK);
    }
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
      written.add(
          notebook && edition == Edition.STUDENT
              ? writeNotebook(worked)
              : writePage(worked, edition, fading));
    }
    return written;
  }

  private Path writePage(WorkedLesson worked, Edition edition, Fading fading)
      throws LessonException {
    Path file = out.resolve(Handout.fileName(worked, edition));
    WholeFile.write(file, Handout.html(worked, edition, fading));
    return file;
  }

  private Path writeNotebook(WorkedLesson worked) throws LessonException {
    Lesson copy = StudentNotebook.of(worked.lesson());
    Path file = out.resolve(copy.name());
    WholeFile.write(file, copy.notebook());
    return file;
  }

  /** Those that an author left in the lesson itself. */
  private static String blanks(WorkedLesson worked) {
    int blanks = worked.blanks();
    return blanks == 0 ? "" : ", " + blanks + (blanks == 1 ? " blank" : " blanks") + " to fill in";
  }

  private static String mistakes(WorkedLesson worked) {
    long mistakes = worked.mistakes();
    return mistakes == 0
        ? "no mistakes"
        : mistakes + (mistakes == 1 ? " mistake" : " mistakes") + ", shown in place";
  }
}
