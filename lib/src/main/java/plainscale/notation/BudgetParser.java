package plainscale.notation;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What belongs to uncertainty in a statement: trials with their seed, names that go together. */
final class BudgetParser {
  private static final String EXAMPLE = "with 100000 trials";

  private final Tokens tokens;

  BudgetParser(Tokens tokens) {
    this.tokens = tokens;
  }

  /** {@code V, I, φ}: two names at least, none of them twice. */
  List<Statement.Option> names() {
    List<Statement.Option> names = new ArrayList<>();
    do {
      Token token = tokens.peek();
      if (token.type() != Token.Type.NAME) {
        throw tokens.unexpected("the name of a given belongs here, as in: together V, I");
      }
      String name = Greek.normal(tokens.next().text());
      if (names.stream().anyMatch(n -> n.text().equals(name))) {
        throw tokens.fault("This name stands here twice.", token.span(), "delete it");
      }
      names.add(new Statement.Option(token.span(), name));
    } while (tokens.accept(","));
    if (names.size() < 2) {
      throw tokens.unexpected("a comma and another name belong here, as in: together V, I");
    }
    return names;
  }

  /** A budget has numbers in a unit, and no other form. */
  void refuseForm(Format format) {
    if (format.style() != Format.Style.NUMBER) {
      throw tokens.fault(
          "A budget is written in numbers; only a unit can be chosen.", tokens.last(), "in [unit]");
    }
  }

  /** {@code 100000 trials seed 7}, after the word “with”. */
  Statement.Trials trials() {
    int count = (int) number(Statement.Trials.FEWEST, Statement.Trials.MOST, "A number of trials");
    if (!tokens.acceptWord("trials")) {
      throw tokens.unexpected("“trials” belongs here");
    }
    long seed = Statement.Trials.SEED;
    if (tokens.acceptWord("seed")) {
      seed = number(0, Statement.Trials.LARGEST_SEED, "A seed");
    }
    return new Statement.Trials(count, seed);
  }

  private long number(long least, long most, String what) {
    Token token = tokens.peek();
    if (token.type() != Token.Type.NUMBER) {
      throw tokens.unexpected("a whole number belongs here, as in: " + EXAMPLE);
    }
    BigDecimal value = tokens.next().number().value().stripTrailingZeros();
    boolean within =
        value.scale() <= 0
            && value.compareTo(BigDecimal.valueOf(least)) >= 0
            && value.compareTo(BigDecimal.valueOf(most)) <= 0;
    if (!within) {
      throw tokens.fault(
          String.format(Locale.ROOT, "%s is a whole number from %d to %,d.", what, least, most)
              .replace(',', '\u202F'),
          token.span(),
          least == 0 ? "seed 7" : EXAMPLE);
    }
    return value.longValueExact();
  }
}
