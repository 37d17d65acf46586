package plainscale.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import plainscale.session.KernelServer;
import plainscale.wire.ConnectionFile;
import plainscale.wire.MalformedConnectionFile;

/** {@code kernel}: what Jupyter starts. */
@Command(
    name = "kernel",
    mixinStandardHelpOptions = true,
    description = "Serves one notebook; Jupyter starts it with a connection file.",
    footer = {"", "Example:", "  java -jar plainscale.jar kernel connection.json"})
final class KernelCommand implements Callable<Integer> {
  @Parameters(
      index = "0",
      paramLabel = "FILE",
      description = "The connection file that Jupyter writes.")
  private String file = "";

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "LANGUAGE",
      description =
          "What its cells are written in: ${COMPLETION-CANDIDATES}. Default: ${DEFAULT-VALUE}",
      defaultValue = "NOTATION")
  private CellLanguage language = CellLanguage.NOTATION;

  @Override
  public Integer call() {
    return serve(file, language);
  }

  /** Serves until Jupyter asks for the end; returns the exit code. */
  static int serve(String file, CellLanguage language) {
    try {
      return KernelServer.run(ConnectionFile.read(Path.of(file)), language.factory());
    } catch (MalformedConnectionFile e) {
      System.err.println(e.getMessage());
      return KernelServer.FAILED;
    }
  }
}
