package plainscale.notation;

import java.util.ArrayList;
import java.util.List;

/** The tokens of one statement with a reading position, and the making of problems at a place. */
final class Tokens {
  /** Bounds the depth of the tree, and so that of every walk over it. */
  private static final int MOST = 1000;

  private final String source;
  private final List<Token> tokens;
  private final List<Open.Blank> blanks;
  private final List<Line.Part> parts;
  private final List<Span> comments = new ArrayList<>();
  private int at;

  Tokens(String source, int from, int to) {
    this(source, from, to, new ArrayList<>(), new ArrayList<>());
  }

  private Tokens(String source, int from, int to, List<Open.Blank> blanks, List<Line.Part> parts) {
    this.source = source;
    this.blanks = blanks;
    this.parts = parts;
    this.tokens = Scanner.scan(source, from, to, comments);
    if (tokens.size() > MOST) {
      Span where = tokens.get(MOST).span();
      throw fault(
          Problem.Kind.LIMIT,
          "This line has more than " + MOST + " words and signs.",
          where,
          List.of());
    }
  }

  /** The tokens of a part of the statement, whose blanks and parts are those of the statement. */
  Tokens within(Span part) {
    return new Tokens(source, part.start(), part.end(), blanks, parts);
  }

  String source() {
    return source;
  }

  /** The blanks that were read. */
  List<Open.Blank> blanks() {
    return List.copyOf(blanks);
  }

  /** Notes that what was read from that place on is a part which a copy can leave blank. */
  void part(Line.What what, Span from) {
    parts.add(new Line.Part(from.to(last()), what));
  }

  /** The parts that were noted. */
  List<Line.Part> parts() {
    return List.copyOf(parts);
  }

  List<Span> comments() {
    return List.copyOf(comments);
  }

  /** Where the words in quotation marks at the end begin, else where the last word ends. */
  int end() {
    if (tokens.size() < 2) {
      return peek().span().start();
    }
    Token last = tokens.get(tokens.size() - 2);
    return last.type() == Token.Type.STRING ? last.span().start() : last.span().end();
  }

  /** Reads a blank, if one stands here. */
  boolean acceptBlank(Open.Asked asked) {
    Span span = peek().span();
    boolean there = accept(Open.SIGN);
    if (there) {
      blanks.add(new Open.Blank(span, asked));
    }
    return there;
  }

  Token peek() {
    return tokens.get(at);
  }

  Token peek(int ahead) {
    return tokens.get(Math.min(at + ahead, tokens.size() - 1));
  }

  Token next() {
    Token token = tokens.get(at);
    if (token.type() != Token.Type.END) {
      at++;
    }
    return token;
  }

  boolean accept(String symbol) {
    boolean there = peek().is(symbol);
    if (there) {
      at++;
    }
    return there;
  }

  boolean acceptWord(String word) {
    boolean there = peek().isWord(word);
    if (there) {
      at++;
    }
    return there;
  }

  boolean atEnd() {
    return peek().type() == Token.Type.END;
  }

  /** Whether the last token that was read is a text in quotation marks. */
  boolean afterString() {
    return at > 0 && tokens.get(at - 1).type() == Token.Type.STRING;
  }

  /** A name of the sheet, where it stands, or a blank for one. */
  Statement.Option nameOrBlank(String example) {
    return acceptBlank(Open.Asked.NAME) ? new Statement.Option(last(), Open.SIGN) : name(example);
  }

  /** A name of the sheet, where it stands. */
  Statement.Option name(String example) {
    Token token = peek();
    if (token.type() != Token.Type.NAME) {
      throw unexpected("a name belongs here, as in: " + example);
    }
    return new Statement.Option(token.span(), Greek.normal(next().text()));
  }

  /** The place after the last token that was read. */
  Span last() {
    return at == 0 ? peek().span() : tokens.get(at - 1).span();
  }

  String text(Span span) {
    return source.substring(span.start(), span.end());
  }

  ProblemException fault(String sentence, Span span, String... repairs) {
    return new ProblemException(
        new Problem(Problem.Kind.SYNTAX, sentence, source, span, List.of(repairs)));
  }

  ProblemException fault(Problem.Kind kind, String sentence, Span span, List<String> repairs) {
    return new ProblemException(new Problem(kind, sentence, source, span, repairs));
  }

  /** The complaint about a token that cannot stand here. */
  ProblemException unexpected(String wanted) {
    Token token = peek();
    String found =
        token.type() == Token.Type.END ? "the line ends" : "there is “" + text(token.span()) + "”";
    return fault("Here " + found + "; " + wanted + ".", token.span());
  }
}
