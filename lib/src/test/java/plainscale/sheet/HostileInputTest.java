package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.notation.Notation;
import plainscale.notation.Problem;

/**
 * Whatever a cell holds, it gives results or sentences, and never an exception or an endless wait.
 */
@Timeout(60) // only against hanging
class HostileInputTest {
  private static final List<String> TOKENS =
      List.of(
          "given",
          "show",
          "say",
          "contrast",
          "constants",
          "in",
          "to",
          "with",
          "figures",
          "words",
          "digits",
          "textbook",
          "x",
          "m",
          "θ",
          "ε_0",
          "e",
          "h",
          "sin",
          "sqrt",
          "ln",
          "log",
          "exp",
          "(",
          ")",
          "[",
          "]",
          "{",
          "}",
          "+",
          "-",
          "−",
          "*",
          "·",
          "/",
          "^",
          "²",
          "⁻³",
          "=",
          "±",
          "+-",
          ",",
          "\"",
          "\"{x}\"",
          "\"{x in words}\"",
          "#",
          "\n",
          "\n  ",
          " ",
          "\t",
          "0",
          "1",
          "2",
          "2.0",
          "30°",
          "9e99",
          "1e-300",
          "2.70(5)",
          "3.0×10⁻⁹",
          "8 700",
          ".5",
          "m",
          "kg",
          "km/h",
          "[m/s²]",
          "°C",
          "%",
          "[[lb_av]]",
          "N·m",
          "eV",
          "a_",
          "_",
          "₀",
          ".",
          "'",
          "\\",
          "?",
          "π");

  private static Run run(String source) {
    return Inspection.run(new Sheet(), "cell", source);
  }

  private static Problem onlyProblem(String source) {
    List<Result.Mistaken> mistakes = run(source).mistakes();
    assertEquals(1, mistakes.size(), () -> mistakes.toString());
    return mistakes.get(0).problem();
  }

  static Stream<String> tooMuch() {
    return Stream.of(
        "(".repeat(1_000_000) + "1" + ")".repeat(1_000_000),
        "x".repeat(1 << 20),
        "1 + ".repeat(1 << 18) + "1",
        "\n".repeat(1_000_000),
        "(".repeat(5_000) + "1" + ")".repeat(5_000),
        "x = 1\n".repeat(501),
        "9^9^9^9",
        "2^2^2^2^2^2^2^2^2",
        "1e999999999",
        "1e301",
        "1e-301",
        "10^400",
        "10^(-400)",
        "exp(1000)",
        "exp(exp(10))",
        "1".repeat(15_000),
        "0." + "3".repeat(15_000),
        "1" + "\u202f000".repeat(4_000),
        "2^" + "-".repeat(900) + "2",
        "2" + "^2".repeat(900));
  }

