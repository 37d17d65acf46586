package plainscale.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plainscale.text.Near;

/**
 * Statements about the results of a class.
 *
 * <pre>{@code
 * data       := text [ "as" name { "," name } ]
 * statistics := column [ "against" sum ]
 * histogram  := column [ "against" sum ] [ text ]
 * fit        := curve column "against" column [ "as" name { "," name } ]
 *               [ "with" "weights" ( "y" | "both" ) ] [ text ]
 * curve      := "line" | "proportional" | "power" | "exponential"
 * plot       := sum [ "in" unit ] "against" name [ "from" sum "to" sum ]
 *               { "with" ( "log" ( "x" | "y" | "both" ) | "points" column "against" column ) }
 *               [ text ]
 * }</pre>
 */
final class DataParser {
  private static final String AGAINST = "against";
  private static final Set<String> ENDS = Set.of(AGAINST);
  private static final String DATA = "data \"class.csv\"";
  private static final String FIT = "fit line U against I";
  private static final String PLOT = "plot q against d";

  private final Tokens tokens;
  private final Names names;
  private final UnitReader units;
  private final Span start;

  /** What follows a keyword, which stands at {@code start}. */
  DataParser(Tokens tokens, Names names, UnitReader units, Span start) {
    this.tokens = tokens;
    this.names = names;
    this.units = units;
    this.start = start;
  }

  private Span whole() {
    return start.to(tokens.last());
  }

  /** {@code data "class.csv" as d, q}. */
  Statement table() {
    Token token = tokens.peek();
    if (token.type() != Token.Type.STRING) {
      throw tokens.unexpected("the name of a file in quotation marks belongs here, as in: " + DATA);
    }
    tokens.next();
    Statement.Option file =
        new Statement.Option(token.span(), token.text().replace("\\\"", "\"").strip());
    List<Statement.Option> columns = tokens.acceptWord("as") ? newNames() : List.of();
    return new DataStatement.Table(whole(), file, columns);
  }

  /** {@code statistics d against 14.2 cm}. */
  Statement statistics() {
    Statement.Option column = tokens.nameOrBlank("statistics d");
    Expr reference = reference();
    return new DataStatement.Statistics(whole(), column, reference);
  }

  /** {@code histogram d against 14.2 cm "title"}. */
  Statement histogram() {
    Statement.Option column = tokens.nameOrBlank("histogram d");
    Expr reference = reference();
    String title = title();
    return new DataStatement.Histogram(whole(), column, reference, title);
  }

  /** As in a given, what follows the number is its unit. */
  private @Nullable Expr reference() {
    return tokens.acceptWord(AGAINST) ? new ExpressionParser(tokens, Names.NONE).sum() : null;
  }

  /** {@code fit power q against d as a, p with weights y}. */
  Statement fit() {
    DataStatement.Curve curve = curve();
    DataStatement.Pair pair = pair(FIT);
    List<Statement.Option> parameters = tokens.acceptWord("as") ? parameters(curve) : List.of();
    DataStatement.Weights weights =
        tokens.acceptWord("with") ? weights() : DataStatement.Weights.NONE;
    String title = title();
    return new DataStatement.Fit(whole(), curve, pair.y(), pair.x(), parameters, weights, title);
  }

  private DataStatement.Curve curve() {
    Token token = tokens.peek();
    Optional<DataStatement.Curve> curve = DataStatement.Curve.of(token.text());
    if (curve.isEmpty() || token.type() != Token.Type.NAME) {
      throw tokens.fault(
          Problem.Kind.SYNTAX,
          "After “fit” stands the curve: line, proportional, power or exponential.",
          token.span(),
          nearCurves(token));
    }
    tokens.next();
    return curve.get();
  }

  private static List<String> nearCurves(Token token) {
    List<String> near = Near.to(token.text(), DataStatement.Curve.words(), 1);
    return near.isEmpty() ? List.of(FIT) : near;
  }

  private DataStatement.Pair pair(String example) {
    Statement.Option y = tokens.nameOrBlank(example);
    against(example);
    Statement.Option x = tokens.nameOrBlank(example);
    return new DataStatement.Pair(y, x);
  }

