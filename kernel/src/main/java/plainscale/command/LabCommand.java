package plainscale.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import plainscale.document.LessonException;
import plainscale.document.WholeFile;
import plainscale.lessons.ShippedLessons;

/** {@code lab}: JupyterLab with the kernel and the lessons, from nothing but Java and Python. */
@Command(
    name = "lab",
    mixinStandardHelpOptions = true,
    description = {
      "Opens JupyterLab with the lessons. Makes a Python environment with JupyterLab the first time (needs Python 3.9 and"
          + " a network then), installs the kernel into it, and copies the lessons that are not there yet into a folder of yours."
    },
    footer = {"", "Example:", "  java -jar plainscale.jar lab --lessons physics"})
final class LabCommand implements Callable<Integer> {
  private static final String REQUIREMENT = "jupyterlab>=4.2,<5";

  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--env",
      paramLabel = "DIR",
      description = "The Python environment to make or reuse. Default: one beside Jupyter's data.")
  private @Nullable Path environment;

  @Option(
      names = "--lessons",
      paramLabel = "DIR",
      defaultValue = "lessons",
      description = "Where the lessons are. Default: ${DEFAULT-VALUE}")
  private Path lessons = Path.of("lessons");

  @Option(names = "--no-browser", description = "Start the server and print its address only.")
  private boolean noBrowser;

  @Override
  public Integer call() throws CommandException, LessonException {
    PrintWriter out = spec.commandLine().getOut();
    Path home =
        environment != null
            ? environment
            : JupyterFolders.ofThisMachine().user().resolveSibling("plainscale-env");
    Python python = environment(home.toAbsolutePath(), out);
    InstallCommand.install(JupyterFolders.under(home.toAbsolutePath()), out);
    copyLessons(out);
    List<String> arguments = new ArrayList<>(List.of("-m", "jupyterlab"));
    if (noBrowser) {
      arguments.add("--no-browser");
    }
    return python.run(lessons.toAbsolutePath(), arguments);
  }

  private static Python environment(Path home, PrintWriter out) throws CommandException {
    Python own = Python.in(home);
    Path here = Path.of("").toAbsolutePath();
    if (!Files.exists(own.executable())) {
      Python python =
          Python.find()
              .orElseThrow(
                  () ->
                      new CommandException(
                          "I find no Python 3.9 or newer; install one (python.org), then try again."));
      out.println("Making a Python environment in " + home);
      out.flush();
      check(
          python.run(here, List.of("-m", "venv", home.toString())),
          "The Python environment could not be made.");
      own = Python.in(home);
    }
    if (own.run(
            here,
            List.of(
                "-c",
                "import importlib.util as u, sys; sys.exit(0 if u.find_spec('jupyterlab') else 1)"))
        != 0) {
      out.println("Fetching JupyterLab; this takes a minute or two.");
      out.flush();
      check(
          own.run(here, List.of("-m", "pip", "install", "--quiet", REQUIREMENT)),
          "JupyterLab could not be fetched; is there a network?");
    }
    return own;
  }

  private static void check(int exit, String sentence) throws CommandException {
    if (exit != 0) {
      throw new CommandException(sentence);
    }
  }

  /** Never overwrites what a teacher has changed. */
  private void copyLessons(PrintWriter out) throws CommandException, LessonException {
    try {
      Files.createDirectories(lessons);
    } catch (IOException e) {
      throw new CommandException(
          "I cannot make the folder " + lessons + ": " + e.getMessage() + ".");
    }
    copy(ShippedLessons.notebooks(), out);
    copy(ShippedLessons.tables(), out);
    out.flush();
  }

  private void copy(Map<String, String> files, PrintWriter out) throws LessonException {
    for (Map.Entry<String, String> shipped : files.entrySet()) {
      Path file = lessons.resolve(shipped.getKey());
      if (!Files.exists(file)) {
        WholeFile.write(file, shipped.getValue());
        out.println("Copied " + file);
      }
    }
  }
}
