package plainscale.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What to expect of a value, and what to beware of. */
final class GuardParser {
  private static final String EXPECT = "expect q between 1 nC and 100 nC";
  private static final String CAUTION = "caution electrostatic_generator, latex";

  /** What is written by mistake, and the word that is meant. */
  private static final Map<String, String> MEANT =
      Map.of("<", "below", ">", "above", "from", "between");

  private final Tokens tokens;
  private final Names names;
  private final Span start;

  GuardParser(Tokens tokens, Names names, Span start) {
    this.tokens = tokens;
    this.names = names;
    this.start = start;
  }

  GuardStatement expect() {
    Expr value = new ExpressionParser(tokens, names).sum();
    GuardStatement.Range range = range();
    String why =
        tokens.peek().type() == Token.Type.STRING ? tokens.next().text().replace("\\\"", "\"") : "";
    return new GuardStatement.Expected(start.to(tokens.last()), value, range, why);
  }

  private GuardStatement.Range range() {
    if (tokens.acceptWord("between")) {
      Expr low = limit();
      if (!tokens.acceptWord("and")) {
        throw tokens.unexpected("“and” and the upper limit belong here, as in: " + EXPECT);
      }
      return new GuardStatement.Between(low, limit());
    }
    if (tokens.acceptWord("below")) {
      return new GuardStatement.Below(limit());
    }
    if (tokens.acceptWord("above")) {
      return new GuardStatement.Above(limit());
    }
    if (tokens.acceptWord("about")) {
      return about();
    }
    throw withoutWord();
  }

  private GuardStatement.Range about() {
    Expr middle = limit();
    if (!tokens.acceptWord("within")) {
      throw tokens.fault(
          "After “about” and a value it is said how far it may be off.",
          middle.span(),
          tokens.text(middle.span()) + " within 20 %");
    }
    return new GuardStatement.About(middle, limit());
  }

  private ProblemException withoutWord() {
    Token next = tokens.peek();
    String meant = MEANT.get(next.text());
    if (meant != null) {
      return tokens.fault(
          "What is expected is said in words: between, below, above or about.", next.span(), meant);
    }
    if (next.is("=")) {
      return tokens.fault(
          "What is expected is a range, not one value.", next.span(), "about … within 10 %");
    }
    return tokens.unexpected("“between”, “below”, “above” or “about” belongs here: " + EXPECT);
  }

  /** As in a given, what follows the number of a limit is its unit. */
  private Expr limit() {
    return new ExpressionParser(tokens, Names.NONE).sum();
  }

  GuardStatement caution() {
    List<Statement.Option> hazards = new ArrayList<>();
    do {
      Token token = tokens.peek();
      if (token.type() != Token.Type.NAME) {
        throw tokens.unexpected("the name of a hazard belongs here, as in: " + CAUTION);
      }
      tokens.next();
      if (hazards.stream().anyMatch(h -> h.text().equals(token.text()))) {
        throw tokens.fault("This hazard stands here twice.", token.span(), "delete it");
      }
      hazards.add(new Statement.Option(token.span(), token.text()));
    } while (tokens.accept(","));
    refuseSecondWord(hazards.get(hazards.size() - 1));
    return new GuardStatement.Caution(start.to(tokens.last()), hazards);
  }

  /** {@code caution hot water}: a name of two words is written with a low line. */
  private void refuseSecondWord(Statement.Option last) {
    Token next = tokens.peek();
    if (next.type() == Token.Type.NAME) {
      throw tokens.fault(
          "Hazards are names of one word, with commas between them.",
          next.span(),
          last.text() + "_" + next.text(),
          last.text() + ", " + next.text());
    }
  }
}
