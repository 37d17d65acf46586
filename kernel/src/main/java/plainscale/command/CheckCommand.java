package plainscale.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import plainscale.document.Lesson;
import plainscale.document.LessonException;
import plainscale.document.check.Finding;
import plainscale.document.check.LessonCheck;
import plainscale.document.check.Severity;
import plainscale.lessons.ShippedLessons;

/** {@code check}: what a class would stumble over in a lesson. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description =
        "Runs lessons and tells what a class would stumble over: cells that fail, results that no text refers to,"
            + " typed numbers that the sheet computes, missing cautions, and more; without a file, the lessons that ship.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:nothing that counts was found",
      "1:errors were found, or with --strict warnings",
      "2:a file could not be read"
    },
    footer = {
      "",
      "Examples:",
      "  java -jar plainscale.jar check my-lesson.ipynb",
      "  java -jar plainscale.jar check lessons --strict --json"
    })
final class CheckCommand implements Callable<Integer> {
  /** Exit code when a file is no lesson. */
  static final int UNREADABLE = 2;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FILE", description = "Lessons, or folders with lessons in them.")
  private List<Path> files = List.of();

  @Option(names = "--json", description = "Writes the findings as one JSON array.")
  private boolean json;

  @Option(names = "--strict", description = "Warnings count as errors do; remarks never count.")
  private boolean strict;

  @Mixin private JavaConsent java = new JavaConsent();

  private final List<CheckedFile> checked = new ArrayList<>();
  private int unreadable;

  @Override
  public Integer call() {
    if (files.isEmpty()) {
      for (Map.Entry<String, String> shipped : ShippedLessons.notebooks().entrySet()) {
        check(shipped.getKey(), () -> Lesson.parse(shipped.getKey(), shipped.getValue()));
      }
    }
    for (Path file : files) {
      checkAll(file);
    }
    PrintWriter out = spec.commandLine().getOut();
    out.println(json ? CheckReport.json(checked) : CheckReport.summary(checked, unreadable));
    out.flush();
    return exitCode();
  }

  private int exitCode() {
    if (unreadable > 0) {
      return UNREADABLE;
    }
    long counting =
        CheckReport.count(checked, Severity.ERROR)
            + (strict ? CheckReport.count(checked, Severity.WARNING) : 0);
    return counting == 0 ? 0 : Main.FAILED;
  }

  private void checkAll(Path place) {
    try {
      for (Path file : LessonFiles.in(place).once()) {
        check(file.toString(), () -> Lesson.read(file));
      }
    } catch (LessonException e) {
      refused(place.toString(), e);
    }
  }

  /** Gives a lesson, or says why there is none. */
  private interface Source {
    Lesson read() throws LessonException;
  }

  private void check(String file, Source source) {
    try {
      Lesson lesson = source.read();
      boolean text = lesson.cells().stream().anyMatch(cell -> cell.line() > 0);
      add(new CheckedFile(file, text, LessonCheck.of(lesson, java.runner(lesson), done -> {})));
    } catch (LessonException e) {
      refused(file, e);
    }
  }

  private void add(CheckedFile file) {
    checked.add(file);
    if (!json) {
      PrintWriter out = spec.commandLine().getOut();
      CheckReport.lines(file).forEach(out::println);
      out.flush();
    }
  }

  private void refused(String file, LessonException why) {
    unreadable++;
    spec.commandLine().getErr().println(why.sentence());
    spec.commandLine().getErr().flush();
    if (json) {
      Finding finding = new Finding("file", Severity.ERROR, "", 0, why.sentence(), "");
      checked.add(new CheckedFile(file, false, List.of(finding)));
    }
  }
}
