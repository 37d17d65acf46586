package plainscale.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.sheet.Sheet;

/** What is said of forces. */
class ForcesSentencesTest {
  private final Sheet sheet = new Sheet();

  private List<String> lines(String... cell) {
    String text = Renderers.text(sheet.run("cell", String.join("\n", cell)).results());
    return Arrays.stream(text.split("\n", -1)).map(String::strip).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "4 [N] right, b 3 [N] up     | 5 N, 37° above right.",
        "4 [N] left, b 3 [N] up      | 5 N, 37° above left.",
        "3 [N] left, b 4 [N] down    | 5 N, 53° below left.",
        "4 [N] right, b 3 [N] down   | 5 N, 37° below right.",
        "4 [N] right, b 3 [N] right  | 7 N, right.",
        "4 [N] right, b 9 [N] left   | 5 N, left.",
        "4 [N] down, b 9 [N] up      | 5 N, up.",
        "1 [N] along 250°, b 1 [N] along 250° | 2 N, 70° below left."
      })
  void whatIsLeftHasASizeAndADirection(String forces, String left) {
    List<String> lines = lines("forces on ring: a " + forces);
    assertEquals("They do not balance: what is left is " + left, lines.get(lines.size() - 1));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a 3 [N] up                      | One force alone does not balance: what is left is 3 N, up.",
        "a 0 [N] up                      | It is zero: nothing is left.",
        "a 3 [N] up, b 3 [N] down        | They balance: nothing is left.",
        "a F up, b F_2 down              | They balance: what is left is zero within its expanded uncertainty (k = 2).",
        "a 5.0 [N] up, b 4.98 [N] down   | They balance: what is left is zero to the figures that were written.",
        "a 3 [N] up, b -3 [N] up         | The size of “b” is below zero, so it points down, not up.",
        "a 3 [N] up, b -3 [N] along 90°  | The size of “b” is below zero, so it points against its angle.",
        "a 3 [N] up with missing         | Missing for a balance is a force of 3 N, down.",
        "a 3 [N] up, b 3 [N] down with missing | No force is missing."
      })
  void balanceIsSaid(String forces, String sentence) {
    sheet.run("g", "given F = 5.00 ± 0.03 N\ngiven F_2 = 4.95 ± 0.02 N");
    List<String> lines = lines("forces on ring: " + forces);
    assertEquals(sentence, lines.get(lines.size() - 1));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "push 3 [N] left by cart | push 3 [N] right by ball | push: by the cart on the ball 3 N left, by the ball on the cart 3 N right. Action and reaction: equal and opposite, and on two bodies.",
        "push 3 [N] left by cart | push 2 [N] right by ball | push between the ball and the cart: the third law says these are equal, but 3 N and 2 N stand here: one of them is wrong.",
        "push 3 [N] left by cart | push 3 [N] up by ball    | push between the ball and the cart: the third law says these are opposite, but here one points left and the other up: one of them is wrong.",
        "push 3 [N] left by cart | pull 3 [N] right by ball | push on the ball and pull on the cart act between the same two bodies under different names; if they are action and reaction, give them one name.",
        "push 3 [N] left by cart | weight 3 [N] down        | push on the ball: by the third law its partner acts on the cart, but no “push” by the ball stands there.",
        "weight 3 [N] down       | weight 3 [N] down        | weight on the ball: nothing says what exerts it (by “…”), so its partner cannot be told.",
        "pull 3 [N] up by hook   | pull 3 [N] up by beam    | pull on the ball and pull on the cart look alike, but they are no pair: their partners act on the hook and the beam."
      })
  void pairsAreSaid(String onBall, String onCart, String sentence) {
    lines("forces on ball: " + onBall, "forces on cart: " + onCart);
    String text = Renderers.text(sheet.run("p", "pairs").results());
    List<String> said = Arrays.stream(text.split("\n", -1)).map(String::strip).toList();
    assertTrue(said.contains(sentence), text);
  }

  @Test
  void bodiesHaveAnArticleUnlessTheyHaveANameOfTheirOwn() {
    assertEquals("the left ball", Bodies.the("left ball"));
    assertEquals("the Earth", Bodies.the("Earth"));
    assertEquals("Anna", Bodies.the("Anna"));
    assertEquals("my hand", Bodies.the("my hand"));
    assertEquals("the a", Bodies.the("a"));
    assertEquals("a, b and c", Bodies.list(List.of("a", "b", "c")));
    assertEquals("a", Bodies.list(List.of("a")));
  }

  @Test
  void aTableInHtmlSaysTheSame() {
    String html =
        Renderers.cellHtml(
            sheet.run("cell", "forces on ring: a 4 [N] right by Anna, b 3 [N] up").results());
    for (String cell : List.of("<td", "all together", "Anna", "5 N, 37° above right")) {
      assertTrue(html.contains(cell), html);
    }
  }
}
