package plainscale.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import plainscale.text.Near;

/**
 * Statements: a table of keywords to rules; a line without a keyword is a definition or an
 * expression to show.
 */
final class StatementParser {
  private static final int MOST_SIDES = 6;
  static final Map<String, Function<StatementParser, Statement>> RULES =
      Map.ofEntries(
          Map.entry("given", StatementParser::given),
          Map.entry("show", StatementParser::show),
          Map.entry("say", StatementParser::say),
          Map.entry("contrast", StatementParser::contrast),
          Map.entry("near", StatementParser::near),
          Map.entry("expand", StatementParser::expand),
          Map.entry("ruler", p -> p.picture(ScalePicture.RULER)),
          Map.entry("squares", p -> p.picture(ScalePicture.SQUARES)),
          Map.entry("dots", p -> p.picture(ScalePicture.DOTS)),
          Map.entry("relation", p -> new RelationParser(p.tokens, p.names).relation(p.start)),
          Map.entry("use", p -> new LawParser(p.tokens, p.names, p.start).use()),
          Map.entry("what", StatementParser::whatIf),
          Map.entry("compare", StatementParser::compare),
          Map.entry("forces", StatementParser::forces),
          Map.entry("pairs", StatementParser::pairs),
          Map.entry("figure", StatementParser::figure),
          Map.entry("field", p -> p.fields().field()),
          Map.entry("potential", p -> p.fields().potential()),
          Map.entry("map", p -> p.fields().map()),
          Map.entry("relief", p -> p.fields().relief()),
          Map.entry("section", p -> p.fields().section()),
          Map.entry("release", p -> p.fields().release()),
          Map.entry("depends", StatementParser::depends),
          Map.entry("vary", StatementParser::vary),
          Map.entry("limit", p -> new LimitParser(p.tokens, p.names, p.units).limit(p.start)),
          Map.entry("solve", p -> new SolveParser(p.tokens, p.units).solve(p.start)),
          Map.entry("budget", StatementParser::budget),
          Map.entry("data", p -> p.data().table()),
          Map.entry("statistics", p -> p.data().statistics()),
          Map.entry("histogram", p -> p.data().histogram()),
          Map.entry("fit", p -> p.data().fit()),
          Map.entry("plot", p -> p.data().plot()),
          Map.entry("together", StatementParser::together),
          Map.entry("expect", p -> p.guards().expect()),
          Map.entry("caution", p -> p.guards().caution()),
          Map.entry("constants", p -> p.choice(Statement.Setting.CONSTANTS)),
          Map.entry("locale", p -> p.choice(Statement.Setting.LOCALE)),
          Map.entry("scale", p -> p.choice(Statement.Setting.SCALE)),
          Map.entry("digits", p -> p.choice(Statement.Setting.DIGITS)),
          Map.entry("orders", p -> p.choice(Statement.Setting.ORDERS)));

  private final Tokens tokens;
  private final Names names;
  private final UnitReader units;
  private final Span start;

  StatementParser(String source, Span range, Names names) {
    this(new Tokens(source, range.start(), range.end()), names);
  }

  StatementParser(Tokens tokens, Names names) {
    this.tokens = tokens;
    this.names = names;
    this.units = new UnitReader(tokens, names);
    this.start = tokens.peek().span();
  }

  /** The line with its parts; it is read here if it was not yet. */
  Line line(Span range) {
    Statement read = isEmpty() ? null : statement();
    return new Line(range, read, tokens.parts(), tokens.comments(), tokens.end());
  }

  /** Whether there is nothing but space and comments. */
  boolean isEmpty() {
    return tokens.atEnd();
  }

  Statement statement() {
    Token first = tokens.peek();
    boolean defines = tokens.peek(1).is("=");
    Function<StatementParser, Statement> rule =
        first.type() == Token.Type.NAME ? RULES.get(first.text()) : null;
    Statement statement;
    if (rule != null && !defines) {
      tokens.next();
      statement = rule.apply(this);
    } else {
      statement = defines && first.type() == Token.Type.NAME ? definition() : bare();
    }
    if (!tokens.atEnd()) {
      throw leftOver();
    }
    return tokens.blanks().isEmpty()
        ? statement
        : new Open(statement.span(), statement, tokens.blanks());
  }

  private ProblemException leftOver() {
    Token token = tokens.peek();
    if (token.is(")")) {
      return tokens.fault(
          "This bracket closes nothing that was opened.", token.span(), "delete it");
    }
    if (token.is("=")) {
      return tokens.fault("Left of = stands one name.", start.to(token.span()), "name = formula");
    }
    if (token.is(";")) {
      return tokens.fault(
          "A line holds one statement.", token.span(), "begin a new line instead of ;");
    }
    if (tokens.afterString()) {
      return tokens.fault("The words in quotation marks come last.", token.span());
    }
    return tokens.fault("I do not understand the line from here on.", token.span());
  }

