package plainscale.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A Python interpreter, found or in an environment of ours, and the running of it. */
record Python(Path executable) {
  private static final List<String> NAMES = List.of("python3", "python");
  private static final String CHECK = "import sys, venv; print(sys.version_info >= (3, 9))";

  /** The first interpreter on the path that is new enough to make an environment. */
  static Optional<Python> find() {
    return NAMES.stream().map(name -> new Python(Path.of(name))).filter(Python::works).findFirst();
  }

  /** The interpreter of an environment in a folder. */
  static Python in(Path environment) {
    Path windows = environment.resolve("Scripts").resolve("python.exe");
    return new Python(
        Files.exists(windows) ? windows : environment.resolve("bin").resolve("python"));
  }

  private boolean works() {
    try {
      Process process =
          new ProcessBuilder(executable.toString(), "-c", CHECK).redirectErrorStream(true).start();
      String answer = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return process.waitFor() == 0 && answer.strip().equals("True");
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** Runs it with its output on ours; returns the exit code. */
  int run(Path folder, List<String> arguments) throws CommandException {
    try {
      List<String> command = new ArrayList<>(List.of(executable.toString()));
      command.addAll(arguments);
      return new ProcessBuilder(command).directory(folder.toFile()).inheritIO().start().waitFor();
    } catch (IOException e) {
      throw new CommandException("I cannot start " + executable + ": " + e.getMessage() + ".");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CommandException("Interrupted.");
    }
  }
}
