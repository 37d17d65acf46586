package plainscale.document;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.SourceSpan;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;

/**
 * What a cell of prose says, for whoever looks for words in it: lines are counted from 1 in the
 * cell.
 *
 * @param passages its paragraphs, headings and cells of tables, in order
 * @param pictures the pictures that it shows
 */
public record ProseText(List<Passage> passages, List<Picture> pictures) {
  /** Stands in a passage for code and for links, whose words are not the author's own prose. */
  public static final char ELSEWHERE = '\uFFFC';

  private static final Parser PARSER =
      Parser.builder()
          .extensions(List.of(TablesExtension.create()))
          .customInlineContentParserFactory(new Formula.Reader())
          .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
          .build();

  /** Keeps its own copies of the lists. */
  public ProseText {
    passages = List.copyOf(passages);
    pictures = List.copyOf(pictures);
  }

  /**
   * A paragraph, a heading or a cell of a table.
   *
   * @param line where it begins
   * @param text its words; a line feed for each line of the source, formulas in plain signs
   * @param marked what stands in it as code, as a formula or emphasised: where names stand
   * @param kind what it is
   */
  public record Passage(int line, String text, Set<String> marked, Kind kind) {
    /** Keeps its own copy. */
    public Passage {
      marked = Set.copyOf(marked);
    }

    /** The line of a place in the text. */
    public int lineAt(int at) {
      return line + (int) text.substring(0, at).chars().filter(c -> c == '\n').count();
    }
  }

  /** What a passage is. */
  public enum Kind {
    /** A heading of the first order. */
    TITLE,
    /** Another heading. */
    HEADING,
    /** An item of a list. */
    ITEM,
    /** Anything else. */
    PLAIN
  }

  /** A picture: where it comes from, and what it shows, in words. */
  public record Picture(int line, String source, String alternative) {}

  /** The text of a cell. */
  public static ProseText of(LessonCell.Prose cell) {
    Blocks blocks = new Blocks();
    PARSER.parse(cell.source()).accept(blocks);
    return new ProseText(blocks.passages, blocks.pictures);
  }

  private static final class Blocks extends AbstractVisitor {
    private final List<Passage> passages = new ArrayList<>();
    private final List<Picture> pictures = new ArrayList<>();
    private int line = 1;

    @Override
    public void visit(Heading heading) {
      passage(heading, heading.getLevel() == 1 ? Kind.TITLE : Kind.HEADING);
    }

    @Override
    public void visit(Paragraph paragraph) {
      passage(paragraph, paragraph.getParent() instanceof ListItem ? Kind.ITEM : Kind.PLAIN);
    }

    @Override
    public void visit(CustomNode node) {
      if (node instanceof TableCell) {
        passage(node, Kind.PLAIN);
      } else {
        visitChildren(node);
      }
    }

    @Override
    public void visit(CustomBlock block) {
      visitChildren(block);
    }

    private void passage(Node block, Kind kind) {
      List<SourceSpan> spans = block.getSourceSpans();
      line = spans.isEmpty() ? line : spans.get(0).getLineIndex() + 1;
      Inlines inlines = new Inlines(line, pictures);
      inlines.read(block);
      passages.add(new Passage(line, inlines.text.toString(), inlines.marked, kind));
    }
  }

  private static final class Inlines extends AbstractVisitor {
    private final StringBuilder text = new StringBuilder();
    private final Set<String> marked = new LinkedHashSet<>();
    private final List<Picture> pictures;
    private int line;

    Inlines(int line, List<Picture> pictures) {
      this.line = line;
      this.pictures = pictures;
    }

    void read(Node block) {
      visitChildren(block);
    }

    @Override
    public void visit(Text words) {
      text.append(words.getLiteral());
    }

    @Override
    public void visit(SoftLineBreak end) {
      nextLine();
    }

    @Override
    public void visit(HardLineBreak end) {
      nextLine();
    }

    private void nextLine() {
      text.append('\n');
      line++;
    }

    @Override
    public void visit(Code code) {
      marked.add(code.getLiteral());
      text.append(ELSEWHERE);
    }

    @Override
    public void visit(Link link) {
      new Inlines(line, pictures).read(link);
      text.append(ELSEWHERE);
    }

    @Override
    public void visit(Emphasis words) {
      mark(words);
    }

    @Override
    public void visit(StrongEmphasis words) {
      mark(words);
    }

    private void mark(Node words) {
      int from = text.length();
      visitChildren(words);
      marked.add(text.substring(from));
    }

    @Override
    public void visit(CustomNode node) {
      if (node instanceof Formula formula) {
        String plain = PlainTex.of(formula.tex());
        marked.add(plain);
        text.append(plain);
      } else {
        visitChildren(node);
      }
    }

    @Override
    public void visit(Image image) {
      Inlines alternative = new Inlines(line, new ArrayList<>());
      alternative.read(image);
      pictures.add(new Picture(line, image.getDestination(), alternative.text.toString().strip()));
      text.append(ELSEWHERE);
    }
  }
}
