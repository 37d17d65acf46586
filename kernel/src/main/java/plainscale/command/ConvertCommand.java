package plainscale.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import plainscale.document.LessonException;
import plainscale.document.LessonFile;
import plainscale.document.LessonForm;
import plainscale.document.LessonPair;

/** {@code convert}: a notebook from a text, and the reverse. */
@Command(
    name = "convert",
    mixinStandardHelpOptions = true,
    description =
        "Makes the notebook (.ipynb) of a lesson from its text (.md), or the text from the notebook, beside the file."
            + " Both hold the same; a text is for editors and version control.",
    footer = {
      "",
      "Examples:",
      "  java -jar plainscale.jar convert my-lesson.md",
      "  java -jar plainscale.jar convert lessons --both"
    })
final class ConvertCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "FILE",
      arity = "1..*",
      description = "Notebooks or texts; a folder stands for the lessons in it.")
  private List<Path> files = List.of();

  @Option(
      names = "--out",
      paramLabel = "FILE|DIR",
      description = "Where the result goes: a file (.ipynb, .md), or a folder, made if needed.")
  private @Nullable Path out;

  @Option(names = "--force", description = "Replaces a file that holds something else.")
  private boolean force;

  @Option(
      names = "--both",
      description =
          "Keeps notebook and text in step: the side wins that has changed since both held the same. If both have, nothing is changed.")
  private boolean both;

  private final Map<Path, LessonFile> made = new HashMap<>();
  private boolean failed;

  /** A lesson that was named, and the folder below the named one in which it lies. */
  private record Named(LessonFile file, Path below) {}

  /** Something that may be refused. */
  private interface Work {
    void run() throws LessonException;
  }

  @Override
  public Integer call() {
    if (both && (force || out != null)) {
      throw new ParameterException(
          spec.commandLine(),
          "--both keeps the two files of a lesson in step where they are; leave out "
              + (force ? "--force" : "--out")
              + ".");
    }
    List<Named> named = new ArrayList<>();
    for (Path place : files) {
      told(() -> named.addAll(lessons(place)));
    }
    if (both) {
      pairs(named).forEach(pair -> told(() -> keep(pair)));
    } else {
      convert(named);
    }
    spec.commandLine().getOut().flush();
    return failed ? Main.FAILED : 0;
  }

  /** One lesson that fails does not keep the others back. */
  private void told(Work work) {
    try {
      work.run();
    } catch (LessonException e) {
      failed = true;
      spec.commandLine().getErr().println(e.sentence());
      spec.commandLine().getErr().flush();
    }
  }

  private List<Named> lessons(Path place) throws LessonException {
    LessonFiles found = LessonFiles.in(place);
    found.others().forEach(other -> say(other + " is no lesson; it was passed over"));
    List<Named> named = new ArrayList<>();
    for (Path file : found.lessons()) {
      Path folder = file.getParent();
      boolean within = folder != null && !file.equals(place);
      named.add(new Named(LessonFile.of(file), within ? place.relativize(folder) : Path.of("")));
    }
    return named;
  }

  private void say(String sentence) {
    spec.commandLine().getOut().println(sentence);
  }

  private static Set<LessonPair> pairs(List<Named> named) {
    Set<LessonPair> pairs = new LinkedHashSet<>();
    named.forEach(lesson -> pairs.add(LessonPair.of(lesson.file())));
    return pairs;
  }

  private void keep(LessonPair pair) throws LessonException {
    Path text = pair.text().path();
    Path notebook = pair.notebook().path();
    say(
        switch (pair.keep()) {
          case IN_STEP -> text + " and " + notebook + " are already in step";
          case TEXT_MADE -> notebook + " → " + text;
          case NOTEBOOK_MADE -> text + " → " + notebook;
        });
  }

  private void convert(List<Named> named) {
    Set<Path> sources = new LinkedHashSet<>();
    named.forEach(lesson -> sources.add(whole(lesson.file().path())));
    for (Named lesson : named) {
      told(() -> convert(lesson, sources));
    }
  }

  private static Path whole(Path path) {
    return path.toAbsolutePath().normalize();
  }

  private void convert(Named lesson, Set<Path> sources) throws LessonException {
    LessonFile source = lesson.file();
    LessonFile target = target(lesson, sources.size() == 1);
    Conversion conversion = new Conversion(source, target);
    if (sources.contains(whole(target.path()))) {
      if (source.form() == LessonForm.TEXT) {
        report(conversion, conversion.compare());
      }
      return;
    }
    LessonFile before = made.putIfAbsent(whole(target.path()), source);
    if (before != null && !before.equals(source)) {
      throw new LessonException(
          "%s and %s would both become %s; convert them into two folders."
              .formatted(before.path(), source.path(), target.path()));
    }
    report(conversion, conversion.run(force));
  }

  private void report(Conversion conversion, Conversion.Report report) {
    report.remarks().forEach(remark -> say(conversion.source().path() + ": " + remark));
    say(report.sentence());
  }

  private LessonFile target(Named lesson, boolean alone) throws LessonException {
    LessonFile source = lesson.file();
    if (out == null) {
      return source.other();
    }
    if (Files.isDirectory(out) || LessonForm.ofName(out.toString()).isEmpty()) {
      return source.other(out.resolve(lesson.below()));
    }
    LessonFile target = LessonFile.of(out);
    if (target.form() == source.form() || !alone) {
      throw new LessonException(
          alone
              ? "%s and %s are of the same form; from %1$s comes a file that ends in %s."
                  .formatted(source.path(), out, source.form().other().ending())
              : "--out %s is one file, and several lessons are named; give a folder."
                  .formatted(out));
    }
    return target;
  }
}
