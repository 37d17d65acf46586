package plainscale.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import plainscale.document.LessonException;

/** {@code install}: makes the kernel known to Jupyter. */
@Command(
    name = "install",
    mixinStandardHelpOptions = true,
    description =
        "Installs the kernels for Jupyter, Plainscale and Plainscale Java: for this user, for the active Python environment, or under a prefix.",
    footer = {
      "",
      "Examples:",
      "  java -jar plainscale.jar install",
      "  java -jar plainscale.jar install --prefix ~/venvs/physics"
    })
final class InstallCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @ArgGroup private @Nullable Place place;

  /** One of three places. */
  static final class Place {
    @Option(names = "--user", description = "For this user (the default).")
    private boolean user;

    @Option(names = "--env", description = "For the Python environment that is active.")
    private boolean env;

    @Option(
        names = "--prefix",
        paramLabel = "DIR",
        description = "Under a prefix: DIR/share/jupyter/kernels.")
    private @Nullable Path prefix;
  }

  @Override
  public Integer call() throws CommandException, LessonException {
    PrintWriter out = spec.commandLine().getOut();
    install(kernels(), out);
    out.println("Start JupyterLab, open a new notebook and choose Plainscale.");
    out.println("Plainscale Java is for people who program: its cells can do all that you can.");
    out.flush();
    return 0;
  }

  /** Installs into a folder of kernels and says where. */
  static void install(Path kernels, PrintWriter out) throws CommandException, LessonException {
    for (CellLanguage language : CellLanguage.values()) {
      if (language.isAvailable()) {
        install(new KernelSpec(language, kernels), language.title(), out);
      } else {
        out.println(language.title() + " needs a JDK, and this Java is a runtime: left out.");
      }
    }
    out.flush();
  }

  private static void install(KernelSpec kernel, String title, PrintWriter out)
      throws CommandException, LessonException {
    kernel.write();
    out.println("Installed " + title + " in " + kernel.folder());
    if (!kernel.archive()) {
      out.println("The archive that makes it start faster could not be made; it works without.");
    }
    out.flush();
  }

  private Path kernels() throws CommandException {
    JupyterFolders folders = JupyterFolders.ofThisMachine();
    if (place == null || place.user) {
      return folders.user();
    }
    if (!place.env && place.prefix != null) {
      return JupyterFolders.under(place.prefix);
    }
    return folders
        .activeEnvironment()
        .map(JupyterFolders::under)
        .orElseThrow(
            () ->
                new CommandException(
                    "No Python environment is active; activate one, or give --prefix DIR."));
  }
}
