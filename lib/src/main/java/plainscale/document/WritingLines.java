package plainscale.document;

import java.util.Set;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlNodeRendererFactory;

/** Lines to write on within prose: below each question of a numbered list, else at the end. */
final class WritingLines extends CustomBlock {
  private static final String LINE = "<div class=\"ws-line\"></div>";

  private final int lines;

  private WritingLines(int lines) {
    this.lines = lines;
  }

  /** Adds so many lines to each question of a document. */
  static void add(Node document, int lines) {
    if (lines < 1) {
      return;
    }
    Questions questions = new Questions(lines);
    document.accept(questions);
    if (!questions.found) {
      document.appendChild(new WritingLines(lines));
    }
  }

  /** The items of the outermost numbered lists. */
  private static final class Questions extends AbstractVisitor {
    private final int lines;
    private boolean found;

    Questions(int lines) {
      this.lines = lines;
    }

    @Override
    public void visit(OrderedList list) {
      for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
        if (item instanceof ListItem) {
          item.appendChild(new WritingLines(lines));
          found = true;
        }
      }
    }
  }

  /** How they look is said in the style of the page. */
  static final class ToHtml implements HtmlNodeRendererFactory {
    @Override
    public NodeRenderer create(HtmlNodeRendererContext context) {
      return new NodeRenderer() {
        @Override
        public Set<Class<? extends Node>> getNodeTypes() {
          return Set.of(WritingLines.class);
        }

        @Override
        public void render(Node node) {
          int lines = ((WritingLines) node).lines;
          context
              .getWriter()
              .raw("<div class=\"ws-lines\" aria-hidden=\"true\">" + LINE.repeat(lines) + "</div>");
        }
      };
    }
  }
}
