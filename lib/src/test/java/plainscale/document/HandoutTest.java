package plainscale.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A handout needs no network, runs nothing, and shows what went wrong where it went wrong. */
class HandoutTest {
  private static String prose(String source) throws LessonException {
    return body(new Notebooks().prose(source).handout());
  }

  /** Without the head, whose style would make messages long. */
  private static String body(String html) {
    return html.substring(html.indexOf("<main>"));
  }

  @Test
  void attachedPicturesArePutIn() throws LessonException {
    String html =
        new Notebooks().picture("![the balls](attachment:balls.png)", "balls.png", "abc").handout();
    assertTrue(
        body(html).contains("<img src=\"data:image/png;base64,YWJj\" alt=\"the balls\""), html);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "![two balls](https://example.org/x.png) | [picture: two balls]",
        "![two balls](//example.org/x.png)       | [picture: two balls]",
        "![two balls](x.png)                     | [picture: two balls]",
        "![two balls](attachment:gone.png)       | [picture: two balls]",
        "![two balls](file:///x.png)             | [picture: two balls]",
        "![](https://example.org/x.png)          | [picture: https://example.org/x.png]",
        "![two *balls*](x.png)                   | [picture: two balls]",
        "![data](data:text/html;base64,YWJj)     | [picture: data]"
      })
  void otherPicturesBecomeTheirAlternativeText(String source, String shown) throws LessonException {
    String html = prose(source);
    assertTrue(html.contains(shown), html);
    assertFalse(html.contains("<img"), html);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "a <img src=x onerror=alert(1)> b",
        "<iframe src=\"https://example.org\"></iframe>",
        "<style>@import url(https://example.org)</style>",
        "<!-- comment -->",
        "<em>soft</em>"
      })
  void rawHtmlIsShownAsText(String source) throws LessonException {
    String body = prose(source);
    String tag = source.substring(source.indexOf('<') + 1, source.indexOf('<') + 3);
    assertTrue(body.contains("&lt;" + tag), body);
    assertFalse(body.contains("<" + tag), body);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[here](javascript:alert(1))",
        "[here](JaVaScRiPt:alert(1))",
        "[here](<java\tscript:alert(1)>)",
        "[here](&#106;avascript:alert(1))",
        "[here](vbscript:x)",
        "[here](data:text/html;base64,YWJj)",
        "[here]( javascript:alert(1) )",
        "<javascript:alert(1)>",
        "[here][r]\n\n[r]: javascript:alert(1)",
        "![here](javascript:alert(1))"
      })
  void linksThatRunSomethingAreHarmless(String source) throws LessonException {
    String html = prose(source);
    String attributes = html.replaceAll(">[^<]*<", "><").replaceAll("\\s", "");
    assertFalse(attributes.matches("(?is).*(href|src)=\"?(javascript|vbscript|data:text).*"), html);
  }

  @Test
  void mistakesStandInTheirPlace() throws LessonException {
    String html =
        new Notebooks().code("x = 2").code("x/y\n1/0").prose("And then:").code("x x").handout();
    int before = html.indexOf("x = 2");
    int unknown = html.indexOf("I do not know “y” in this sheet.");
    int zero = html.indexOf("You are dividing by zero.");
    int after = html.indexOf("And then:");
    assertTrue(before > 0 && before < unknown && unknown < zero && zero < after, html);
    assertTrue(html.indexOf("<mn>4</mn>", after) > after, html);
  }

  @Test
  void hostileTitlesSourcesAndDescriptionsAreText() throws LessonException {
    String hostile = "</pre></title><script>alert('1')</script>{{body}}{{style}} $x$ \\(y\\) -->";
    String html =
        new Notebooks()
            .prose("# " + hostile)
            .code("x = 2 \"" + hostile.replace("\\", "") + "\"")
            .handout();
    assertFalse(html.contains("<script"), html);
    assertEquals(1, html.split("</title>", -1).length - 1);
    assertEquals(html.indexOf("<style"), html.lastIndexOf("<style"));
  }

  @Test
  void anEmptyCodeCellShowsNothing() throws LessonException {
    assertFalse(new Notebooks().code("  \n").prose("x").handout().contains("<pre"));
  }

  @Test
  void theLanguageTheCharactersAndTheTitleAreSaid() throws LessonException {
    String html = new Notebooks().prose("# Two & more").handout();
    assertTrue(html.startsWith("<!DOCTYPE html>"), html);
    assertTrue(html.contains("<html lang=\"en\""), html);
    assertTrue(html.contains("charset=\"utf-8\""), html);
    assertTrue(html.contains("<title>Two &amp; more</title>"), html);
  }
}
