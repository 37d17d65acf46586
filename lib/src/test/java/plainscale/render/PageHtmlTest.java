package plainscale.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The HTML of a page is well-formed, and holds MathML and SVG instead of TeX and images. */
class PageHtmlTest {
  private static final Set<String> ELEMENTS =
      Set.of(
          "table",
          "tbody",
          "tr",
          "td",
          "p",
          "b",
          "i",
          "br",
          "span",
          "div",
          "pre",
          "ol",
          "li",
          "details",
          "summary",
          "wbr",
          "root", // HTML
          "math",
          "mrow",
          "mi",
          "mn",
          "mo",
          "msub",
          "msup",
          "mfrac",
          "msqrt",
          "mroot",
          "mtext", // MathML Core
          "svg",
          "g",
          "title",
          "desc",
          "rect",
          "line",
          "path",
          "circle",
          "polygon",
          "polyline",
          "text",
          "tspan"); // SVG

  static Stream<Samples.Sample> samples() {
    return Samples.all();
  }

  private static Element parse(String html) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader("<root>" + html + "</root>")))
        .getDocumentElement();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void isWellFormedAndMadeOfKnownElements(Samples.Sample sample) throws Exception {
    NodeList all = parse(Renderers.pageHtml(sample.results())).getElementsByTagName("*");
    assertTrue(all.getLength() > 0);
    Set<String> used = new TreeSet<>();
    for (int i = 0; i < all.getLength(); i++) {
      used.add(((Element) all.item(i)).getTagName());
      for (int k = 0; k < all.item(i).getAttributes().getLength(); k++) {
        String attribute = all.item(i).getAttributes().item(k).getNodeName();
        assertTrue(!attribute.startsWith("on") && !attribute.endsWith("href"), attribute);
      }
    }
    used.removeAll(ELEMENTS);
    assertEquals(Set.of(), used);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "d/n      | <mfrac>",
        "sqrt(n)  | <msqrt>",
        "cbrt(n)  | <mroot>",
        "ε_0      | <msub><mi>ε</mi><mn>0</mn></msub>",
        "n_moved  | <msub><mi>n</mi><mi>moved</mi></msub>",
        "n^2      | <msup>",
        "sin(θ)   | <mi>sin</mi>",
        "2 [m/s]  | <mi mathvariant=\"normal\">m</mi>"
      })
  void mathematicsIsMathMl(String cell, String fragment) {
    String html = Renderers.pageHtml(Samples.results(cell));
    assertTrue(html.contains(fragment), html);
    assertTrue(html.contains("<math displaystyle=\"true\">"), html);
  }

  @Test
  void aContrastHasItsRuler() throws Exception {
    Element root =
        parse(Renderers.pageHtml(Samples.results("contrast n_moved with n_there \"<Title>\"")));
    assertEquals(1, root.getElementsByTagName("svg").getLength());
    assertTrue(root.getTextContent().startsWith("<Title>"));
    assertEquals(0, root.getElementsByTagName("img").getLength());
  }

  @Test
  void hostileWordsAreReadAsTheyWereWritten() throws Exception {
    for (String hostile : Samples.hostile()) {
      String text =
          hostile.replace("\\", "\\\\").replace("\"", "\\\"").replace("{", "{{").replace("}", "}}");
      Element root = parse(Renderers.pageHtml(Samples.results("say \"" + text + "\"")));
      assertEquals(hostile, root.getTextContent());
    }
  }
}
