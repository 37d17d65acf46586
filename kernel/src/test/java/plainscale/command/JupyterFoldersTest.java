package plainscale.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The places are those of jupyter_core's documentation, "Data files". */
class JupyterFoldersTest {
  private static final Path HOME = Path.of("home");

  private static JupyterFolders on(String system, Map<String, String> environment) {
    return new JupyterFolders(environment, HOME, system);
  }

  @Test
  void everySystemHasItsOwnUserFolder() {
    assertEquals(HOME.resolve(".local/share/jupyter/kernels"), on("Linux", Map.of()).user());
    assertEquals(HOME.resolve("Library/Jupyter/kernels"), on("Mac OS X", Map.of()).user());
    assertEquals(
        HOME.resolve("AppData/Roaming/jupyter/kernels"), on("Windows 11", Map.of()).user());
  }

  @Test
  void variablesOfTheEnvironmentComeFirst() {
    assertEquals(
        Path.of("d/kernels"),
        on("Linux", Map.of("JUPYTER_DATA_DIR", "d", "XDG_DATA_HOME", "x")).user());
    assertEquals(Path.of("x/jupyter/kernels"), on("Linux", Map.of("XDG_DATA_HOME", "x")).user());
    assertEquals(Path.of("a/jupyter/kernels"), on("Windows 11", Map.of("APPDATA", "a")).user());
  }

  @Test
  void anActiveEnvironmentIsFoundByItsVariable() {
    assertEquals(
        Optional.of(Path.of("v")),
        on("Linux", Map.of("VIRTUAL_ENV", "v", "CONDA_PREFIX", "c")).activeEnvironment());
    assertEquals(
        Optional.of(Path.of("c")), on("Linux", Map.of("CONDA_PREFIX", "c")).activeEnvironment());
    assertTrue(on("Linux", Map.of("VIRTUAL_ENV", "")).activeEnvironment().isEmpty());
  }

  @Test
  void aPrefixHoldsKernelsUnderShare() {
    assertEquals(Path.of("p/share/jupyter/kernels"), JupyterFolders.under(Path.of("p")));
  }
}
