package plainscale.api;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Every example in the documentation of the façade compiles, runs, and says the truth. */
class ExamplesTest {
  private static final Pattern EXAMPLE =
      Pattern.compile("<pre>\\{@code\\R(.*?)\\R *\\* ?}</pre>", Pattern.DOTALL);

  private static final String HEAD =
      """
      import static plainscale.api.Plainscale.*;
      import java.util.*;
      import plainscale.api.*;
      import plainscale.data.*;
      import plainscale.notation.*;
      import plainscale.notation.DataStatement.Curve;
      import plainscale.quantity.*;
      import plainscale.sheet.*;

      public class %s {
        static int checks;
        static void check(boolean holds) {
          checks++;
          if (!holds) {
            throw new AssertionError("line " + checks + " that is checked does not hold");
          }
        }
        public static int run() {
      %s
          return checks;
        }
      }
      """;

  @TempDir static Path folder;

  @TestFactory
  Stream<DynamicTest> examplesHold() throws Exception {
    Map<String, String> examples = examples();
    List<Path> sources = new ArrayList<>();
    for (Map.Entry<String, String> example : examples.entrySet()) {
      Path file = folder.resolve(example.getKey() + ".java");
      Files.writeString(file, HEAD.formatted(example.getKey(), example.getValue()));
      sources.add(file);
    }
    Compiling.compile(sources, folder, System.getProperty("java.class.path"));
    return examples.keySet().stream().map(name -> dynamicTest(name, () -> run(name)));
  }

  @SuppressWarnings("BanClassLoader") // the classes were made a moment ago, by this test
  private static void run(String name) throws Exception {
    URL[] place = {folder.toUri().toURL()};
    try (URLClassLoader loader = new URLClassLoader(place, ExamplesTest.class.getClassLoader())) {
      Object checks = loader.loadClass(name).getMethod("run").invoke(null);
      assertTrue((int) checks > 0, name + " checks nothing");
    } catch (InvocationTargetException e) {
      throw new AssertionError(name + ": " + e.getCause(), e.getCause());
    }
  }

  /** The code of each example, by a name made from its type. */
  private static Map<String, String> examples() throws IOException {
    Map<String, String> examples = new LinkedHashMap<>();
    for (Path file : files()) {
      String source = Files.readString(file);
      Matcher matcher = EXAMPLE.matcher(source);
      int count = 0;
      while (matcher.find()) {
        String type = file.getFileName().toString().replace(".java", "");
        examples.put(
            type + "Example" + ++count, matcher.group(1).replaceAll("(?m)^ *\\* ?", "        "));
      }
      assertTrue(count > 0 || !isPublicType(source), file + " has no example");
    }
    return examples;
  }

  private static boolean isPublicType(String source) {
    return Pattern.compile("(?m)^public ").matcher(source).find();
  }

  private static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(Compiling.sources("main").resolve("plainscale/api"))) {
      return files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
    }
  }
}
