package plainscale.notation;

/** {@code level: k_e q^2/d^2 = T sin(θ) "push = pull"}, after the word “relation”. */
final class RelationParser {
  private final Tokens tokens;
  private final Names names;

  RelationParser(Tokens tokens, Names names) {
    this.tokens = tokens;
    this.names = names;
  }

  /** The relation whose first word stands at {@code start}. */
  Statement.Relation relation(Span start) {
    String name = name();
    if (!tokens.accept(":")) {
      throw tokens.fault(
          "After the name of a relation comes a colon.", tokens.peek().span(), name + ": … = …");
    }
    return isBlankAlone() ? blank(start, name) : written(start, name);
  }

  /** A relation may be called by a word of the notation: a colon follows. */
  private String name() {
    Token token = tokens.peek();
    boolean word = token.type() == Token.Type.NAME && tokens.peek(1).is(":");
    return word && !token.isWord("for") && Character.isLetter(token.text().codePointAt(0))
        ? Greek.normal(tokens.next().text())
        : StatementParser.newName(tokens, "relation fall: s = 1/2 g_n t^2");
  }

  /** {@code ? "push = pull"}. */
  private boolean isBlankAlone() {
    Token.Type after = tokens.peek(1).type();
    return tokens.peek().is(Open.SIGN) && (after == Token.Type.END || after == Token.Type.STRING);
  }

  private Statement.Relation blank(Span start, String name) {
    tokens.acceptBlank(Open.Asked.RELATION);
    Expr side = new Expr.Name(tokens.last(), Open.SIGN);
    return ending(start, name, side, side);
  }

  private Statement.Relation written(Span start, String name) {
    Span first = tokens.peek().span();
    Expr left = side();
    if (!tokens.accept("=")) {
      throw tokens.fault(
          "A relation says that two sides are equal: here “=” and the other side are missing.",
          tokens.peek().span(),
          "relation %s: … = %s".formatted(name, tokens.text(left.span())));
    }
    Expr right = side();
    tokens.part(Line.What.RELATION, first);
    refuseThirdSide(name, left, right);
    return ending(start, name, left, right);
  }

  private Expr side() {
    return new ExpressionParser(tokens, names).sum();
  }

  private void refuseThirdSide(String name, Expr left, Expr right) {
    if (tokens.peek().is("=")) {
      String one = tokens.text(left.span());
      throw tokens.fault(
          "A relation has two sides; with a third it is two relations.",
          tokens.peek().span(),
          "relation %s: %s = %s".formatted(name, one, tokens.text(right.span())),
          "relation %s_2: %s = …".formatted(name, one));
    }
  }

  private Statement.Relation ending(Span start, String name, Expr left, Expr right) {
    Span span = start.to(tokens.last());
    boolean described = tokens.peek().type() == Token.Type.STRING;
    String description = described ? tokens.next().text().replace("\\\"", "\"") : "";
    return new Statement.Relation(span, name, left, right, description);
  }
}
