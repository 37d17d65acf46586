package plainscale.command;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** Where Jupyter looks for kernelspecs, after jupyter_core's rules for each system. */
final class JupyterFolders {
  private final Map<String, String> environment;
  private final Path home;
  private final String system;

  JupyterFolders(Map<String, String> environment, Path home, String system) {
    this.environment = environment;
    this.home = home;
    this.system = system;
  }

  static JupyterFolders ofThisMachine() {
    return new JupyterFolders(
        System.getenv(), Path.of(System.getProperty("user.home")), System.getProperty("os.name"));
  }

  /** The kernels of this user. */
  Path user() {
    return data().resolve("kernels");
  }

  /** The kernels of a prefix, such as a Python environment. */
  static Path under(Path prefix) {
    return prefix.resolve("share").resolve("jupyter").resolve("kernels");
  }

  /** The active Python environment, if there is one. */
  Optional<Path> activeEnvironment() {
    return set("VIRTUAL_ENV").or(() -> set("CONDA_PREFIX")).map(Path::of);
  }

  private Path data() {
    Optional<String> chosen = set("JUPYTER_DATA_DIR");
    if (chosen.isPresent()) {
      return Path.of(chosen.get());
    }
    if (system.startsWith("Mac")) {
      return home.resolve("Library").resolve("Jupyter");
    }
    if (system.startsWith("Windows")) {
      return set("APPDATA")
          .map(Path::of)
          .orElse(home.resolve("AppData/Roaming"))
          .resolve("jupyter");
    }
    return set("XDG_DATA_HOME")
        .map(Path::of)
        .orElse(home.resolve(".local/share"))
        .resolve("jupyter");
  }

  private Optional<String> set(String variable) {
    return Optional.ofNullable(environment.get(variable)).filter(value -> !value.isEmpty());
  }
}
