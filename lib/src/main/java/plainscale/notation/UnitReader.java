package plainscale.notation;

import java.util.List;
import java.util.Optional;
import plainscale.units.UnitException;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;
import plainscale.units.UnitTable;

/**
 * Finds where a unit ends. In brackets, after {@code in} and in a given it is all the text that is
 * there. Right after a number in a formula it is the longest unit whose symbols are not quantities
 * of the sheet; where a symbol is both, the reading is doubtful and is refused with both repairs.
 */
final class UnitReader {
  /** How many words of a doubtful unit are looked at for the repair. */
  private static final int LOOK_AHEAD = 12;

  private final Tokens tokens;
  private final Names names;

  UnitReader(Tokens tokens, Names names) {
    this.tokens = tokens;
    this.names = names;
  }

  /** The unit that this range of the source means. */
  UnitOfMeasure parse(int from, int to) {
    String text = tokens.source().substring(from, to);
    try {
      return UnitParser.parse(text);
    } catch (UnitException e) {
      Span span = new Span(from + e.start(), from + Math.max(e.end(), e.start()));
      throw tokens.fault(Problem.Kind.UNIT, String.valueOf(e.getMessage()), span, e.repairs());
    }
  }

  /** The unit in square brackets, of which the opening one is next. */
  UnitOfMeasure bracketed() {
    Span open = tokens.next().span();
    int depth = 1;
    while (!tokens.atEnd()) {
      Token token = tokens.next();
      depth += token.is("[") ? 1 : token.is("]") ? -1 : 0;
      if (depth == 0) {
        return parse(open.end(), token.span().start());
      }
    }
    throw tokens.fault("This square bracket is not closed; a unit in brackets ends with ].", open);
  }

  /**
   * The unit from here up to the first token that ends a unit text (a word of the statement, a
   * string, the end).
   */
  UnitOfMeasure untilEnd(List<String> endWords) {
    Span from = tokens.peek().span();
    int end = from.start();
    while (!tokens.atEnd() && !endsUnit(tokens.peek(), endWords)) {
      end = tokens.next().span().end();
    }
    if (end == from.start()) {
      throw tokens.unexpected("a unit belongs here");
    }
    return parse(from.start(), end);
  }

  private static boolean endsUnit(Token token, List<String> endWords) {
    return token.type() == Token.Type.STRING
        || token.is("±")
        || token.is("+")
        || token.is(",")
        || (token.type() == Token.Type.NAME && endWords.contains(token.text()));
  }

  /** The unit right after the number just read, if there is one. */
  Optional<UnitOfMeasure> afterNumber(Span number) {
    if (tokens.peek().is("[")) {
      return Optional.of(bracketed());
    }
    if (!startsUnit(tokens.peek(), number)) {
      return Optional.empty();
    }
    int from = tokens.peek().span().start();
    symbol();
    while (continues(number)) {
      symbol();
    }
    return Optional.of(parse(from, tokens.last().end()));
  }

  private void symbol() {
    tokens.next();
    if (tokens.peek().type() == Token.Type.RAISED) {
      tokens.next();
    } else if (tokens.peek().is("^")) {
      tokens.next();
      if (tokens.peek().is("-")) {
        tokens.next();
      }
      if (tokens.next().type() != Token.Type.NUMBER) {
        throw tokens.fault("The exponent of a unit is a whole number.", tokens.last());
      }
    }
  }

  /** Whether another symbol of the unit follows; steps over the sign before it. */
  private boolean continues(Span number) {
    Token next = tokens.peek();
    boolean solidusBefore = tokens.text(number.to(tokens.last())).contains("/");
    if (next.is("/") || next.is("·")) {
      Token after = tokens.peek(1);
      boolean attached = !next.space() && !after.space();
      if (solidusBefore || !mayBeUnit(after, number, attached)) {
        return false;
      }
      tokens.next();
      return true;
    }
    return !solidusBefore && next.space() && mayBeUnit(next, number, true);
  }

  private boolean mayBeUnit(Token token, Span number, boolean doubtIfQuantity) {
    if (!isUnit(token)) {
      return false;
    }
    if (isQuantity(token) && !isConstantAfterUnit(token, doubtIfQuantity)) {
      if (doubtIfQuantity) {
        throw doubtful(token, number);
      }
      return false;
    }
    return true;
  }

  /** In {@code km/h} nobody means Planck's constant. */
  private boolean isConstantAfterUnit(Token token, boolean attached) {
    return attached && !names.isDefined(Greek.normal(token.text()));
  }

  private boolean startsUnit(Token token, Span number) {
    if (!isUnit(token)) {
      return false;
    }
    if (isQuantity(token) && !names.isSameAsUnit(Greek.normal(token.text()))) {
      throw doubtful(token, number);
    }
    return true;
  }

  private static boolean isUnit(Token token) {
    return token.type() == Token.Type.NAME && UnitTable.standard().find(token.text()).isPresent();
  }

  private boolean isQuantity(Token token) {
    return names.isQuantity(Greek.normal(token.text()));
  }

  private ProblemException doubtful(Token token, Span number) {
    String unit = UnitTable.standard().find(token.text()).map(u -> u.name()).orElse(token.text());
    String sentence =
        "“%s” is doubtful: %s is %s and also the unit %s."
            .formatted(
                tokens.text(number.to(token.span())),
                token.text(),
                names.meaning(Greek.normal(token.text())),
                unit);
    String before = tokens.text(new Span(number.start(), token.span().start())).strip();
    String unitReading = tokens.text(number) + " [" + longestUnit(number) + "] (the unit)";
    return tokens.fault(
        Problem.Kind.UNIT,
        sentence,
        number.to(token.span()),
        List.of(quantityReading(before, token, number), unitReading));
  }

  private String quantityReading(String before, Token token, Span number) {
    boolean over = before.endsWith("/");
    String written = tokens.text(new Span(number.end(), number.start() + before.length()));
    String unit = written.replaceAll("[/·]$", "").strip();
    String left = tokens.text(number) + (unit.isEmpty() ? "" : " [" + unit + "]");
    return left + (over ? "/" : "*") + token.text() + " (the quantity)";
  }

  /**
   * The longest text after the number that could be a unit, whatever its symbols mean in the sheet.
   */
  private String longestUnit(Span number) {
    String longest = "";
    for (int ahead = 0; ahead < LOOK_AHEAD && isUnitLike(tokens.peek(ahead)); ahead++) {
      String text =
          tokens.source().substring(number.end(), tokens.peek(ahead).span().end()).strip();
      if (isUnit(text)) {
        longest = text;
      }
    }
    return longest;
  }

  private static boolean isUnitLike(Token token) {
    boolean sign = token.is("^") || token.is("/") || token.is("·");
    return sign
        || token.type() == Token.Type.NAME
        || token.type() == Token.Type.RAISED
        || token.type() == Token.Type.NUMBER;
  }

  static boolean isUnit(String text) {
    try {
      UnitParser.parse(text);
      return true;
    } catch (UnitException notAUnit) {
      return false;
    }
  }
}
