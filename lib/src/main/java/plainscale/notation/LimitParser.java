package plainscale.notation;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * {@code limit θ to 90° show T, q in nC}; {@code to infinity} or {@code to ∞} has no value to come
 * near to.
 */
final class LimitParser {
  private static final String EXAMPLE = "limit θ to 90° show T";

  private final Tokens tokens;
  private final Names names;
  private final UnitReader units;

  LimitParser(Tokens tokens, Names names, UnitReader units) {
    this.tokens = tokens;
    this.names = names;
    this.units = units;
  }

  Statement.Limit limit(Span start) {
    Statement.Option name = tokens.name(EXAMPLE);
    if (!tokens.acceptWord("to")) {
      throw tokens.unexpected("“to” and the limit belong here, as in: " + EXAMPLE);
    }
    Expr to = goal();
    if (!tokens.acceptWord("show")) {
      throw tokens.unexpected("“show” and what is to be shown belong here");
    }
    List<Statement.Value> shown = new ArrayList<>();
    do {
      Expr value = new ExpressionParser(tokens, names).sum();
      shown.add(new Statement.Value(value, new FormatParser(tokens, units).format()));
    } while (tokens.accept(","));
    return new Statement.Limit(start.to(tokens.last()), name, to, shown);
  }

  /** As in a table, what follows the number is its unit. */
  private @Nullable Expr goal() {
    boolean infinite = tokens.acceptWord("infinity") || tokens.accept("∞");
    return infinite ? null : new ExpressionParser(tokens, Names.NONE).sum();
  }
}
