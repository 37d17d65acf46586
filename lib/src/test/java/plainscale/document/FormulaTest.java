package plainscale.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaTest {
  private static LessonCell.Prose prose(String text) {
    ObjectNode none = JsonNodeFactory.instance.objectNode();
    return new LessonCell.Prose("a", text, none, none, 0);
  }

  @Test
  void texBetweenDollarsBecomesMathMl() {
    String html = Prose.html(prose("Then $F = qE$ holds, and $$E = F/q$$"));
    assertTrue(html.contains("Then <math><mrow><mi>F</mi>"), html);
    assertTrue(html.contains("<math display=\"block\">"), html);
  }

  @Test
  void texBeyondTheSubsetStaysReadable() {
    assertEquals("<p><code>$\\weird{x}$</code></p>\n", Prose.html(prose("$\\weird{x}$")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"It costs $5 or $6.", "a $ b $ c", "one $ only", "`$x$` in code"})
  void pricesAndCodeStayAsTheyAre(String text) {
    assertTrue(!Prose.html(prose(text)).contains("<math"), Prose.html(prose(text)));
  }

  @Test
  void theTerminalShowsTheSource() {
    assertEquals("Then $F = qE$ holds", Prose.text(prose("Then $F = qE$ holds")));
  }
}
