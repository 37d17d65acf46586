package plainscale.command;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import plainscale.document.LessonException;
import plainscale.document.WholeFile;

/**
 * The kernelspec: a folder with kernel.json, a copy of the jar (so that a cleaned build does not
 * break the notebooks), the logo, and an archive of loaded classes that makes the kernel start
 * faster.
 */
final class KernelSpec {
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final String JAR = "plainscale.jar";
  private static final String ARCHIVE = "plainscale.jsa";
  private static final int ARCHIVE_SECONDS = 60;

  /**
   * A kernel is short-lived and small: the first compiler, the serial collector, a bounded heap; no
   * chatter of the VM.
   */
  private static final List<String> FLAGS =
      List.of(
          "-Xshare:auto",
          "-XX:TieredStopAtLevel=1",
          "-XX:+UseSerialGC",
          "-Xms16m",
          "-Xlog:disable");

  private final CellLanguage language;
  private final Path folder;

  /** A kernelspec in a folder of kernels. */
  KernelSpec(CellLanguage language, Path kernels) {
    this.language = language;
    this.folder = kernels.resolve(language.spec());
  }

  Path folder() {
    return folder;
  }

  /** Writes the folder; an older one is replaced. */
  void write() throws CommandException, LessonException {
    Path jar = ownJar();
    try {
      Files.createDirectories(folder);
      Path target = folder.resolve(JAR);
      if (!Files.exists(target) || !Files.isSameFile(jar, target)) {
        Files.copy(jar, target, StandardCopyOption.REPLACE_EXISTING);
      }
      logo();
    } catch (IOException e) {
      throw new CommandException(
          "I cannot write the kernelspec to " + folder + ": " + e.getMessage() + ".");
    }
    WholeFile.write(folder.resolve("kernel.json"), json());
  }

  private void logo() throws IOException {
    try (InputStream logo =
        Objects.requireNonNull(KernelSpec.class.getResourceAsStream("logo-svg.svg"))) {
      Files.copy(logo, folder.resolve("logo-svg.svg"), StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static Path ownJar() throws CommandException {
    try {
      Path place = Path.of(Main.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      if (Files.isRegularFile(place)) {
        return place;
      }
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
    throw new CommandException(
        "Install from the jar: mvn -DskipTests package, then java -jar kernel/target/plainscale.jar install.");
  }

  private String json() {
    ObjectNode spec = JSON.createObjectNode();
    ArrayNode argv = spec.putArray("argv");
    argv.add(java());
    argv.add("-XX:SharedArchiveFile=" + folder.toAbsolutePath().resolve(ARCHIVE));
    FLAGS.forEach(argv::add);
    argv.add("-Xmx" + language.heap());
    argv.add("-jar").add(folder.toAbsolutePath().resolve(JAR).toString());
    language.arguments("{connection_file}").forEach(argv::add);
    spec.put("display_name", language.title());
    spec.put("language", language.jupyterName());
    spec.put("interrupt_mode", "message");
    spec.putObject("metadata").put("debugger", false);
    return spec.toPrettyString() + "\n";
  }

  private static String java() {
    return Path.of(System.getProperty("java.home"), "bin", "java").toString();
  }

  /**
   * Makes the archive of classes by running a sample cell once; says whether that worked. A kernel
   * runs without it too.
   */
  boolean archive() throws CommandException {
    Path archive = folder.toAbsolutePath().resolve(ARCHIVE);
    try {
      Files.deleteIfExists(archive);
      Process process =
          new ProcessBuilder(
                  java(),
                  "-XX:ArchiveClassesAtExit=" + archive,
                  "-XX:+UseSerialGC",
                  "-Xlog:disable",
                  "-jar",
                  folder.toAbsolutePath().resolve(JAR).toString(),
                  WarmUpCommand.NAME,
                  language.name())
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      boolean ended = process.waitFor(ARCHIVE_SECONDS, TimeUnit.SECONDS);
      if (!ended) {
        process.destroyForcibly();
      }
      return ended && process.exitValue() == 0 && Files.exists(archive);
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CommandException("Interrupted while the archive of classes was made.");
    }
  }
}
