package plainscale.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import plainscale.sheet.Result;
import plainscale.sheet.Sheet;

/** Equations in sentences, in every medium. */
class QuotedTest {
  private static List<Result> sentence(String text) {
    Sheet sheet = new Sheet();
    sheet.run("a", "given h = 1.25 m\nrelation fall: h = 1/2 g_n t^2\nsolve fall for t");
    return sheet.run("b", "say \"" + text + "\"").results();
  }

  private static final List<Result> RELATION = sentence("From {fall}.");
  private static final List<Result> LINE = sentence("{steps of t} steps to {equation 2 of t}.");

  @Test
  void asText() {
    assertEquals("From h = (1/2) g_n t².", Renderers.text(RELATION));
    assertEquals("2 steps to (2) t² = 2*h/g_n.", Renderers.text(LINE));
  }

  @Test
  void asTexInACell() {
    assertEquals(
        "<p class=\"ps-narrated\">From \\(\\displaystyle h = \\frac{1}{2} \\, g_{\\mathrm{n}} \\, {t}^{2}\\).</p>",
        Renderers.cellHtml(RELATION));
    assertEquals(
        "<p class=\"ps-narrated\">2 steps to (2) \\(\\displaystyle {t}^{2} = \\frac{2 \\, h}{g_{\\mathrm{n}}}\\).</p>",
        Renderers.cellHtml(LINE));
  }

  @Test
  void asMathMlOnAPage() {
    String html = Renderers.pageHtml(LINE);
    assertTrue(html.startsWith("<p class=\"ps-narrated\">2 steps to (2) <math"), html);
    assertTrue(html.endsWith("</math>.</p>"), html);
    assertTrue(html.contains("<mfrac>") && html.contains("<msup>"), html);
    assertEquals("From h=12\u2062gn\u2062t2.", bare(RELATION));
  }

  private static String bare(List<Result> results) {
    return Renderers.pageHtml(results).replaceAll("<[^<>]*>", "");
  }
}
