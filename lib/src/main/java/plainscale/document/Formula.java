package plainscale.document;

import java.util.Set;
import java.util.function.Consumer;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Node;
import org.commonmark.parser.beta.InlineContentParser;
import org.commonmark.parser.beta.InlineContentParserFactory;
import org.commonmark.parser.beta.InlineParserState;
import org.commonmark.parser.beta.ParsedInline;
import org.commonmark.parser.beta.Scanner;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlNodeRendererFactory;
import org.commonmark.renderer.text.TextContentNodeRendererContext;
import org.commonmark.renderer.text.TextContentNodeRendererFactory;
import plainscale.render.Html;
import plainscale.render.TexReader;

/**
 * TeX between dollar signs in prose, as notebooks have it: {@code $F = qE$}, {@code $$…$$}. No
 * space stands inside next to a single dollar, and no digit after the closing one, so that prices
 * stay prices.
 */
final class Formula extends CustomNode {
  private final String tex;
  private final boolean display;

  private Formula(String tex, boolean display) {
    this.tex = tex;
    this.display = display;
  }

  /** What stands between the dollars. */
  String tex() {
    return tex;
  }

  private String source() {
    String dollars = display ? "$$" : "$";
    return dollars + tex + dollars;
  }

  /** Recognises formulas in a line of prose. */
  static final class Reader implements InlineContentParserFactory, InlineContentParser {
    @Override
    public Set<Character> getTriggerCharacters() {
      return Set.of('$');
    }

    @Override
    public InlineContentParser create() {
      return this;
    }

    @Override
    public ParsedInline tryParse(InlineParserState state) {
      Scanner scanner = state.scanner();
      scanner.next();
      boolean display = scanner.next('$');
      StringBuilder tex = new StringBuilder();
      while (scanner.peek() != Scanner.END) {
        char c = scanner.peek();
        if (c == '$' && closes(scanner, display)) {
          return isFormula(tex, scanner, display)
              ? ParsedInline.of(new Formula(tex.toString(), display), scanner.position())
              : ParsedInline.none();
        }
        tex.append(c);
        scanner.next();
        if (c == '\\' && scanner.peek() != Scanner.END) {
          tex.append(scanner.peek());
          scanner.next();
        }
      }
      return ParsedInline.none();
    }

    private static boolean closes(Scanner scanner, boolean display) {
      scanner.next();
      return !display || scanner.next('$');
    }

    private static boolean isFormula(StringBuilder tex, Scanner scanner, boolean display) {
      if (tex.toString().isBlank()) {
        return false;
      }
      boolean tight =
          !Character.isWhitespace(tex.charAt(0))
              && !Character.isWhitespace(tex.charAt(tex.length() - 1));
      return display || (tight && !Character.isDigit(scanner.peek()));
    }
  }

  /** MathML; what is beyond the subset stays as it was written. */
  static final class ToHtml implements HtmlNodeRendererFactory {
    @Override
    public NodeRenderer create(HtmlNodeRendererContext context) {
      return new Rendering(
          formula ->
              context
                  .getWriter()
                  .raw(
                      TexReader.mathMl(formula.tex, formula.display)
                          .orElseGet(() -> "<code>" + Html.escape(formula.source()) + "</code>")));
    }
  }

  /** As it was written. */
  static final class ToText implements TextContentNodeRendererFactory {
    @Override
    public NodeRenderer create(TextContentNodeRendererContext context) {
      return new Rendering(formula -> context.getWriter().write(formula.source()));
    }
  }

  private record Rendering(Consumer<Formula> writer) implements NodeRenderer {
    @Override
    public Set<Class<? extends Node>> getNodeTypes() {
      return Set.of(Formula.class);
    }

    @Override
    public void render(Node node) {
      writer.accept((Formula) node);
    }
  }
}
