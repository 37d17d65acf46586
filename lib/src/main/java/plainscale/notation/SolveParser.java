package plainscale.notation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** {@code solve level, upright for q in nC with q > 0 with boxes "charge"}. */
final class SolveParser {
  private final Tokens tokens;
  private final UnitReader units;

  SolveParser(Tokens tokens, UnitReader units) {
    this.tokens = tokens;
    this.units = units;
  }

  /** {@code solve a, b for q [format] [with "boxes" | "questions" | "answer"]}. */
  Statement.Solve solve(Span start) {
    List<Statement.Option> relations = new ArrayList<>();
    Span first = tokens.peek().span();
    do {
      relations.add(relation());
    } while (tokens.accept(","));
    tokens.part(Line.What.RELATIONS, first);
    if (!tokens.acceptWord("for")) {
      throw withoutFor();
    }
    String unknown = unknown();
    Format format = new FormatParser(tokens, units).format();
    Statement.Telling telling = Statement.Telling.STEPS;
    Statement.Option small = null;
    List<Bound> bounds = new ArrayList<>();
    while (tokens.acceptWord("with")) {
      if (tokens.peek(1).is("<") || tokens.peek(1).is(">")) {
        bounds.add(bound(unknown));
      } else if (tokens.acceptWord("small")) {
        small = tokens.name("solve level for q with small θ");
      } else {
        telling = telling();
      }
    }
    String description =
        tokens.peek().type() == Token.Type.STRING ? tokens.next().text().replace("\\\"", "\"") : "";
    return new Statement.Solve(
        start.to(tokens.last()), relations, unknown, format, telling, small, bounds, description);
  }

  private Statement.Option relation() {
    if (tokens.acceptBlank(Open.Asked.RELATIONS)) {
      return new Statement.Option(tokens.last(), Open.SIGN);
    }
    Token token = tokens.peek();
    if (token.type() != Token.Type.NAME || token.isWord("for")) {
      throw tokens.unexpected("the name of a relation belongs here, as in: solve level for q");
    }
    return new Statement.Option(token.span(), Greek.normal(tokens.next().text()));
  }

  private String unknown() {
    return tokens.acceptBlank(Open.Asked.NAME)
        ? Open.SIGN
        : StatementParser.newName(tokens, "solve level, upright for q");
  }

  /** Two relations without a comma, or the unknown without its word. */
  private ProblemException withoutFor() {
    Token next = tokens.peek();
    Token after = tokens.peek(1);
    if (next.isWord("and")) {
      return tokens.fault("Between two relations stands a comma.", next.span(), ",");
    }
    if (next.type() != Token.Type.NAME) {
      return tokens.unexpected("“for” and the unknown belong here");
    }
    boolean another = after.isWord("for") || after.is(",");
    return another
        ? tokens.fault("Between two relations stands a comma.", next.span(), ", " + next.text())
        : tokens.fault("Before the unknown stands “for”.", next.span(), "for " + next.text());
  }

  /** {@code t < 1 s}: as in a given, what follows the number is its unit. */
  private Bound bound(String unknown) {
    Token first = tokens.peek();
    if (!Greek.normal(first.text()).equals(unknown)) {
      throw tokens.fault(
          "What chooses among the answers compares the unknown with a value.",
          first.span(),
          "with " + unknown + " < …");
    }
    tokens.next();
    boolean above = tokens.next().is(">");
    Expr value = new ExpressionParser(tokens, Names.NONE).sum();
    return new Bound(first.span().to(tokens.last()), above, value);
  }

  private Statement.Telling telling() {
    Token token = tokens.next();
    return Arrays.stream(Statement.Telling.values())
        .filter(t -> token.isWord(t.name().toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(
            () ->
                tokens.fault(
                    "A derivation is shown with steps, answer, boxes or questions.",
                    token.span(),
                    "with boxes",
                    "with questions"));
  }
}
