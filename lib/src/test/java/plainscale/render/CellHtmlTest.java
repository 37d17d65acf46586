package plainscale.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Base64;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The HTML of a cell's output survives a front end's sanitising and its search for mathematics. */
class CellHtmlTest {
  private static final Set<String> ELEMENTS =
      Set.of(
          "table", "tbody", "tr", "td", "p", "b", "i", "br", "span", "div", "pre", "img", "sub",
          "sup", "wbr", "ol", "li", "details", "summary");
  private static final Set<String> EMPTY = Set.of("br", "img", "wbr");
  private static final Pattern ATTRIBUTES =
      Pattern.compile("(?: (?:class|style|colspan|src|alt)=\"[^\"<>]*\"| open=\"\")*/?");
  private static final Pattern MARKUP = Pattern.compile("<(/?)([a-z]*)([^<>]*)>");
  private static final Pattern REFERENCE = Pattern.compile("&(?!(?:amp|lt|gt|quot|#39);)");

  static Stream<Samples.Sample> samples() {
    return Samples.all();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void onlyElementsThatAreLeftInPlaceAreUsedAndAllAreClosed(Samples.Sample sample) {
    String html = Renderers.cellHtml(sample.results());
    Deque<String> open = new ArrayDeque<>();
    Matcher tag = MARKUP.matcher(html);
    while (tag.find()) {
      String name = tag.group(2);
      assertTrue(ELEMENTS.contains(name), tag.group());
      if (!tag.group(1).isEmpty()) {
        assertEquals(name, open.pop(), html);
      } else {
        assertTrue(ATTRIBUTES.matcher(tag.group(3)).matches(), tag.group());
        if (!EMPTY.contains(name)) {
          open.push(name);
        }
      }
    }
    assertEquals(List.of(), List.copyOf(open), html);
    String rest = MARKUP.matcher(html).replaceAll("");
    assertFalse(rest.contains("<") || rest.contains(">"), rest);
    assertFalse(REFERENCE.matcher(html).find(), html);
  }

  @ParameterizedTest
  @MethodSource("samples")
  void mathematicsIsWhereThisProgramPutItAndNowhereElse(Samples.Sample sample) {
    String html = Renderers.cellHtml(sample.results());
    // A front end skips <pre>, and reads the text between two tags at a time.
    for (String text : html.replaceAll("(?s)<pre>.*?</pre>", "").split("<[^<>]*>", -1)) {
      String prose = text.replaceAll("\\\\\\(\\\\displaystyle .*?\\\\\\)", "");
      assertFalse(prose.matches("(?s).*(\\$.*\\$|\\\\[(\\[]|\\\\begin).*"), text);
    }
  }

  @Test
  void picturesAreDataWithATextAlternative() {
    String html =
        Renderers.cellHtml(Samples.results("contrast 2 [m] with 3e9 [m] \"Two lengths\""));
    Matcher image =
        Pattern.compile("<img src=\"data:image/svg\\+xml;base64,([^\"]*)\" alt=\"([^\"]+)\"")
            .matcher(html);
    assertTrue(image.find(), html);
    String svg = new String(Base64.getDecoder().decode(image.group(1)), StandardCharsets.UTF_8);
    assertTrue(svg.startsWith("<svg"), svg);
    assertFalse(html.contains("<svg") || html.contains("<math"), html);
  }

  @Test
  void neighbouringValuesShareATable() {
    String html = Renderers.cellHtml(Samples.results("a = 2\nb = 3\nsay \"so\"\nc = 4"));
    assertEquals(2, html.split("<table", -1).length - 1);
    assertEquals(3, html.split("<tr>", -1).length - 1);
  }

  @Test
  void aMistakeHasItsPlaceInAFixedPitch() {
    String html = Renderers.cellHtml(Samples.results("1 + 2\nm + d"));
    assertTrue(html.contains("<pre>  line 2: m + d\n            ^</pre>"), html);
  }

  @Test
  void hostileWordsAreReadAsTheyWereWritten() {
    for (String hostile : Samples.hostile()) {
      String text =
          hostile.replace("\\", "\\\\").replace("\"", "\\\"").replace("{", "{{").replace("}", "}}");
      String html = Renderers.cellHtml(Samples.results("say \"" + text + "\""));
      assertEquals(hostile, unescaped(html.replaceAll("<[^<>]*>", "")));
    }
  }

  static String unescaped(String html) {
    return html.replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&#39;", "'")
        .replace("&amp;", "&");
  }
}
