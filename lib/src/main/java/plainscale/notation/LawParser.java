package plainscale.notation;

import java.util.ArrayList;
import java.util.List;

/**
 * Statements about laws.
 *
 * <pre>{@code
 * use      := text | name [ "as" name ] [ "with" replaced { "," replaced } ] [ text ]
 * replaced := name "=" sum
 * }</pre>
 */
final class LawParser {
  private static final String EXAMPLE = "use coulomb with F = F_e, q_1 = q";

  private final Tokens tokens;
  private final Names names;
  private final Span start;

  /** What follows the keyword, which stands at {@code start}. */
  LawParser(Tokens tokens, Names names, Span start) {
    this.tokens = tokens;
    this.names = names;
    this.start = start;
  }

  Statement use() {
    Token first = tokens.peek();
    if (first.type() == Token.Type.STRING) {
      return search();
    }
    if (first.type() != Token.Type.NAME) {
      throw tokens.unexpected(
          "the name of a law belongs here, or words to search for in quotation marks, as in: "
              + EXAMPLE);
    }
    Statement.Option law = tokens.name(EXAMPLE);
    refuseWords(first);
    Statement.Option own = tokens.acceptWord("as") ? own() : null;
    List<LawStatement.Replaced> replaced = tokens.acceptWord("with") ? replaced() : List.of();
    String description = description();
    return new LawStatement.Use(whole(), law, own, replaced, description);
  }

  private Statement search() {
    Token text = tokens.next();
    String words = text.text().replace("\\\"", "\"").strip();
    if (words.isEmpty()) {
      throw tokens.fault(
          "Between the quotation marks stand words to search for.",
          text.span(),
          "use \"force between charges\"");
    }
    return new LawStatement.Search(whole(), new Statement.Option(text.span(), words));
  }

  /** Several words in a row, which are no name. */
  private void refuseWords(Token first) {
    Token next = tokens.peek();
    if (next.type() != Token.Type.NAME || next.isWord("as") || next.isWord("with")) {
      return;
    }
    while (tokens.peek().type() == Token.Type.NAME) {
      tokens.next();
    }
    Span words = first.span().to(tokens.last());
    throw tokens.fault(
        "The name of a law is one word; words to search for stand in quotation marks.",
        words,
        "use \"%s\"".formatted(tokens.text(words)));
  }

  private Statement.Option own() {
    Span place = tokens.peek().span();
    String name = StatementParser.newName(tokens, "use coulomb as push");
    return new Statement.Option(place, name);
  }

  private List<LawStatement.Replaced> replaced() {
    List<LawStatement.Replaced> replaced = new ArrayList<>();
    do {
      Statement.Option symbol = tokens.name(EXAMPLE);
      if (replaced.stream().anyMatch(r -> r.symbol().text().equals(symbol.text()))) {
        throw tokens.fault(
            "“%s” stands here twice.".formatted(symbol.text()),
            symbol.span(),
            "delete one of the two");
      }
      if (!tokens.accept("=")) {
        throw tokens.unexpected("“=” and what stands for " + symbol.text() + " here belong here");
      }
      replaced.add(new LawStatement.Replaced(symbol, new ExpressionParser(tokens, names).sum()));
    } while (tokens.accept(","));
    return replaced;
  }

  private Span whole() {
    return start.to(tokens.last());
  }

  private String description() {
    return tokens.peek().type() == Token.Type.STRING
        ? tokens.next().text().replace("\\\"", "\"")
        : "";
  }
}