  private Statement given() {
    String name = newName("given m = 2.70 g");
    if (!tokens.accept("=")) {
      throw tokens.fault(
          "After the name comes = and the measured value.",
          tokens.peek().span(),
          "given " + name + " = …");
    }
    refuseMultiple(name);
    MeasurementParser parser = new MeasurementParser(tokens, units);
    Measurement measurement = parser.measurement();
    parser.refuseFormula();
    return new Statement.Given(whole(), name, measurement, description());
  }

  /** {@code given v = 0.8 c} is computed from c, which is no unit. */
  private void refuseMultiple(String name) {
    Token number = tokens.peek();
    Token of = tokens.peek(1);
    boolean quantity =
        number.type() == Token.Type.NUMBER
            && of.type() == Token.Type.NAME
            && names.isQuantity(Greek.normal(of.text()))
            && !UnitReader.isUnit(of.text());
    if (quantity) {
      throw tokens.fault(
          "A given is a measured number with its unit, and “%s” is a quantity; what is computed is defined without the word given."
              .formatted(of.text()),
          of.span(),
          "%s = %s*%s".formatted(name, number.text(), of.text()));
    }
  }

  private Statement definition() {
    String name = newName("q = m g_n");
    tokens.next();
    Expr formula = formula();
    Format format = format();
    return new Statement.Definition(whole(), name, formula, format, description());
  }

  private String newName(String example) {
    return newName(tokens, example);
  }

  /** A name that a statement defines. */
  static String newName(Tokens tokens, String example) {
    Token token = tokens.peek();
    if (token.type() != Token.Type.NAME || !Character.isLetter(token.text().codePointAt(0))) {
      throw tokens.unexpected("a name belongs here, as in: " + example);
    }
    if (Keywords.isReserved(token.text())) {
      throw tokens.fault(
          Problem.Kind.NAME,
          "“" + token.text() + "” is a word of the notation.",
          token.span(),
          List.of(token.text() + "_1"));
    }
    return Greek.normal(tokens.next().text());
  }

  private Statement show() {
    return shown(false);
  }

  private Statement bare() {
    refuseMisspelledKeyword();
    return shown(true);
  }

  /** {@code givn m = 2 g} is a slip of a keyword, not a product of two names. */
  private void refuseMisspelledKeyword() {
    Token first = tokens.peek();
    Token second = tokens.peek(1);
    boolean suspicious =
        first.type() == Token.Type.NAME
            && (second.type() == Token.Type.NAME
                || second.type() == Token.Type.STRING
                || second.type() == Token.Type.NUMBER);
    boolean known =
        names.isQuantity(Greek.normal(first.text())) || Functions.find(first.text()).isPresent();
    if (!suspicious || known) {
      return;
    }
    List<String> near = Near.to(first.text(), Keywords.STATEMENTS, 1);
    if (!near.isEmpty()) {
      throw tokens.fault(
          Problem.Kind.SYNTAX, "I know no word “" + first.text() + "”.", first.span(), near);
    }
  }

  private Expr formula() {
    Span first = tokens.peek().span();
    Expr formula = new ExpressionParser(tokens, names).sum();
    tokens.part(Line.What.FORMULA, first);
    return formula;
  }

  private Statement shown(boolean bare) {
    Expr value = formula();
    Format format = format();
    return new Statement.Show(whole(), value, format, description(), bare);
  }

  private Statement contrast() {
    List<Expr> sides = sides();
    if (sides.size() == 1) {
      throw tokens.unexpected("“with” and a second quantity belong here");
    }
    Format format = format();
    Statement.Option by = tokens.acceptWord("by") ? rule() : null;
    return new Statement.Contrast(whole(), sides, format, by, description());
  }

  /** {@code a with b with c}: the rest of the line holds at most six. */
  private List<Expr> sides() {
    List<Expr> sides = new ArrayList<>();
    do {
      sides.add(new ExpressionParser(tokens, names).sum());
      if (sides.size() > MOST_SIDES) {
        throw tokens.fault(
            "At most six quantities go together.", tokens.last(), "take some of them away");
      }
    } while (tokens.acceptWord("with"));
    Token next = tokens.peek();
    if (next.is(",") || next.isWord("and")) {
      throw tokens.fault("Between the quantities stands “with”.", next.span(), "a with b");
    }
    return sides;
  }

  private Statement.Option rule() {
    if (tokens.peek().type() != Token.Type.NAME) {
      throw tokens.unexpected("a rule of perspective belongs here, such as counting");
    }
    return FormatParser.option(tokens);
  }

  private Statement near() {
    Expr value = new ExpressionParser(tokens, names).sum();
    Format format = format();
    return new Statement.Near(whole(), value, format, description());
  }

  private Statement expand() {
    Expr value = new ExpressionParser(tokens, names).sum();
    Format format = format();
    boolean boxes = tokens.acceptWord("with");
    if (boxes && !tokens.acceptWord("boxes")) {
      throw tokens.unexpected("“boxes” belongs here");
    }
    return new Statement.Expand(whole(), value, format, boxes, description());
  }

