package plainscale.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plain Java program with nothing but the library on its class path. */
class ProgramTest {
  private static final double K_E = 8.987_551_786_2e9; // CODATA 2022, N·m²/C²
  private static final double G_N = 9.806_65; // standard acceleration, m/s²
  private static final double CHARGE = 60e-9;
  private static final double MASS = 2.70e-3;

  @TempDir Path folder;

  /**
   * By hand, in doubles: from k q²/d² = m g d/(2 s) comes d = (2 k q² s/(m g))^(1/3) and q =
   * d^(3/2) (m g/(2 k s))^(1/2), so the relative uncertainty of q is the root of the squares of 3/2
   * u(d)/d, 1/2 u(m)/m and 1/2 u(s)/s.
   */
  private static List<String> byHand() {
    List<String> lines = new ArrayList<>();
    double share;
    double s = 0.15;
    do {
      s += 0.15;
      double d = Math.cbrt(2 * K_E * CHARGE * CHARGE * s / (MASS * G_N));
      double byDistance = 1.5 * 0.005 / d;
      double byRest = Math.hypot(0.5 * 0.05e-3 / MASS, 0.5 * 0.002 / s);
      share = Math.hypot(byDistance, byRest);
      lines.add(
          String.format(
              Locale.ROOT,
              "%.2f m of thread: %.1f cm apart, the charge to %.1f %%",
              s,
              100 * d,
              100 * share));
    } while (share > 0.05);
    return lines;
  }

  @Test
  void theExampleGivesWhatIsComputedByHand() throws Exception {
    String classPath = Compiling.libraryOnly();
    Path source = Compiling.sources("example").resolve("example/ThreadLength.java");
    Compiling.compile(List.of(source), folder, classPath);
    List<String> lines = run("example.ThreadLength", classPath).lines().toList();
    List<String> expected = byHand();
    assertEquals(9, expected.size());
    assertEquals(expected, lines.subList(0, expected.size()));
    String rest = String.join("\n", lines.subList(expected.size(), lines.size()));
    assertTrue(rest.startsWith("q = (60.0 ± 3.0) nC"), rest);
    assertTrue(rest.contains("measure d better"), rest);
  }

  private String run(String type, String classPath) throws IOException, InterruptedException {
    String program = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String path = folder + File.pathSeparator + classPath;
    Path output = folder.resolve("output.txt");
    Process process =
        new ProcessBuilder(
                program, "-Dstdout.encoding=UTF-8", "-Dfile.encoding=UTF-8", "-cp", path, type)
            .redirectErrorStream(true)
            .redirectOutput(output.toFile())
            .start();
    boolean ended = process.waitFor(2, TimeUnit.MINUTES);
    process.destroyForcibly();
    String told = Files.readString(output, StandardCharsets.UTF_8);
    assertTrue(ended, "it did not end: " + told);
    assertEquals(0, process.exitValue(), told);
    return told;
  }
}
