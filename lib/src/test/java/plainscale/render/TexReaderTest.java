package plainscale.render;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.Random;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.InputSource;

class TexReaderTest {
  private static String inner(String tex) {
    String mathMl = TexReader.mathMl(tex, false).orElse("beyond");
    return mathMl.replaceAll("^<math><mrow>|</mrow></math>$", "").replaceAll("</?mrow>", "");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "F = qE | <mi>F</mi><mo>=</mo><mi>q</mi><mi>E</mi>",
        "d^2 | <msup><mi>d</mi><mn>2</mn></msup>",
        "F_e | <msub><mi>F</mi><mi>e</mi></msub>",
        "x_1^2 | <msubsup><mi>x</mi><mn>1</mn><mn>2</mn></msubsup>",
        "\\frac{1}{2} m v^2 | <mfrac><mn>1</mn><mn>2</mn></mfrac><mi>m</mi><msup><mi>v</mi><mn>2</mn></msup>",
        "\\sqrt{2} | <msqrt><mn>2</mn></msqrt>",
        "\\sqrt[3]{V} | <mroot><mi>V</mi><mn>3</mn></mroot>",
        "\\theta \\approx 4.5 | <mi>θ</mi><mo>≈</mo><mn>4.5</mn>",
        "\\tan\\theta | <mi>tan</mi><mo>&#x2061;</mo><mi>θ</mi>",
        "-3 | <mo>−</mo><mn>3</mn>",
        "a < b | <mi>a</mi><mo>&lt;</mo><mi>b</mi>",
        "10\\,\\mathrm{N} | <mn>10</mn><mspace width=\"0.17em\"/><mtext>N</mtext>",
        "\\left(a\\right. | <mo>(</mo><mi>a</mi>",
      })
  void theSubsetBecomesMathMl(String tex, String mathMl) {
    assertEquals(mathMl, inner(tex));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\\begin{aligned}x\\end{aligned}",
        "\\unknown",
        "{a",
        "a}",
        "\\frac{1}",
        "x^",
        "\\sqrt[3",
        "\\text{a",
        "a & b",
        "\\"
      })
  void whatIsBeyondTheSubsetIsNotConverted(String tex) {
    assertTrue(TexReader.mathMl(tex, false).isEmpty(), () -> inner(tex));
  }

  @Test
  void deepAndLongFormulasAreRefusedAtOnce() {
    assertTrue(TexReader.mathMl("{".repeat(1900), false).isEmpty());
    assertTrue(TexReader.mathMl("x".repeat(100_000), false).isEmpty());
  }

  @Test
  void whateverIsConvertedIsWellFormed() {
    Random random = new Random(20_260_901);
    String[] pieces = {
      "\\frac",
      "{",
      "}",
      "x",
      "2",
      "^",
      "_",
      "\\theta",
      "\\sqrt",
      "[",
      "]",
      "\\left(",
      "\\right)",
      "<",
      "&",
      "\\text{a<b}",
      " "
    };
    int converted = 0;
    for (int i = 0; i < 20_000; i++) {
      StringBuilder tex = new StringBuilder();
      int length = 1 + random.nextInt(8);
      for (int k = 0; k < length; k++) {
        tex.append(pieces[random.nextInt(pieces.length)]);
      }
      String mathMl = TexReader.mathMl(tex.toString(), true).orElse("");
      if (!mathMl.isEmpty()) {
        converted++;
        assertDoesNotThrow(
            () ->
                DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(mathMl))),
            tex.toString());
      }
    }
    assertTrue(converted > 1000, converted + " converted");
  }
}
