package plainscale.notation;

import java.util.ArrayList;
import java.util.List;

/**
 * What is otherwise in a what-if, and the cases of a comparison.
 *
 * <pre>{@code
 * changes := change { "," change }
 * change  := name "=" sum | name ":" sum "=" sum
 * cases   := case "with" case { "with" case }
 * case    := text [ ":" changes ]
 * }</pre>
 */
final class CasesParser {
  private static final int MOST_CASES = 6;
  private static final String EXAMPLE = "compare \"as it is\" with \"twice the mass\": m = 2*m";

  private final Tokens tokens;
  private final Names names;

  CasesParser(Tokens tokens, Names names) {
    this.tokens = tokens;
    this.names = names;
  }

  /** {@code m = 2*m, level: k_e q_1 q_2/d^2 = T sin(θ)}. */
  List<Change> changes() {
    List<Change> changes = new ArrayList<>();
    do {
      Change change = change();
      if (changes.stream().anyMatch(c -> c.name().text().equals(change.name().text()))) {
        throw tokens.fault(
            "“%s” is changed twice.".formatted(change.name().text()),
            change.name().span(),
            "delete one of the two");
      }
      changes.add(change);
    } while (tokens.accept(","));
    return changes;
  }

  /** {@code show q, θ}, if it stands there. */
  List<Expr> shown() {
    List<Expr> shown = new ArrayList<>();
    if (tokens.acceptWord("show")) {
      do {
        shown.add(sum());
      } while (tokens.accept(","));
    }
    return shown;
  }

  private Change change() {
    Statement.Option name = tokens.name("what if m = 2*m show q");
    if (tokens.accept(":")) {
      Expr left = sum();
      if (!tokens.accept("=")) {
        throw tokens.unexpected("a relation says that two sides are equal: “=” belongs here");
      }
      return new Change.Relation(name, left, sum());
    }
    if (!tokens.accept("=")) {
      throw tokens.unexpected("“=” and the other value belong here");
    }
    return new Change.Value(name, sum());
  }

  private Expr sum() {
    return new ExpressionParser(tokens, names).sum();
  }

  /** Two cases at least, each with a name of its own. */
  List<Case> cases() {
    List<Case> cases = new ArrayList<>();
    do {
      cases.add(oneCase(cases));
    } while (tokens.acceptWord("with"));
    if (cases.size() < 2) {
      throw tokens.unexpected("“with” and another case belong here, as in: " + EXAMPLE);
    }
    return List.copyOf(cases);
  }

  private Case oneCase(List<Case> before) {
    Token token = tokens.peek();
    String text = token.text().replace("\\\"", "\"").strip();
    if (token.type() != Token.Type.STRING || text.isEmpty()) {
      throw tokens.unexpected(
          "the name of a case belongs here, in quotation marks, as in: " + EXAMPLE);
    }
    if (before.stream().anyMatch(c -> c.name().text().equals(text))) {
      throw tokens.fault(
          "Two cases have the same name.", token.span(), "\"" + text + ", once more\"");
    }
    if (before.size() == MOST_CASES) {
      throw tokens.fault(
          "At most " + MOST_CASES + " cases stand side by side.", token.span(), "take some away");
    }
    tokens.next();
    if (tokens.peek().type() == Token.Type.NAME && tokens.peek(1).is("=")) {
      String name = tokens.peek().text();
      throw tokens.fault(
          "Between the name of a case and what is otherwise in it stands a colon.",
          tokens.peek().span(),
          "\"%s\": %s = …".formatted(text, name));
    }
    List<Change> changes = tokens.accept(":") ? changes() : List.of();
    return new Case(new Statement.Option(token.span(), text), changes);
  }
}
