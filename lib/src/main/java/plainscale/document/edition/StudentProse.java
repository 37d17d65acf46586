package plainscale.document.edition;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.LinkReferenceDefinition;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import plainscale.document.LessonCell;

/**
 * Prose as students get it: without comments, which a front end hides but a file keeps, and with
 * the attached pictures that it shows, and no others.
 */
final class StudentProse {
  private static final Parser PARSER =
      Parser.builder().includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES).build();
  private static final Pattern COMMENT = Pattern.compile("(?s)<!--.*?(?:-->|\\z)");
  private static final String ATTACHED = "attachment:";

  private StudentProse() {}

  /** The prose with those metadata. */
  static LessonCell.Prose of(LessonCell.Prose prose, ObjectNode metadata) {
    String source = withoutComments(prose.source());
    return new LessonCell.Prose(
        prose.id(), source, metadata, attachments(source, prose.attachments()), 0);
  }

  private static String withoutComments(String source) {
    Comments comments = new Comments(source);
    PARSER.parse(source).accept(comments);
    return comments.without();
  }

  private static ObjectNode attachments(String source, ObjectNode attachments) {
    Pictures pictures = new Pictures();
    PARSER.parse(source).accept(pictures);
    ObjectNode used = JsonNodeFactory.instance.objectNode();
    attachments.properties().stream()
        .filter(named -> pictures.use(named.getKey()))
        .forEach(named -> used.set(named.getKey(), named.getValue()));
    return used;
  }

  private static final class Comments extends AbstractVisitor {
    private final StringBuilder text;
    private final List<int[]> places = new ArrayList<>();

    Comments(String source) {
      this.text = new StringBuilder(source);
    }

    @Override
    public void visit(HtmlBlock html) {
      find(html);
    }

    @Override
    public void visit(HtmlInline html) {
      find(html);
    }

    /** {@code [//]: # (words)} leads nowhere. */
    @Override
    public void visit(LinkReferenceDefinition definition) {
      if (definition.getDestination().equals("#") || definition.getDestination().isEmpty()) {
        add(definition, 0, Integer.MAX_VALUE);
      }
    }

    private void find(Node node) {
      List<SourceSpan> spans = node.getSourceSpans();
      int start = start(spans);
      Matcher comment = COMMENT.matcher(text.substring(start, end(spans)));
      while (comment.find()) {
        add(node, comment.start(), comment.end());
      }
    }

    private void add(Node node, int from, int to) {
      int start = start(node.getSourceSpans());
      int end = Math.min(end(node.getSourceSpans()), to == Integer.MAX_VALUE ? to : start + to);
      places.add(new int[] {start + from, end});
    }

    private static int start(List<SourceSpan> spans) {
      return spans.get(0).getInputIndex();
    }

    private static int end(List<SourceSpan> spans) {
      SourceSpan last = spans.get(spans.size() - 1);
      return last.getInputIndex() + last.getLength();
    }

    String without() {
      places.sort((one, other) -> other[0] - one[0]);
      places.forEach(place -> text.delete(place[0], place[1]));
      return text.toString();
    }
  }

  private static final class Pictures extends AbstractVisitor {
    private final List<String> addresses = new ArrayList<>();
    private final StringBuilder html = new StringBuilder();

    boolean use(String name) {
      return addresses.contains(name) || html.indexOf(ATTACHED + name) >= 0;
    }

    @Override
    public void visit(Image image) {
      add(image.getDestination());
      visitChildren(image);
    }

    @Override
    public void visit(Link link) {
      add(link.getDestination());
      visitChildren(link);
    }

    private void add(String address) {
      if (address.startsWith(ATTACHED)) {
        String name = address.substring(ATTACHED.length());
        addresses.add(name);
        addresses.add(decoded(name));
      }
    }

    private static String decoded(String name) {
      try {
        return URLDecoder.decode(name.replace("+", "%2B"), StandardCharsets.UTF_8);
      } catch (IllegalArgumentException notEncoded) {
        return name;
      }
    }

    @Override
    public void visit(HtmlBlock block) {
      html.append(decoded(block.getLiteral())).append('\n');
    }

    @Override
    public void visit(HtmlInline inline) {
      html.append(decoded(inline.getLiteral())).append('\n');
    }
  }
}
