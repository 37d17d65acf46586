package plainscale.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.document.ProseText.Kind;
import plainscale.document.ProseText.Passage;
import plainscale.document.ProseText.Picture;

/** The words of prose with their lines. */
class ProseTextTest {
  private static ProseText of(String source) {
    ObjectNode none = JsonNodeFactory.instance.objectNode();
    return ProseText.of(new LessonCell.Prose("a", source, none, none, 0));
  }

  @Test
  void passagesKnowTheirLineAndWhatTheyAre() {
    String source =
        "# A *title*\n\n## Two\nWords\nand words.\n\n1. First\n2. Second\n\n> Quoted\n\n| a | b |\n| --- | --- |\n| c | d |";
    assertEquals(
        List.of(
            new Passage(1, "A title", Set.of("title"), Kind.TITLE),
            new Passage(3, "Two", Set.of(), Kind.HEADING),
            new Passage(4, "Words\nand words.", Set.of(), Kind.PLAIN),
            new Passage(7, "First", Set.of(), Kind.ITEM),
            new Passage(8, "Second", Set.of(), Kind.ITEM),
            new Passage(10, "Quoted", Set.of(), Kind.PLAIN),
            new Passage(12, "a", Set.of(), Kind.PLAIN),
            new Passage(12, "b", Set.of(), Kind.PLAIN),
            new Passage(14, "c", Set.of(), Kind.PLAIN),
            new Passage(14, "d", Set.of(), Kind.PLAIN)),
        of(source).passages());
  }

  @Test
  void codeLinksAndPicturesStandElsewhereAndNamesAreMarked() {
    ProseText text =
        of("`q` and [a link](x) and ![two `balls`](y.png) **bold** $F_{\\text{e}}$\n\n    code");
    String gap = String.valueOf(ProseText.ELSEWHERE);
    assertEquals(
        List.of(
            new Passage(
                1,
                gap + " and " + gap + " and " + gap + " bold F_e",
                Set.of("q", "bold", "F_e"),
                Kind.PLAIN)),
        text.passages());
  }

  @Test
  void picturesKnowTheirLineAndTheirWords() {
    assertEquals(
        List.of(
            new Picture(3, "a.png", "two balls"),
            new Picture(4, "attachment:b.png", ""),
            new Picture(6, "c.png", "c")),
        of("# T\n\n![two *balls*](a.png)\nand ![ ](attachment:b.png)\n\n[![c](c.png)](d)\n")
            .pictures());
  }

  @Test
  void thePlaceOfAWordHasALine() {
    Passage passage = of("\n\none\ntwo\nthree").passages().get(0);
    assertEquals(3, passage.lineAt(0));
    assertEquals(5, passage.lineAt(passage.text().indexOf("three")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "6.7\\times10^{-8}\\,\\text{C} | 6.7×10^-8 C",
        "n_{\\mathrm{moved}}           | n_moved",
        "\\theta = 30^{\\circ}         | theta = 30^circ",
        "1{,}5 \\pm 0{,}1              | 1,5 ± 0,1",
        "{{\\frac{a}{b}}               | fracab",
      })
  void formulasBecomePlainSigns(String tex, String plain) {
    assertEquals(plain, PlainTex.of(tex));
  }
}