  private Statement picture(ScalePicture drawing) {
    List<Expr> sides = sides();
    Format format = format();
    return new Statement.Picture(whole(), drawing, sides, format, description());
  }

  private Statement whatIf() {
    if (!tokens.acceptWord("if")) {
      throw tokens.unexpected("“if” belongs here, as in: what if m = 2*m show q");
    }
    CasesParser parser = new CasesParser(tokens, names);
    List<Change> changes = parser.changes();
    List<Expr> shown = parser.shown();
    return new Statement.WhatIf(whole(), changes, shown);
  }

  private Statement compare() {
    List<Case> cases = new CasesParser(tokens, names).cases();
    List<Part.Value> shown = tokens.acceptWord("show") ? values() : List.of();
    return new Statement.Compare(whole(), cases, shown);
  }

  private Statement forces() {
    return new ForcesParser(tokens, names).forces(start);
  }

  private Statement figure() {
    Statement.Option name = tokens.name("figure balls \"Two balls and their forces\"");
    return new Figure(whole(), name, description());
  }

  private Statement pairs() {
    return new ForcesParser(tokens, names).pairs(start);
  }

  private FieldParser fields() {
    return new FieldParser(tokens, names, start);
  }

  private GuardParser guards() {
    return new GuardParser(tokens, names, start);
  }

  private DataParser data() {
    return new DataParser(tokens, names, units, start);
  }

  private Statement depends() {
    Expr value = new ExpressionParser(tokens, names).sum();
    if (!tokens.acceptWord("on")) {
      throw tokens.unexpected("“on” and a name belong here, as in: depends q on d");
    }
    Statement.Option on = tokens.nameOrBlank("depends q on d");
    return new Statement.Depends(whole(), value, on);
  }

  /** As in a given, what follows the number of a limit is its unit. */
  private Statement vary() {
    Statement.Option name = tokens.nameOrBlank("vary d from 8 cm to 40 cm show q");
    if (!tokens.acceptWord("from")) {
      throw tokens.unexpected("“from” and a value belong here");
    }
    Expr from = new ExpressionParser(tokens, Names.NONE).sum();
    if (!tokens.acceptWord("to")) {
      throw tokens.unexpected("“to” and a value belong here");
    }
    Expr to = new ExpressionParser(tokens, Names.NONE).sum();
    Expr step = tokens.acceptWord("by") ? new ExpressionParser(tokens, Names.NONE).sum() : null;
    if (!tokens.acceptWord("show")) {
      throw tokens.unexpected("“show” and what is to be shown belong here");
    }
    List<Part.Value> shown = values();
    return new Statement.Vary(whole(), name, from, to, step, shown);
  }

  /** {@code q in nC, θ}. */
  private List<Part.Value> values() {
    List<Part.Value> values = new ArrayList<>();
    do {
      Expr value = new ExpressionParser(tokens, names).sum();
      values.add(new Part.Value(value, format()));
    } while (tokens.accept(","));
    return List.copyOf(values);
  }

  private Statement together() {
    List<Statement.Option> together = new BudgetParser(tokens).names();
    return new Statement.Together(whole(), together);
  }

  private Statement budget() {
    Expr value = new ExpressionParser(tokens, names).sum();
    Format format = format();
    BudgetParser parser = new BudgetParser(tokens);
    parser.refuseForm(format);
    Statement.Trials trials = tokens.acceptWord("with") ? parser.trials() : null;
    return new Statement.Budget(whole(), value, format, trials, description());
  }

  private Statement choice(Statement.Setting setting) {
    if (tokens.peek().type() != Token.Type.NAME) {
      String example = Keywords.example(setting);
      throw tokens.fault("Here a choice is missing.", tokens.peek().span(), example);
    }
    Statement.Option option = FormatParser.option(tokens);
    return new Statement.Choice(whole(), setting, option);
  }

  private Statement say() {
    Token text = tokens.peek();
    if (text.type() != Token.Type.STRING) {
      throw tokens.unexpected("a text in quotation marks belongs here");
    }
    tokens.next();
    List<Part> parts = new SayParser(tokens, names).parts(text.span());
    return new Statement.Say(whole(), parts);
  }

  /** A value in braces. */
  Part valuePart() {
    Expr value = new ExpressionParser(tokens, names).sum();
    Format format = format();
    if (!tokens.atEnd()) {
      throw leftOver();
    }
    return new Part.Value(value, format);
  }

  private Format format() {
    return new FormatParser(tokens, units).format();
  }

  private String description() {
    if (tokens.peek().type() != Token.Type.STRING) {
      return "";
    }
    return tokens.next().text().replace("\\\"", "\"");
  }

  private Span whole() {
    return start.to(tokens.last());
  }
}
