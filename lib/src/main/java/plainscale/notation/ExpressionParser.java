package plainscale.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import plainscale.quantity.ElementaryFunction;
import plainscale.text.Near;
import plainscale.units.UnitOfMeasure;

/**
 * Expressions; each method is a rule, and the order of the calls is the order of precedence.
 *
 * <pre>{@code
 * sum     := product { ("+" | "-") product }
 * product := sign { [ "*" | "·" | "/" ] sign }        a space multiplies; what may follow "/" is in Solidus
 * sign    := "-" sign | power
 * power   := operand [ "^" sign | raised ]
 * operand := primary { "[" unit "]" }
 * primary := number [ unit ] | "?" [ unit ] | name | function "(" sum ")" | "(" sum [ "in" unit ] ")"
 * }</pre>
 */
final class ExpressionParser {
  private static final int DEEPEST = 100;

  private final Tokens tokens;
  private final Names names;
  private final Set<String> ends;
  private final UnitReader units;
  private int depth;

  ExpressionParser(Tokens tokens, Names names) {
    this(tokens, names, Set.of());
  }

  /** With more words that end a formula in this statement. */
  ExpressionParser(Tokens tokens, Names names, Set<String> ends) {
    this.tokens = tokens;
    this.names = names;
    this.ends = ends;
    this.units = new UnitReader(tokens, names);
  }

  Expr sum() {
    if (++depth > DEEPEST) {
      throw tokens.fault(
          Problem.Kind.LIMIT,
          "This is nested more than " + DEEPEST + " brackets deep.",
          tokens.peek().span(),
          List.of("give the inner part a name of its own"));
    }
    Expr left = product();
    while (tokens.peek().is("+") || tokens.peek().is("-")) {
      Token sign = tokens.next();
      refusePlusMinus(sign);
      Expr right = product();
      Expr.Operator operator = sign.is("+") ? Expr.Operator.PLUS : Expr.Operator.MINUS;
      left = new Expr.Binary(left.span().to(right.span()), operator, left, right, sign.span());
    }
    depth--;
    if (tokens.peek().is("±")) {
      throw uncertaintyInFormula(tokens.peek().span());
    }
    return left;
  }

  private void refusePlusMinus(Token sign) {
    if (sign.is("+") && (tokens.peek().is("-") || tokens.peek().is("/"))) {
      throw uncertaintyInFormula(sign.span());
    }
  }

  private ProblemException uncertaintyInFormula(Span span) {
    return tokens.fault(
        "An uncertainty (±) belongs to a given, not into a formula.",
        span,
        "given x = … ± …, then use x here");
  }

  private Expr product() {
    List<Solidus.Part> parts = new ArrayList<>();
    parts.add(part(Optional.empty(), tokens.peek().span(), this::sign));
    while (true) {
      Token token = tokens.peek();
      if (token.is("*") || token.is("·") || token.is("/")) {
        tokens.next();
        Expr.Operator operator = token.is("/") ? Expr.Operator.OVER : Expr.Operator.TIMES;
        parts.add(part(Optional.of(operator), token.span(), () -> factorAfter(operator, parts)));
      } else if (startsFactor(token)) {
        Span gap = new Span(/* start= */ tokens.last().end(), /* end= */ token.span().start());
        refuseNumberAfterSpace(token, parts.get(parts.size() - 1));
        parts.add(part(Optional.of(Expr.Operator.TIMES), gap, this::sign));
      } else {
        return Solidus.join(parts, tokens);
      }
    }
  }

  private Solidus.Part part(Optional<Expr.Operator> operator, Span at, Supplier<Expr> rule) {
    Span from = tokens.peek().span();
    Expr factor = rule.get();
    return new Solidus.Part(operator, at, factor, from.to(tokens.last()));
  }

  /** The lower number of a plain fraction takes no unit: in {@code 1/2 m v^2} the m is a factor. */
  private Expr factorAfter(Expr.Operator operator, List<Solidus.Part> parts) {
    boolean fraction =
        operator == Expr.Operator.OVER
            && Solidus.isPlainNumber(parts.get(parts.size() - 1).factor());
    return fraction && isNumber() ? exponent() : sign();
  }

  private boolean isNumber() {
    return tokens.peek().type() == Token.Type.NUMBER
        && tokens.peek().number().concise() == null
        && !tokens.peek(1).is("[");
  }

  private boolean endsFormula(Token token) {
    return Keywords.ENDS_FORMULA.contains(token.text()) || ends.contains(token.text());
  }

  private boolean startsFactor(Token token) {
    return switch (token.type()) {
      case NUMBER -> true;
      case NAME -> !endsFormula(token);
      case SYMBOL -> token.is("(") || (token.is(Open.SIGN) && token.space());
      case RAISED, STRING, END -> false;
    };
  }

