package plainscale;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Runs the tests in {@code src/test/jupyter} against the packaged jar: pytest in an environment of
 * its own under {@code target}, made again only when {@code requirements.txt} changes. Where the
 * machine lacks Python or a browser, one line says what was not run; on a build server ({@code
 * CI=true}) that is a failure.
 */
class JupyterIT {

  // The oldest Python that the pinned packages run on.
  private static final String NEW_ENOUGH = "import sys; sys.exit(sys.version_info < (3, 11))";
  private static final boolean WINDOWS =
      System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("windows");

  private final Path module = Path.of(System.getProperty("basedir", "")).toAbsolutePath();
  private final Path tests = module.resolve("src/test/jupyter");
  private final Path environment = module.resolve("target/jupyter-venv");

  @Test
  void theKernelPassesItsTestsInJupyter() throws IOException, InterruptedException {
    Optional<String> python = python();
    if (python.isEmpty()) {
      notRun("the tests in Jupyter (there is no Python 3.11 or later)");
    } else if (!prepared(python.get())) {
      notRun("the tests in Jupyter (venv and pip could not install requirements.txt)");
    } else if (hasBrowser()) {
      assertEquals(0, pytest());
    } else {
      notRun("the tests in a browser (there is no Chromium with its chromedriver)");
      assertEquals(0, pytest("-m", "not browser"));
    }
  }

  private static void notRun(String what) {
    System.out.println("Not run: " + what);
    assertNotEquals("true", System.getenv("CI"), "not run: " + what);
  }

  private static Optional<String> python() throws InterruptedException {
    List<String> names = List.of("python3", "python", "python3.14", "python3.13", "python3.12");
    for (String name : names) {
      if (succeeds(name, "-c", NEW_ENOUGH)) {
        return Optional.of(name);
      }
    }
    return Optional.empty();
  }

  private static boolean hasBrowser() {
    return onPath("chromedriver")
        && Stream.of("chromium", "chromium-browser", "google-chrome", "chrome")
            .anyMatch(JupyterIT::onPath);
  }

  private static boolean onPath(String command) {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .map(folder -> Path.of(folder, WINDOWS ? command + ".exe" : command))
        .anyMatch(Files::isExecutable);
  }

  /** Makes the environment, or finds that it holds what is asked for already. */
  private boolean prepared(String python) throws IOException, InterruptedException {
    Path requirements = tests.resolve("requirements.txt");
    Path installed = environment.resolve("requirements.txt");
    if (Files.exists(installed) && Files.mismatch(installed, requirements) == -1) {
      return true;
    }
    String file = requirements.toString();
    boolean made =
        succeeds(python, "-m", "venv", "--clear", environment.toString())
            && succeeds(environmentPython(), "-m", "pip", "install", "--requirement", file);
    if (made) {
      Files.copy(requirements, installed);
    }
    return made;
  }

  private String environmentPython() {
    return environment.resolve(WINDOWS ? "Scripts/python.exe" : "bin/python").toString();
  }

  /** Runs pytest and passes on each line that it prints, so that one sees how far it is. */
  private int pytest(String... arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(environmentPython(), "-m", "pytest", "-v"));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.directory(tests.toFile()).redirectErrorStream(true);
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    builder.environment().put("PLAINSCALE_JAR", System.getProperty("plainscale.jar"));
    builder.environment().put("PYTHONDONTWRITEBYTECODE", "1");
    builder.environment().put("PYTHONUNBUFFERED", "1");
    builder.environment().put("PYTHONUTF8", "1");
    Process process = builder.start();
    process.getOutputStream().close();
    // Not inheritIO: the output stream of this Java belongs to the build's own messages.
    try (BufferedReader lines = process.inputReader(StandardCharsets.UTF_8)) {
      lines.lines().forEach(System.out::println);
    }
    return process.waitFor();
  }

  private static boolean succeeds(String... command) throws InterruptedException {
    try {
      return new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start()
              .waitFor()
          == 0;
    } catch (IOException absent) {
      return false;
    }
  }
}
