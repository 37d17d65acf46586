package plainscale.notation;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * The text of a {@code say}: words as they stand, and in braces what is live: a value with its
 * format, {@code equation 5 of q} or {@code steps of q}. Doubled braces are braces.
 */
final class SayParser {
  private static final List<String> WORDS =
      List.of("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");

  private static final BigDecimal TOO_MANY = BigDecimal.valueOf(1_000_000);

  private final Tokens statement;
  private final String source;
  private final Names names;

  /** The tokens are those of the statement, whose text is read. */
  SayParser(Tokens statement, Names names) {
    this.statement = statement;
    this.source = statement.source();
    this.names = names;
  }

  /** The pieces between the quotation marks. */
  List<Part> parts(Span quoted) {
    List<Part> parts = new ArrayList<>();
    StringBuilder words = new StringBuilder();
    int at = quoted.start() + 1;
    while (at < quoted.end() - 1) {
      char c = source.charAt(at);
      boolean doubled = (c == '{' || c == '}') && source.charAt(at + 1) == c;
      if (c == '\\' || doubled) {
        words.append(source.charAt(at + 1));
        at += 2;
      } else if (c == '{') {
        addText(parts, words);
        int close = closing(at, quoted.end() - 1);
        parts.add(live(new Span(at + 1, close)));
        at = close + 1;
      } else {
        words.append(c);
        at++;
      }
    }
    addText(parts, words);
    return parts;
  }

  private static void addText(List<Part> parts, StringBuilder words) {
    if (words.length() > 0) {
      parts.add(new Part.Text(words.toString()));
      words.setLength(0);
    }
  }

  private int closing(int open, int end) {
    int close = source.indexOf('}', open);
    if (close < 0 || close >= end) {
      throw new ProblemException(
          new Problem(
              Problem.Kind.SYNTAX,
              "This brace is not closed.",
              source,
              new Span(open, open + 1),
              List.of("add } after the value")));
    }
    return close;
  }

  private Part live(Span inside) {
    Tokens tokens = statement.within(inside);
    Token first = tokens.peek();
    if (first.isWord("figure") && tokens.peek(1).type() == Token.Type.NAME) {
      return figure(tokens);
    }
    if (first.isWord("steps") && tokens.peek(1).isWord("of")) {
      return steps(tokens);
    }
    boolean numbered = tokens.peek(1).type() == Token.Type.NUMBER && tokens.peek(2).isWord("of");
    if (first.isWord("equation") && numbered) {
      return equation(tokens);
    }
    boolean word = first.isWord("equation") || first.isWord("equations");
    if (word && !names.isQuantity(first.text()) && tokens.peek(1).type() != Token.Type.END) {
      throw otherEquation(tokens, inside);
    }
    return new StatementParser(tokens, names).valuePart();
  }

  private static Part figure(Tokens tokens) {
    tokens.next();
    return new Part.FigureOf(derived(tokens, "figure balls"));
  }

  private static Part steps(Tokens tokens) {
    tokens.next();
    tokens.next();
    return new Part.StepsOf(derived(tokens, "steps of q"));
  }

  private static Part equation(Tokens tokens) {
    tokens.next();
    Token number = tokens.next();
    boolean whole = number.number().whole();
    int value = whole ? number.number().value().min(TOO_MANY).intValue() : 0;
    if (value <= 0) {
      throw tokens.fault("Equations are numbered from 1, as in: {equation 5 of q}.", number.span());
    }
    tokens.next();
    return new Part.EquationOf(number.span(), value, derived(tokens, "equation 5 of q"));
  }

  /** {@code equation (2) of v}, {@code equations 2 of v}, {@code equation two of v}. */
  private static ProblemException otherEquation(Tokens tokens, Span inside) {
    String number = "2";
    String unknown = "q";
    for (int i = 1; tokens.peek(i).type() != Token.Type.END; i++) {
      Token token = tokens.peek(i);
      int counted = WORDS.indexOf(token.text()) + 1;
      if (token.type() == Token.Type.NUMBER || counted > 0) {
        number = counted > 0 ? Integer.toString(counted) : token.text();
      } else if (token.type() == Token.Type.NAME && !token.isWord("of")) {
        unknown = token.text();
      }
    }
    return tokens.fault(
        "An equation of a derivation is named by its number and the unknown.",
        inside,
        "{equation %s of %s}".formatted(number, unknown));
  }

  private static Statement.Option derived(Tokens tokens, String example) {
    Statement.Option name = tokens.name(example);
    if (!tokens.atEnd()) {
      throw tokens.unexpected("the brace ends after the name, as in: {" + example + "}");
    }
    return name;
  }
}