  private void refuseNumberAfterSpace(Token token, Solidus.Part before) {
    if (token.type() != Token.Type.NUMBER) {
      return;
    }
    String left = tokens.text(before.written());
    if (left.equals("x") && token.text().equals("10")) {
      throw tokens.fault(
          "The letter x does not multiply; a power of ten is written with × or with e.",
          before.written().to(token.span()),
          "3×10^8",
          "3e8");
    }
    boolean grouped =
        before.factor() instanceof Expr.Literal
            && left.matches("\\d{1,3}")
            && token.text().matches("\\d{3}(\\D.*)?");
    String second = grouped ? left + token.text() : left + "^" + token.text();
    throw tokens.fault(
        "A number after a space is doubtful.",
        before.written().to(token.span()),
        left + "*" + token.text(),
        second);
  }

  private Expr sign() {
    if (tokens.peek().is("-")) {
      return negation(this::sign);
    }
    return power();
  }

  private Expr negation(Supplier<Expr> rule) {
    Token minus = tokens.next();
    if (++depth > DEEPEST) {
      throw tokens.fault(Problem.Kind.LIMIT, "Too many signs stand here.", minus.span(), List.of());
    }
    Expr operand = rule.get();
    depth--;
    return new Expr.Negation(minus.span().to(operand.span()), operand);
  }

  private Expr power() {
    Expr base = operand();
    Token token = tokens.peek();
    if (token.type() == Token.Type.RAISED) {
      tokens.next();
      Expr exponent = RaisedNumber.of(token, tokens);
      return new Expr.Binary(
          base.span().to(token.span()), Expr.Operator.POWER, base, exponent, token.span());
    }
    return token.is("^") ? raised(base) : base;
  }

  private Expr raised(Expr base) {
    Token token = tokens.next();
    if (++depth > DEEPEST) {
      throw tokens.fault(
          Problem.Kind.LIMIT, "Too many powers stand on one another.", token.span(), List.of());
    }
    Expr exponent = exponent();
    depth--;
    return new Expr.Binary(
        base.span().to(exponent.span()), Expr.Operator.POWER, base, exponent, token.span());
  }

  /** A number as exponent takes no unit: in {@code d^2 m} the m is a factor. */
  private Expr exponent() {
    if (isNumber()) {
      Token token = tokens.next();
      Expr number = new Expr.Literal(token.span(), token.number().value(), null, true);
      return tokens.peek().is("^") ? raised(number) : number;
    }
    if (tokens.peek().is("-")) {
      return negation(this::exponent);
    }
    return power();
  }

  private Expr operand() {
    Expr operand = primary();
    while (tokens.peek().is("[")) {
      UnitOfMeasure unit = units.bracketed();
      operand = new Expr.InUnits(operand.span().to(tokens.last()), operand, unit);
    }
    return operand;
  }

  private Expr primary() {
    Token token = tokens.peek();
    if (token.type() == Token.Type.NUMBER) {
      return number();
    }
    if (token.type() == Token.Type.NAME && !endsFormula(token)) {
      return name();
    }
    if (token.is(Open.SIGN)) {
      return blank();
    }
    if (token.is("(")) {
      return bracket();
    }
    if (token.is(")")) {
      throw tokens.fault("This bracket closes nothing that was opened.", token.span(), "delete it");
    }
    if (token.is("±")) {
      throw uncertaintyInFormula(token.span());
    }
    if (token.is("*") || token.is("=")) {
      String repair = token.is("*") ? "^ for a power" : "= once";
      throw tokens.fault("This sign stands twice.", token.span(), repair);
    }
    if (token.is("|")) {
      throw tokens.fault("The size of a quantity is written abs(…).", token.span(), "abs(…)");
    }
    if (token.is("[")) {
      throw tokens.fault(
          "A unit in brackets needs a number or a quantity before it.", token.span(), "1 [m]");
    }
    if (token.is(".") && tokens.peek(1).type() == Token.Type.NUMBER) {
      throw tokens.fault(
          "A number below one begins with 0.", token.span(), "0." + tokens.peek(1).text());
    }
    throw tokens.unexpected("a number, a name or a bracket belongs here");
  }

  private Expr number() {
    Token token = tokens.next();
    tokens.part(Line.What.NUMBER, token.span());
    if (token.number().concise() != null) {
      String digits = token.text().replaceFirst("\\((.*)\\)", "*$1");
      throw tokens.fault(
          "Brackets right after a number mean its uncertainty, and that belongs to a given.",
          token.span(),
          digits);
    }
    Optional<UnitOfMeasure> unit = units.afterNumber(token.span());
    boolean exact = token.number().whole() || unit.isEmpty();
    Span span = token.span().to(tokens.last());
    return new Expr.Literal(span, token.number().value(), unit.orElse(null), exact);
  }

