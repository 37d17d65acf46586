package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
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

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sqrt(2 [m])",
        "x = sqrt(2 [m])\nx + 1\n1 + x\nx - 1 [s]\nshow x in m\nx^x\nsin(x)\ncontrast x with x\ncontrast 1 with x",
        "1/0",
        "0/0",
        "1/(x - x)\nx = 3",
        "0^0",
        "0^(-1)",
        "sqrt(-1)",
        "sqrt(-1 [m])",
        "sqrt(2 [m])^3",
        "(2 [m])^300",
        "(2 [m])^(1/7)",
        "(2 [m])^0.123",
        "(-8)^(1/3)",
        "cbrt(-8 [m³])",
        "ln(0)",
        "ln(-1)",
        "log10(0)",
        "asin(2)",
        "tan(90°)",
        "exp(2 [m])",
        "2^(2 [m])",
        "1 [m] + 1",
        "1 [m] + 1 [s]",
        "x = x",
        "x = x + 1",
        "a = b\nb = c\nc = a",
        "x = 1\nx = 2",
        "show x in y",
        "show 1 in words in m",
        "contrast 0 with 1",
        "contrast 1 [m] with 1 [s]",
        "contrast 1e-300 with 1e300",
        "contrast -1 with 1",
        "show 1 to 31 figures",
        "show 1 to 0 figures",
        "constants other",
        "given T = -300 °C",
        "given T = 20 °C ± 1 %\nT + T",
        "2 * (20 °C)",
        "show 1 in °C",
        "-(20 °C)",
        "contrast 20 °C with 30 °C",
        "given x = 1 ± 1e300\nx x x",
        "given x = 1e300 ± 1e300\nx^2",
        "given x = 0 ± 1\n1/x",
        "given x = 0 ± 1\nsqrt(x)",
        "given x = 0 ± 1\nln(x)",
        "given x = 1e-300 ± 1\n1/x",
        "given x = 1 ± 0",
        "given x = 1 ± 1e-300\nx^2",
        "given x = 0.5 ± 1e200\nasin(x)",
        "given x = 1 ± 0.1\nasin(x)",
        "given x = 5 ± 200 %",
        "given x = -5 ± 2",
        "given x = 1e300 km",
        "given x = 1e-300 nm",
        "given x = 1(1)",
        "given x = 2 [m^12 m^12 m^12]",
        "1 [((((((((m^12)^12)^12)^12)^12)^12)^12)^12)^12]",
        "1 [(((((km^12)^12)^12)^12)^12)^12]",
        "1 [(((Qm^12)^12)^12)^12]",
        "1 [m^99999999999999999999]",
        "1 [m²²²²²²²²²²²²²²²²]",
        "1 [km^12]^60",
        "1 [m/m]",
        "1 [Qm^12 Qm^12 Qm^12 Qm^12 Qm^12 Qm^12 Qm^12 Qm^12 Qm^12 Qm^12]",
        "1 [1/(qm^12 qm^12 qm^12 qm^12 qm^12 qm^12 qm^12)]",
        "1 [1]",
        "x = 1 [1] [1]",
        "(2 in 1)",
        "(2 in )",
        "(2 in",
        "show 2 in 1",
        "show 1 [m²] in L",
        "1 [10*300]",
        "1 [10^300]",
        "5 [[lb_av]] + 1 [kg]",
        "5 [kg.m/s2]",
        "say \"{1}{{}}\"",
        "say \"\\\"",
        "say \"\\\\\"",
        "say \"{\"",
        "say \"}\"",
        "say \"{}\"",
        "say \"{1 # 2}\"",
        "say \"{say \\\"x\\\"}\"",
        "say \"{x = 2}\"",
        "say \"{1 in words to 2 figures in m}\"",
        "say “{1}”",
        "show 0 in words",
        "show 0 in digits",
        "show 1e300 in words",
        "show 1e-300 in digits",
        "show -1e-300 in words",
        "show 1e300 [m] in digits",
        "show 1e40 in words",
        "show 1.23456789e100 to 30 figures",
        "m_e_e_e_e = 1",
        "a__b = 1",
        "a_ = 1",
        "_ = 2",
        "ħ = 1",
        "Ω = 1",
        "µ = 1\nμ",
        "in = 1",
        "to = 2",
        "sin = 2",
        "given = 2",
        "given given = 2",
        "show show",
        "1 \"2\" \"3\"",
        "x = 1 \"<script>alert(1)</script>\"",
        "x = 1 \"\u0000\ud800\"",
        "x\u0000",
        "\u0000",
        "\ud800",
        "\udc00x",
        "x = \ud800",
        "\ufeff1",
        "1\r\n+ 2",
        "1\r2",
        "1\u20282",
        "1\u0085\u00852",
        "١ + ٢",
        "１ + ２",
        "x١ = 2\nx١",
        "1 m١",
        "[m^١]",
        "1 [m^١]",
        "², ³",
        "2²³",
        "2⁻",
        "2⁻⁻¹",
        "2^²",
        "(1, 2)",
        "f(2)",
        "f (2)",
        "sin",
        "sin 30",
        "sin()",
        "sin(1, 2)",
        "sin²(30°)",
        "|x|",
        "5!",
        "x'",
        "a.b",
        "a.1",
        "1.a",
        "1..2",
        "1.2.3",
        "1,2,3",
        "1 ± 2",
        "(1 ± 2)",
        "1 +- 2",
        "x += 1",
        "x == 1",
        "= 1",
        "x =",
        "x = = 1",
        "1 = x",
        "x y = 2",
        "\"",
        "\"\"",
        "“",
        "\"x\" \"y\"",
        "100 km/h/s",
        "2 m^",
        "2 m^-",
        "2 m^x"
      })
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