  @ParameterizedTest(name = "{index}")
  @MethodSource("tooMuch")
  void whatIsTooMuchIsRefusedAsALimit(String source) {
    assertEquals(Problem.Kind.LIMIT, onlyProblem(source).kind());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "(",
        ")",
        "-",
        "^2",
        "+a",
        "\"",
        "{",
        "}",
        "[",
        "]",
        " 1",
        "1 m ",
        "a=",
        "a",
        "θ",
        "_",
        "²",
        "⁻",
        "°",
        "%",
        "/",
        "1/",
        "1,",
        "1.",
        "±",
        "+-",
        "sin(",
        "sqrt ",
        "\\",
        "\n",
        "\n ",
        "\n #",
        "#",
        " ",
        "\t",
        "\u00a0",
        "\u202f",
        "\u0301",
        "a\u0301",
        "say \"{",
        "{x",
        "1 [m",
        "[m]",
        "given ",
        "1e",
        "2(1)",
        "to 2 figures ",
        "in m ",
        "1 in ",
        "(x in ",
        "m^",
        "m^12 ",
        "km ",
        "₀",
        "\u200b",
        "\ud83c"
      })
  void anyNumberOfRepetitionsOfASignIsBorne(String sign) {
    for (int length : new int[] {1, 2, 3, 101, 1_000, 19_999}) {
      String many = sign.repeat(Math.max(1, length / sign.length()));
      run(many);
      run("x = " + many.substring(0, Math.min(many.length(), 19_990)));
      run("1 " + many.substring(0, Math.min(many.length(), 19_990)));
    }
  }

  /** One cell a line, with the escapes of Java's strings. */
  static List<String> cellsWithoutMeaning() throws IOException {
    try (InputStream in =
        Objects.requireNonNull(HostileInputTest.class.getResourceAsStream("hostile-cells.txt"))) {
      String lines = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      List<String> cells = lines.lines().map(HostileInputTest::unescaped).toList();
      assertTrue(cells.size() >= 160, "only " + cells.size() + " cells");
      return cells;
    }
  }

  private static String unescaped(String line) {
    return Pattern.compile("\\\\u([0-9a-f]{4})")
        .matcher(line)
        .replaceAll(
            code ->
                Matcher.quoteReplacement(Character.toString(Integer.parseInt(code.group(1), 16))))
        .translateEscapes();
  }

  // The usual name of a case would put half characters into the report.
  @ParameterizedTest(name = "line {index}")
  @MethodSource("cellsWithoutMeaning")
  void whatHasNoMeaningIsASentence(String source) {
    Sheet sheet = new Sheet();
    Inspection.run(sheet, "before", "given z = 2.0 ± 0.1 m \"length\"");
    Inspection.run(sheet, "cell", source);
    Inspection.run(sheet, "after", "z z");
    Inspection.run(sheet, "cell", "");
  }

  @Test
  void divisionByZeroAndCirclesAreNamed() {
    assertEquals("You are dividing by zero.", onlyProblem("1/0").sentence());
    assertEquals("“x” is defined by itself: x → x.", onlyProblem("x = x + 1").sentence());
    assertEquals(Problem.Kind.VALUE, onlyProblem("sqrt(-1 [m])").kind());
  }

  @Test
  void aTextOfThreeHundredThousandZeroBytesIsALimit() {
    assertEquals(Problem.Kind.LIMIT, onlyProblem("\u0000".repeat(300_000)).kind());
  }

  @Test
  void aCellOfTheGreatestLengthRuns() {
    String sum = "x = 1" + " + 1".repeat(400);
    String padding = " ".repeat(Notation.LONGEST - sum.length());
    assertTrue(run(sum + padding).ok());
  }

  @Test
  void longNamesAreBorne() {
    String name = "q".repeat(9_000);
    assertFalse(run(name).ok());
    run(name + " = 1\n" + name);
    run("1 [" + name + "]");
    run("given x = 1 " + name);
  }

  @Test
  void seededRandomUnicodeGivesSentences() {
    Random random = new Random(20_261);
    Sheet sheet = new Sheet();
    for (int i = 0; i < 5_000; i++) {
      StringBuilder cell = new StringBuilder();
      int length = random.nextInt(60);
      for (int k = 0; k < length; k++) {
        cell.appendCodePoint(codePoint(random));
      }
      Inspection.run(sheet, "cell-" + i % 7, cell.toString());
    }
  }

  /** ASCII, the basic plane with its lone surrogates, all of Unicode. */
  private static int codePoint(Random random) {
    return switch (random.nextInt(4)) {
      case 0, 1 -> random.nextInt(0x80);
      case 2 -> random.nextInt(0x10000);
      default -> random.nextInt(Character.MAX_CODE_POINT + 1);
    };
  }

  @Test
  void seededRandomSequencesOfTokensGiveResultsOrSentences() {
    Random random = new Random(20_262);
    int ok = 0;
    Sheet sheet = new Sheet();
    for (int i = 0; i < 20_000; i++) {
      if (i % 50 == 0) {
        sheet = new Sheet();
        Inspection.run(sheet, "givens", "given x = 2.0 ± 0.1 m\nθ = 30°\nq = 3");
      }
      ok += Inspection.run(sheet, "cell-" + i % 5, tokens(random)).ok() ? 1 : 0;
    }
    assertTrue(ok > 200, ok + " cells without mistakes: too few to try the renderers on");
  }

  private static String tokens(Random random) {
    StringBuilder cell = new StringBuilder();
    int length = 1 + random.nextInt(12);
    for (int k = 0; k < length; k++) {
      cell.append(TOKENS.get(random.nextInt(TOKENS.size())));
      cell.append(random.nextInt(3) == 0 ? "" : " ");
    }
    return cell.toString();
  }

  @Test
  void aChainOfFiveHundredDefinitionsInOneCellFollowsAChange() {
    Sheet sheet = new Sheet();
    Inspection.run(sheet, "first", "a0 = 1");
    List<String> lines = new ArrayList<>();
    IntStream.rangeClosed(1, 499).forEach(i -> lines.add("a%d = a%d + 1".formatted(i, i - 1)));
    assertTrue(Inspection.run(sheet, "chain", String.join("\n", lines)).ok());
    Run change = Inspection.run(sheet, "first", "a0 = 1001");
    assertEquals(1, change.updates().size());
    assertEquals(1500, sheet.value("a499").orElseThrow().value().intValueExact());
  }

  @Test
  void aChainOfFiveHundredCellsFollowsAChange() {
    Sheet sheet = new Sheet();
    Inspection.run(sheet, "cell-0", "a0 = 1");
    for (int i = 1; i <= 500; i++) {
      Run run = sheet.run("cell-" + i, "a%d = a%d + 1".formatted(i, i - 1));
      assertTrue(run.ok(), () -> run.mistakes().toString());
    }
    Run change = Inspection.run(sheet, "cell-0", "a0 = 1001");
    assertEquals(500, change.updates().size());
    assertTrue(
        change.updates().stream()
            .flatMap(u -> u.results().stream())
            .noneMatch(Result.Mistaken.class::isInstance));
    assertEquals(1501, sheet.value("a500").orElseThrow().value().intValueExact());
  }

  @Test
  void aChainWrittenBackwardsIsRefusedWithASentenceOrHasItsValue() {
    List<String> lines = new ArrayList<>();
    IntStream.rangeClosed(1, 499).forEach(i -> lines.add("a%d = a%d + 1".formatted(i - 1, i)));
    lines.add("a499 = 1");
    run(String.join("\n", lines));
  }
}
