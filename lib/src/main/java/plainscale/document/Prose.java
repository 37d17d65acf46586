package plainscale.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.DefaultUrlSanitizer;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.html.UrlSanitizer;
import org.commonmark.renderer.text.TextContentRenderer;
import plainscale.text.Printable;

/**
 * The prose of a lesson (CommonMark with tables). A handout needs no network: attached pictures are
 * put in, others become their alternative text; raw HTML is shown as text.
 */
public final class Prose {
  private static final List<Extension> EXTENSIONS = List.of(TablesExtension.create());
  private static final Parser PARSER =
      Parser.builder()
          .extensions(EXTENSIONS)
          .customInlineContentParserFactory(new Formula.Reader())
          .build();
  private static final HtmlRenderer HTML =
      HtmlRenderer.builder()
          .extensions(EXTENSIONS)
          .nodeRendererFactory(new Formula.ToHtml())
          .nodeRendererFactory(new WritingLines.ToHtml())
          .escapeHtml(true)
          .sanitizeUrls(true)
          .urlSanitizer(new Addresses())
          .build();
  private static final TextContentRenderer TEXT =
      TextContentRenderer.builder()
          .extensions(EXTENSIONS)
          .nodeRendererFactory(new Formula.ToText())
          .build();

  private Prose() {}

  /** The prose of a cell as HTML. */
  public static String html(LessonCell.Prose cell) {
    return rendered(parsed(cell));
  }

  /** The same with so many lines to write on below each question of a numbered list. */
  public static String html(LessonCell.Prose cell, int lines) {
    Node document = parsed(cell);
    WritingLines.add(document, lines);
    return rendered(document);
  }

  /** The headings of a cell in words, in order. */
  public static List<String> headings(LessonCell.Prose cell) {
    List<String> headings = new ArrayList<>();
    for (Node node = parsed(cell).getFirstChild(); node != null; node = node.getNext()) {
      if (node instanceof Heading) {
        headings.add(words(node));
      }
    }
    return headings;
  }

  static Node parsed(LessonCell.Prose cell) {
    Node document = PARSER.parse(cell.source());
    document.accept(new OwnPictures(Attachments.uris(cell.attachments())));
    return document;
  }

  static String rendered(Node document) {
    return Printable.of(HTML.render(document));
  }

  /** The words of a node on one line. */
  static String words(Node node) {
    return TEXT.render(node).strip().replaceAll("\\s+", " ");
  }

  static String text(LessonCell.Prose cell) {
    return TEXT.render(PARSER.parse(cell.source())).strip();
  }

  private static final class OwnPictures extends AbstractVisitor {
    private final Map<String, String> attachments;

    OwnPictures(Map<String, String> attachments) {
      this.attachments = attachments;
    }

    @Override
    public void visit(Image image) {
      String name = image.getDestination().replaceFirst("^attachment:", "");
      String data = attachments.get(name);
      if (data != null) {
        image.setDestination(data);
      } else if (!image.getDestination().startsWith("data:image/")) {
        image.insertBefore(new Text("[picture: " + alternative(image) + "]"));
        image.unlink();
      }
    }

    private static String alternative(Image image) {
      Words words = new Words();
      image.accept(words);
      return words.text.length() > 0 ? words.text.toString() : image.getDestination();
    }
  }

  private static final class Words extends AbstractVisitor {
    private final StringBuilder text = new StringBuilder();

    @Override
    public void visit(Text words) {
      text.append(words.getLiteral());
    }

    @Override
    public void visit(Code code) {
      text.append(code.getLiteral());
    }
  }

  /** A link leads to a page, a mail address or a place in this page, and runs nothing. */
  private static final class Addresses implements UrlSanitizer {
    private final UrlSanitizer pages = new DefaultUrlSanitizer(List.of("http", "https", "mailto"));

    @Override
    public String sanitizeLinkUrl(String url) {
      return pages.sanitizeLinkUrl(url);
    }

    /** {@link OwnPictures} has left pictures that are in the page, and no others. */
    @Override
    public String sanitizeImageUrl(String url) {
      return url;
    }
  }
}
