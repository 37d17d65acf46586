package plainscale.command;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import plainscale.document.LessonException;

/** {@code plainscale COMMAND}: reads the command line and runs one command. */
@Command(
    name = "plainscale",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Physics worked examples: lessons that compute, in JupyterLab and on paper.",
    subcommands = {
      RunCommand.class,
      HandoutCommand.class,
      ConvertCommand.class,
      CheckCommand.class,
      InstallCommand.class,
      LabCommand.class,
      KernelCommand.class,
      WarmUpCommand.class,
      CommandLine.HelpCommand.class
    })
public final class Main implements Runnable {
  /** Exit code when a lesson has mistakes, or a file cannot be used. */
  static final int FAILED = 1;

  @CommandLine.Spec private @Nullable CommandSpec spec;

  /** Runs the command and ends the process with its exit code. */
  public static void main(String[] arguments) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    System.exit(run(out, err, arguments));
  }

  /**
   * Runs the command; the kernel is started without the command line library, whose loading a front
   * end would wait for.
   */
  static int run(PrintWriter out, PrintWriter err, String... arguments) {
    for (CellLanguage language : CellLanguage.values()) {
      if (language.isKernel(arguments)) {
        return KernelCommand.serve(arguments[1], language);
      }
    }
    CommandLine line = new CommandLine(new Main()).setOut(out).setErr(err);
    line.setExecutionExceptionHandler(Main::told);
    return line.execute(arguments);
  }

  /**
   * A mistake of the user or of the disk is one sentence; anything else is ours and keeps its
   * trace.
   */
  private static int told(Exception e, CommandLine line, CommandLine.ParseResult parsed)
      throws Exception {
    if (e instanceof LessonException || e instanceof CommandException) {
      line.getErr().println(e.getMessage());
      return FAILED;
    }
    throw e;
  }

  @Override
  public void run() {
    if (spec != null) {
      spec.commandLine().usage(spec.commandLine().getOut());
    }
  }
}
