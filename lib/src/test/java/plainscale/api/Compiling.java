package plainscale.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Compiles Java sources against the library. */
final class Compiling {
  private Compiling() {}

  /** What a program has on its class path: the library and what it needs to run. */
  static String libraryOnly() {
    return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
        .filter(entry -> !entry.contains("test-classes"))
        .filter(entry -> !entry.matches(".*(junit|jqwik|archunit|opentest4j|surefire|jmh).*"))
        .reduce((a, b) -> a + File.pathSeparator + b)
        .orElseThrow();
  }

  /** Compiles with all warnings; none may be left. */
  static void compile(List<Path> sources, Path to, String classPath) throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    StringWriter told = new StringWriter();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
      List<String> options =
          List.of("--release", "17", "-proc:none", "-d", to.toString(), "-classpath", classPath);
      boolean done =
          compiler
              .getTask(told, files, null, options, null, files.getJavaFileObjectsFromPaths(sources))
              .call();
      assertTrue(done, told.toString());
      assertEquals("", told.toString());
    }
  }

  /** The folder of a module's sources, from wherever the tests run. */
  static Path sources(String kind) {
    Path here = Path.of("src", kind, "java");
    return Files.isDirectory(here) ? here : Path.of("lib").resolve(here);
  }
}
