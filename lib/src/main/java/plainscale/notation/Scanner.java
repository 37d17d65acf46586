package plainscale.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import plainscale.units.Superscripts;
import plainscale.units.UnitParser;

/** Turns a range of the source into tokens, or says at which character it cannot. */
final class Scanner {
  private static final String SYMBOLS = "+-*/^()[]=,±·×⋅∙•−–÷∕<>:;|{}!.′'\\&~?$@∞";

  /** Signs that other programs write for the same thing. */
  private static final Map<String, String> SAME_AS =
      Map.of("−", "-", "–", "-", "×", "·", "⋅", "·", "∙", "·", "•", "·", "÷", "/", "∕", "/");

  /** Signs of print that have another form in a cell. */
  private static final Map<String, String> WRITTEN =
      Map.of(
          "√", "sqrt(…)", "∛", "cbrt(…)", "½", "1/2", "¼", "1/4", "¾", "3/4", "⅓", "1/3", "≈", "=");

  /** Longer words would make the search for what was meant slow. */
  private static final int LONGEST_NAME = 100;

  private final String source;
  private final int to;
  private final NumberScanner numbers;
  private final List<Span> comments;
  private int at;

  private Scanner(String source, int from, int to, List<Span> comments) {
    this.source = source;
    this.at = from;
    this.to = to;
    this.numbers = new NumberScanner(source);
    this.comments = comments;
  }

  /**
   * The tokens from {@code from} to before {@code to}, with an END token last; the places of
   * comments are added to {@code comments}.
   */
  static List<Token> scan(String source, int from, int to, List<Span> comments) {
    return new Scanner(source, from, to, comments).tokens();
  }

  private List<Token> tokens() {
    List<Token> tokens = new ArrayList<>();
    while (true) {
      boolean space = skip();
      if (at >= to) {
        tokens.add(new Token(Token.Type.END, "", new Span(at, at), space, null));
        return tokens;
      }
      Token token = next(space);
      at = token.span().end();
      tokens.add(token);
    }
  }

  private boolean skip() {
    int before = at;
    while (at < to && (isSpace(source.charAt(at)) || source.charAt(at) == '#')) {
      at = source.charAt(at) == '#' ? comment() : at + 1;
    }
    return at > before;
  }

  private int comment() {
    int lineEnd = source.indexOf('\n', at);
    int end = lineEnd < 0 ? to : Math.min(lineEnd, to);
    comments.add(new Span(at, end));
    return end;
  }

  private static boolean isSpace(char c) {
    return Character.isWhitespace(c) || isOtherSpace(c);
  }

  private static boolean isOtherSpace(char c) {
    return c == '\u00A0' || c == '\u2009' || c == '\u202F' || c == '\uFEFF';
  }

  private Token next(boolean space) {
    int c = source.codePointAt(at);
    if (c >= '0' && c <= '9') {
      return numbers.at(at, to, space);
    }
    if (Superscripts.digit(c) >= 0 || c == '⁻') {
      return run(Token.Type.RAISED, space, p -> Superscripts.digit(p) >= 0 || p == '⁻');
    }
    if (Character.isLetter(c) || UnitParser.isSymbolPart(c)) {
      return name(space);
    }
    if (c == '"' || c == '“' || c == '”') {
      return string(space);
    }
    if (c <= 0xFFFF && SYMBOLS.indexOf(c) >= 0) {
      String text = SAME_AS.getOrDefault(Character.toString(c), Character.toString(c));
      return new Token(Token.Type.SYMBOL, text, new Span(at, at + 1), space, null);
    }
    throw unreadable(c);
  }

  private interface CharTest {
    boolean test(int codePoint);
  }

  private Token run(Token.Type type, boolean space, CharTest test) {
    int end = at;
    while (end < to && test.test(source.codePointAt(end))) {
      end += Character.charCount(source.codePointAt(end));
    }
    if (end - at > LONGEST_NAME) {
      throw tooLong(end);
    }
    return new Token(type, source.substring(at, end), new Span(at, end), space, null);
  }

  private ProblemException tooLong(int end) {
    String sentence = "This word has more than " + LONGEST_NAME + " letters.";
    return new ProblemException(
        new Problem(Problem.Kind.LIMIT, sentence, source, new Span(at, end), List.of()));
  }

  private Token name(boolean space) {
    int first = source.codePointAt(at);
    if (!Character.isLetter(first) || first == '℃' || first == '℉') {
      return run(Token.Type.NAME, space, UnitParser::isSymbolPart);
    }
    return run(Token.Type.NAME, space, Scanner::isNamePart);
  }

  private static boolean isNamePart(int c) {
    return (Character.isLetterOrDigit(c) && Superscripts.digit(c) < 0)
        || c == '_'
        || Greek.isSubscript(c)
        || Character.getType(c) == Character.NON_SPACING_MARK;
  }

  private Token string(boolean space) {
    int end = at + 1;
    while (end < to && source.charAt(end) != '\n') {
      char c = source.charAt(end);
      if (c == '\\' && end + 1 < to) {
        end += 2;
        continue;
      }
      if (c == '"' || c == '”') {
        return new Token(
            Token.Type.STRING, source.substring(at + 1, end), new Span(at, end + 1), space, null);
      }
      end++;
    }
    throw fault(
        "This text is not closed: a \" is missing at its end.", at, Math.min(end, to), List.of());
  }

  private ProblemException unreadable(int c) {
    boolean shown =
        c >= ' '
            && c != 0x7F
            && Character.isDefined(c)
            && !Character.isISOControl(c)
            && !isSurrogate(c)
            && Character.getType(c) != Character.FORMAT;
    String what =
        shown
            ? "“" + Character.toString(c) + "”"
            : "a character without a sign (U+%04X)".formatted(c);
    String repair = WRITTEN.getOrDefault(Character.toString(c), "delete it");
    return fault(
        "I cannot read " + what + " here.", at, at + Character.charCount(c), List.of(repair));
  }

  private static boolean isSurrogate(int c) {
    return c >= 0xD800 && c <= 0xDFFF;
  }

  private ProblemException fault(String sentence, int start, int end, List<String> repairs) {
    return new ProblemException(
        new Problem(Problem.Kind.SYNTAX, sentence, source, new Span(start, end), repairs));
  }
}