  private void against(String example) {
    if (!tokens.acceptWord(AGAINST)) {
      throw tokens.unexpected(
          "“against” and what goes along the axis belong here, as in: " + example);
    }
  }

  /** As many names as the curve has parameters. */
  private List<Statement.Option> parameters(DataStatement.Curve curve) {
    Span first = tokens.peek().span();
    List<Statement.Option> parameters = newNames();
    if (parameters.size() != curve.roles().size()) {
      throw tokens.fault(
          "The curve “%s” gives %s: %s."
              .formatted(
                  curve.word(),
                  curve.roles().size() == 1 ? "one value" : curve.roles().size() + " values",
                  String.join(" and ", curve.roles())),
          first.to(tokens.last()),
          curve.roles().size() == 1 ? "as a" : "as a, b");
    }
    return parameters;
  }

  private List<Statement.Option> newNames() {
    List<Statement.Option> found = new ArrayList<>();
    do {
      Statement.Option name = tokens.name(DATA + " as d_c, q_c");
      boolean twice = found.stream().anyMatch(other -> other.text().equals(name.text()));
      if (twice || Keywords.isReserved(name.text())) {
        String sentence =
            twice ? "This name stands here twice." : "“%s” is a word of the notation.";
        throw tokens.fault(
            Problem.Kind.NAME,
            sentence.formatted(name.text()),
            name.span(),
            List.of(name.text() + "_1"));
      }
      found.add(name);
    } while (tokens.accept(","));
    return found;
  }

  private DataStatement.Weights weights() {
    boolean said = tokens.acceptWord("weights");
    Token token = tokens.peek();
    boolean y = said && token.isWord("y");
    if (!y && !(said && token.isWord("both"))) {
      throw tokens.fault(
          "Weights are those of y or of both axes.",
          token.span(),
          "with weights y",
          "with weights both");
    }
    tokens.next();
    return y ? DataStatement.Weights.Y : DataStatement.Weights.BOTH;
  }

  /** {@code plot q in nC against d from 8 cm to 40 cm with log both}. */
  Statement plot() {
    Expr y = new ExpressionParser(tokens, names, ENDS).sum();
    Format format = new FormatParser(tokens, units).format();
    against(PLOT);
    Statement.Option x = tokens.nameOrBlank(PLOT);
    DataStatement.Range range = tokens.acceptWord("from") ? range() : null;
    DataStatement.Logs logs = DataStatement.Logs.NONE;
    DataStatement.Pair points = null;
    while (tokens.acceptWord("with")) {
      if (tokens.acceptWord("points")) {
        points = pair("with points q_c against d_c");
      } else {
        logs = logs();
      }
    }
    refusePointsAlone(range, points);
    Part.Value value = new Part.Value(y, format);
    String title = title();
    return new DataStatement.Plot(whole(), value, x, range, points, logs, title);
  }

  private void refusePointsAlone(
      DataStatement.@Nullable Range range, DataStatement.@Nullable Pair points) {
    if (range == null && points != null) {
      throw tokens.fault(
          "Points stand beside a curve, and a curve goes from a value to another.",
          points.y().span().to(points.x().span()),
          "plot q against d from 8 cm to 40 cm with points …");
    }
  }

  private DataStatement.Range range() {
    Expr from = new ExpressionParser(tokens, Names.NONE).sum();
    if (!tokens.acceptWord("to")) {
      throw tokens.unexpected("“to” and a value belong here");
    }
    return new DataStatement.Range(from, new ExpressionParser(tokens, Names.NONE).sum());
  }

  private DataStatement.Logs logs() {
    boolean said = tokens.acceptWord("log");
    Token token = tokens.peek();
    boolean both = token.isWord("both");
    boolean x = both || token.isWord("x");
    boolean y = both || token.isWord("y");
    if (!said || !(x || y)) {
      throw tokens.fault(
          "A plot has logarithmic axes, or points beside its curve.",
          token.span(),
          "with log x",
          "with log y",
          "with log both",
          "with points q_c against d_c");
    }
    tokens.next();
    return new DataStatement.Logs(x, y);
  }

  private String title() {
    return tokens.peek().type() == Token.Type.STRING
        ? tokens.next().text().replace("\\\"", "\"")
        : "";
  }
}
