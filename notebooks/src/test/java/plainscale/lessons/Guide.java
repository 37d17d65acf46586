package plainscale.lessons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.jspecify.annotations.Nullable;
import plainscale.data.DataFolder;
import plainscale.render.Renderers;
import plainscale.sheet.Sheet;

/**
 * The examples of a guide: a fenced block {@code plainscale}, right after it a fenced block {@code
 * text} with what it shows. Those below one heading share a sheet.
 */
final class Guide {
  private static final Parser PARSER =
      Parser.builder().includeSourceSpans(IncludeSourceSpans.BLOCKS).build();
  private static final String SOURCE = "plainscale";
  private static final String OUTPUT = "text";

  /** One example and what the program makes of it. */
  record Example(String place, String source, String documented, String shown) {
    @Override
    public String toString() {
      return place;
    }
  }

  private final List<Example> examples = new ArrayList<>();
  private String heading = "";

  /** The files that the examples read lie beside the guide. */
  private Sheet sheet = sheet();

  private Guide() {}

  private static Sheet sheet() {
    return new Sheet(new DataFolder(Path.of("")));
  }

  /** The examples of a guide; one that is not well-formed fails the test. */
  static List<Example> examples(String markdown) {
    Guide guide = new Guide();
    Node node = PARSER.parse(markdown).getFirstChild();
    while (node != null) {
      guide.block(node);
      node = node.getNext();
    }
    assertFalse(guide.examples.isEmpty(), "the guide has no examples");
    return guide.examples;
  }

  private void block(Node node) {
    if (node instanceof Heading title && title.getLevel() == 2) {
      heading = title.getFirstChild() instanceof Text text ? text.getLiteral() : "";
      sheet = sheet();
    } else if (node instanceof FencedCodeBlock block && block.getInfo().equals(SOURCE)) {
      String documented = output(block.getNext(), place(block));
      examples.add(run(place(block), block.getLiteral().stripTrailing(), documented));
    } else if (node instanceof FencedCodeBlock block && block.getInfo().equals(OUTPUT)) {
      boolean expected =
          block.getPrevious() instanceof FencedCodeBlock before && before.getInfo().equals(SOURCE);
      assertEquals(true, expected, "output without its example at " + place(block));
    }
  }

  private static String output(@Nullable Node node, String place) {
    String info = node instanceof FencedCodeBlock block ? block.getInfo() : "no fenced block";
    assertEquals(OUTPUT, info, "after the example at " + place);
    return node instanceof FencedCodeBlock block ? block.getLiteral().stripTrailing() : "";
  }

  private Example run(String place, String source, String documented) {
    String cellId = "cell-" + (examples.size() + 1);
    String shown = Renderers.text(sheet.run(cellId, source).results());
    return new Example(place, source, documented, shown);
  }

  private String place(Node node) {
    return heading + ", line " + (node.getSourceSpans().get(0).getLineIndex() + 1);
  }
}
