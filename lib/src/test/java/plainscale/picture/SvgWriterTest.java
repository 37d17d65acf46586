package plainscale.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import plainscale.magnitude.Writing;

class SvgWriterTest {
  private static Element parse(Scene scene) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    factory.setNamespaceAware(true);
    String svg = SvgWriter.write(scene);
    return factory
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)))
        .getDocumentElement();
  }

  private static String first(Element root, String name) {
    return root.getElementsByTagName(name).item(0).getTextContent();
  }

  @Test
  void isSvgWithATextAlternativeAndAGround() throws Exception {
    Scene scene = Scenes.ruler("Two counts", Scenes.electrons());
    Element root = parse(scene);
    assertEquals("http://www.w3.org/2000/svg", root.getNamespaceURI());
    assertEquals("img", root.getAttribute("role"));
    assertEquals("Two counts", first(root, "title"));
    assertEquals(scene.alternative(), first(root, "desc"));
    Element ground = (Element) root.getElementsByTagName("rect").item(0);
    assertEquals("#ffffff", ground.getAttribute("fill"));
    assertEquals(root.getAttribute("width"), ground.getAttribute("width"));
  }

  @Test
  void hostileLabelsAreEscaped() throws Exception {
    String hostile = "a <b> & \"c\" ]]> \u0000\ud800 'd'";
    Scene scene =
        Scenes.ruler(
            hostile,
            List.of(Scenes.mark(hostile, "1E+3", "<&\""), Scenes.mark("x", "2E+9", "<&\"")));
    String svg = SvgWriter.write(scene);
    assertFalse(svg.contains("<b>"));
    Element root = parse(scene);
    assertEquals("a <b> & \"c\" ]]> \ufffd\ufffd 'd'", first(root, "title"));
    assertEquals(0, root.getElementsByTagName("b").getLength());
  }

  @Test
  void everySceneIsWellFormedAndRefersToNothingOutside() throws Exception {
    Random random = new Random(70);
    for (int i = 0; i < 200; i++) {
      for (Scene scene :
          List.of(
              Scenes.ruler("Title", Scenes.random(random, 90)),
              NestedSquares.of(
                  "Title", Marks.of(Scenes.random(random, 14).subList(0, 2)), Writing.USUAL),
              Dots.of("Title", Scenes.random(random, 40).subList(0, 2), Writing.USUAL),
              MagnitudeRuler.of("Title", Scenes.random(random, 40), List.of(), Writing.USUAL))) {
        assertEquals("svg", parse(scene).getLocalName());
        String svg = SvgWriter.write(scene);
        assertFalse(svg.contains("href") || svg.contains("url(") || svg.contains("NaN"), svg);
      }
    }
  }

  @Test
  void theSameSceneGivesTheSameTextWhateverTheLocale() {
    String svg = SvgWriter.write(Scenes.ruler("t", Scenes.forces()));
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertEquals(svg, SvgWriter.write(Scenes.ruler("t", Scenes.forces())));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void aHundredDiscsAreOneShortPath() throws Exception {
    List<Point> centres = IntStream.range(0, 100).mapToObj(i -> new Point(i, 2.5 * i)).toList();
    Scene scene = new Scene(100, 300, "t", "a", List.of(new Shape.Discs(centres, 3.2, Shade.INK)));
    Element path = (Element) parse(scene).getElementsByTagName("path").item(0);
    assertEquals("round", path.getAttribute("stroke-linecap"));
    assertEquals("6.4", path.getAttribute("stroke-width"));
    assertEquals(100, path.getAttribute("d").chars().filter(c -> c == 'M').count());
    assertTrue(path.getAttribute("d").startsWith("M0 0h0.01M1 2.5h0.01"));
    assertTrue(SvgWriter.write(scene).length() < 3000);
  }

  @Test
  void aTextReadFromTheRightKeepsItsDirectionToItself() throws Exception {
    Shape.Text text = new Shape.Text(new Point(0, 50), "\u05e9\u05dc\u05d5\u05dd:", Theme.LABEL);
    Element root = parse(new Scene(100, 100, "t", "a", List.of(text)));
    assertEquals("\u2068" + text.content() + "\u2069", first(root, "text"));
  }

  @Test
  void superscriptsAreRaisedSpansAndTheLineComesBackDown() throws Exception {
    TextStyle style = Theme.VALUE;
    Scene scene =
        new Scene(
            100, 100, "t", "a", List.of(new Shape.Text(new Point(50, 50), "3 × 10⁻⁴⁷ N", style)));
    Element root = parse(scene);
    NodeList spans = root.getElementsByTagName("tspan");
    assertEquals("3 × 10−47 N", first(root, "text"));
    assertEquals("−47", spans.item(0).getTextContent());
    double up = Double.parseDouble(((Element) spans.item(0)).getAttribute("dy"));
    double down = Double.parseDouble(((Element) spans.item(1)).getAttribute("dy"));
    assertTrue(up < 0);
    assertEquals(0, up + down, 1e-9);
  }

  @Test
  void numbersHaveNoExponentAndNoNegativeZero() {
    assertEquals("0", SvgWriter.number(-0.001));
    assertEquals("10", SvgWriter.number(10.0));
    assertEquals("12345678.13", SvgWriter.number(12345678.126));
  }
}
