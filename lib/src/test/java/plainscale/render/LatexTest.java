package plainscale.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.sheet.Result;

class LatexTest {
  private static final String BEGIN = "$$\\begin{gathered}\n";
  private static final String END = "\n\\end{gathered}$$";

  static Stream<Samples.Sample> samples() {
    return Samples.all();
  }

  private static String line(String cell) {
    String tex = Renderers.latex(Samples.results(cell)).orElseThrow();
    assertTrue(tex.startsWith(BEGIN) && tex.endsWith(END), tex);
    return tex.substring(BEGIN.length(), tex.length() - END.length());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "w = m g_n    | w = m \\, g_{\\mathrm{n}} = \\left(0.0265 \\pm 0.0005\\right) \\, \\mathrm{N} = \\left(26.5 \\pm 0.5\\right) \\, \\mathrm{mN}",
        "d/n          | \\frac{d}{n} = 1.17 \\, \\mathrm{cm}",
        "6.71e-8      | 6.71 \\times {10}^{-8}",
        "9.81 [m/s²]  | 9.81 \\, \\mathrm{m} / {\\mathrm{s}}^{2}",
        "θ            | \\theta  = 30 \\mathrm{{}^{\\circ}}",
        "ε_0          | \\varepsilon _{0} = 2",
        "2 [%]        | 2 \\, \\mathrm{\\%}",
        "show n_there | n_{\\mathrm{there}} = 8.13 \\times {10}^{23}"
      })
  void aValueIsALineOfTex(String cell, String tex) {
    assertEquals(tex, line(cell));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"say \"so\"", "constants codata", "1/0", "contrast 1 with 2", "show 2 in words"})
  void whatIsNoMathematicsHasNoTex(String cell) {
    assertTrue(Renderers.latex(Samples.results(cell)).isEmpty());
  }

  @ParameterizedTest
  @MethodSource("samples")
  void bracesBalanceAndNothingEndsTheMathematicsEarly(Samples.Sample sample) {
    String tex = Renderers.latex(sample.results()).orElse(BEGIN + END);
    String inner =
        tex.substring(BEGIN.length(), Math.max(BEGIN.length(), tex.length() - END.length()));
    String bare = inner.replaceAll("\\\\\\\\|\\\\[{}$&#_%]", " ");
    assertFalse(bare.matches("(?s).*[$&#%<>~].*"), inner);
    int depth = 0;
    for (int i = 0; i < bare.length(); i++) {
      char c = bare.charAt(i);
      depth += c == '{' ? 1 : c == '}' ? -1 : 0;
      assertTrue(depth >= 0, inner);
    }
    assertEquals(0, depth, inner);
  }

  @ParameterizedTest
  @MethodSource("samples")
  void thereIsALineForEachValue(Samples.Sample sample) {
    long values = sample.results().stream().filter(Result.Valued.class::isInstance).count();
    String tex = Renderers.latex(sample.results()).orElse("");
    assertEquals(values, tex.isEmpty() ? 0 : tex.split("\\\\\\\\\n", -1).length);
  }
}
