package plainscale.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * {@code limit θ to 90° show T, q in nC}; {@code to infinity} or {@code to ∞} has no value to come
 * near to.
 */
final class LimitParser {
  private static final String EXAMPLE = "limit θ to 90° show T";

  private static final Set<String> OTHER_WORDS = Set.of("inf", "Inf", "Infinity", "infinite", "oo");

  private final Tokens tokens;
  private final Names names;
  private final UnitReader units;

  LimitParser(Tokens tokens, Names names, UnitReader units) {
    this.tokens = tokens;
    this.names = names;
    this.units = units;
  }

  Statement.Limit limit(Span start) {
    Statement.Option name = tokens.nameOrBlank(EXAMPLE);
    if (!tokens.acceptWord("to")) {
      throw tokens.unexpected("“to” and the limit belong here, as in: " + EXAMPLE);
    }
    Expr to = goal();
    if (!tokens.acceptWord("show")) {
      throw tokens.unexpected("“show” and what is to be shown belong here");
    }
    List<Part.Value> shown = new ArrayList<>();
    do {
      Expr value = new ExpressionParser(tokens, names).sum();
      shown.add(new Part.Value(value, new FormatParser(tokens, units).format()));
    } while (tokens.accept(","));
    return new Statement.Limit(start.to(tokens.last()), name, to, shown);
  }

  /** As in a table, what follows the number is its unit. */
  private @Nullable Expr goal() {
    refuseOtherInfinity();
    boolean infinite = tokens.acceptWord("infinity") || tokens.accept("∞");
    return infinite ? null : new ExpressionParser(tokens, Names.NONE).sum();
  }

  private void refuseOtherInfinity() {
    boolean below = tokens.peek().is("-");
    Token word = tokens.peek(below ? 1 : 0);
    boolean infinite = word.is("∞") || word.isWord("infinity");
    if (below && (infinite || OTHER_WORDS.contains(word.text()))) {
      throw tokens.fault(
          "A limit goes to a value, or to infinity as a name grows; for the other end let the opposite of the name grow.",
          tokens.peek().span().to(word.span()),
          "infinity");
    }
    if (OTHER_WORDS.contains(word.text())) {
      throw tokens.fault("What grows without end goes to infinity.", word.span(), "infinity", "∞");
    }
  }
}