  /** A unit may follow, as after a number; a quantity that follows is a factor. */
  private Expr blank() {
    tokens.acceptBlank(Open.Asked.EXPRESSION);
    Span span = tokens.last();
    Expr blank = new Expr.Name(span, Open.SIGN);
    Token next = tokens.peek();
    boolean unit = next.type() == Token.Type.NAME && !names.isQuantity(Greek.normal(next.text()));
    return unit
        ? units
            .afterNumber(span)
            .<Expr>map(u -> new Expr.InUnits(span.to(tokens.last()), blank, u))
            .orElse(blank)
        : blank;
  }

  private Expr name() {
    Token token = tokens.next();
    boolean bracketNext = tokens.peek().is("(");
    Optional<ElementaryFunction> function = Functions.find(token.text());
    if (function.isPresent() && !names.isQuantity(token.text())) {
      return call(token, function.get(), bracketNext);
    }
    String name = Greek.normal(token.text());
    if (bracketNext && !tokens.peek().space() && !names.isQuantity(name)) {
      refuseUnknownFunction(token);
    }
    return new Expr.Name(token.span(), name);
  }

  private Expr call(Token token, ElementaryFunction function, boolean bracketNext) {
    if (!bracketNext) {
      throw tokens.fault(
          token.text() + " needs brackets around what it is taken of.",
          token.span(),
          bracketed(token.text()));
    }
    Expr argument = bracket();
    return new Expr.Call(token.span().to(tokens.last()), function, argument);
  }

  /** {@code sin 30°} as sin(30°), {@code sin^2(θ)} as sin(…)^2, {@code sin⁻¹(x)} as asin(…). */
  private String bracketed(String function) {
    Token next = tokens.peek();
    boolean raised = next.is("^") || next.type() == Token.Type.RAISED;
    if (raised) {
      String exponent = next.is("^") ? tokens.text(tokens.peek(1).span()) : next.text();
      boolean inverse = exponent.equals("-") || exponent.equals("⁻¹");
      boolean known = Functions.find("a" + function).isPresent();
      return inverse && known
          ? "a" + function + "(…)"
          : function + "(…)" + (next.is("^") ? "^" : "") + exponent;
    }
    if (next.type() == Token.Type.NUMBER
        && tokens.peek(1).type() == Token.Type.NAME
        && !tokens.peek(1).space()) {
      return function + "(" + tokens.text(next.span().to(tokens.peek(1).span())) + ")";
    }
    boolean simple = next.type() == Token.Type.NAME || next.type() == Token.Type.NUMBER;
    return function + "(" + (simple ? tokens.text(next.span()) : "…") + ")";
  }

  private void refuseUnknownFunction(Token token) {
    if (token.text().equals("lg")) {
      throw tokens.fault("The logarithm to base ten is written log10.", token.span(), "log10(…)");
    }
    if (token.text().equals("log")) {
      throw tokens.fault("“log” is doubtful: which base?", token.span(), "ln(…)", "log10(…)");
    }
    String name = token.text().replaceFirst("\\d+$", "");
    if (!name.equals(token.text()) && Functions.find(name).isPresent()) {
      String power = name + "(…)^" + token.text().substring(name.length());
      throw tokens.fault("The exponent of a function follows its brackets.", token.span(), power);
    }
    List<String> near = Near.to(token.text(), Functions.names(), 2);
    if (!near.isEmpty() && token.text().length() > 1) {
      String sentence = "I know no function “" + token.text() + "”.";
      throw tokens.fault(
          Problem.Kind.NAME, sentence, token.span(), near.stream().map(f -> f + "(…)").toList());
    }
  }

  private Expr bracket() {
    Span open = tokens.next().span();
    Expr inner = sum();
    if (tokens.acceptWord("in")) {
      UnitOfMeasure unit = unitUpToBracket();
      inner = new Expr.Conversion(inner.span().to(tokens.last()), inner, unit);
    }
    if (!tokens.accept(")")) {
      if (tokens.atEnd()) {
        throw tokens.fault("This bracket is not closed.", open, "add ) where the part ends");
      }
      throw tokens.unexpected("a closing bracket belongs here");
    }
    return inner;
  }

  private UnitOfMeasure unitUpToBracket() {
    if (tokens.atEnd()) {
      throw tokens.unexpected("a unit belongs here");
    }
    int from = tokens.peek().span().start();
    int depthInUnit = 0;
    while (!tokens.atEnd() && !(depthInUnit == 0 && tokens.peek().is(")"))) {
      depthInUnit += tokens.peek().is("(") ? 1 : tokens.peek().is(")") ? -1 : 0;
      tokens.next();
    }
    if (tokens.last().end() <= from) {
      throw tokens.unexpected("a unit belongs here");
    }
    return units.parse(from, tokens.last().end());
  }
}
