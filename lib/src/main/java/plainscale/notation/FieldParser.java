package plainscale.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plainscale.text.Near;

/**
 * Statements about fields.
 *
 * <pre>{@code
 * field     := "field" name ":" item { "," item } [ text ]
 * item      := "?" | ("charge" | "mass") sum "at" place
 *            | "line" sum "from" place "to" place
 *            | ("sphere" | "shell") sum "radius" sum "at" place
 *            | ("ring" | "disc") sum "radius" sum "at" place [ "across" | "flat" ]
 *            | "plates" sum "gap" sum "at" place
 * potential := "potential" "of" name "at" place
 * map       := "map" name [ "from" place "to" place ] [ "with" "vectors" ]
 * relief    := "relief" name [ "from" place "to" place ]
 * section   := "section" name "from" place "to" place
 * release   := "release" [ "charge" sum ] "mass" sum "at" place [ "moving" place ] "in" name [ "for" sum ]
 * place     := "(" sum "," sum ")"
 * }</pre>
 */
final class FieldParser {
  /** As many as fit into one statement. */
  private static final int MOST_ITEMS = 80;

  private static final Set<String> ENDS = Set.of("at", "radius", "gap", "mass", "moving");
  private static final String FIELD = "field pair: charge q at (0 cm, 0 cm)";
  private static final String RELEASE = "release charge q mass m at (3 cm, 0 cm) in pair";

  private final Tokens tokens;
  private final Names names;
  private final Span start;

  FieldParser(Tokens tokens, Names names, Span start) {
    this.tokens = tokens;
    this.names = names;
    this.start = start;
  }

  Statement field() {
    Statement.Option name = name(FIELD);
    if (Keywords.isReserved(name.text())) {
      throw tokens.fault(
          Problem.Kind.NAME,
          "“" + name.text() + "” is a word of the notation.",
          name.span(),
          List.of(name.text() + "_1"));
    }
    if (!tokens.accept(":")) {
      throw tokens.fault(
          "After the name of a field comes a colon.",
          tokens.peek().span(),
          "field " + name.text() + ": " + FieldItem.Shape.CHARGE.example());
    }
    Span first = tokens.peek().span();
    List<FieldItem> items = items();
    tokens.part(Line.What.SOURCES, first);
    return new FieldStatement.Declared(whole(), name.text(), items, description());
  }

  private List<FieldItem> items() {
    List<FieldItem> items = new ArrayList<>();
    do {
      if (items.size() == MOST_ITEMS) {
        throw tokens.fault(
            Problem.Kind.LIMIT,
            "A field takes at most " + MOST_ITEMS + " charges.",
            tokens.peek().span(),
            List.of("put several close ones together as one"));
      }
      if (!tokens.acceptBlank(Open.Asked.SOURCES)) {
        items.add(item());
      }
    } while (tokens.accept(","));
    return items;
  }

  private FieldItem item() {
    Token first = tokens.peek();
    FieldItem.Shape shape = shape(first);
    tokens.next();
    Expr amount = amount(first, shape);
    Expr size = shape.extent().isEmpty() ? null : extent(shape);
    boolean line = shape == FieldItem.Shape.LINE;
    need(line ? "from" : "at", "and a place belong here, as in: " + shape.example());
    Place at = place();
    Place to = line ? end(shape.example()) : null;
    boolean flat = shape.turns() && flat();
    return new FieldItem(first.span().to(tokens.last()), shape, amount, size, at, to, flat);
  }

  /** Without “at” the place was read as a factor of the amount. */
  private Expr amount(Token first, FieldItem.Shape shape) {
    try {
      return sum();
    } catch (ProblemException e) {
      if (!tokens.peek().is(",")) {
        throw e;
      }
      throw tokens.fault(
          "Between an amount and its place stands “at”.",
          first.span().to(tokens.peek().span()),
          shape.example());
    }
  }

  private FieldItem.Shape shape(Token token) {
    Optional<FieldItem.Shape> shape =
        token.type() == Token.Type.NAME ? FieldItem.Shape.of(token.text()) : Optional.empty();
    return shape.orElseThrow(
        () -> {
          List<String> near = Near.to(token.text(), FieldItem.Shape.words(), 2);
          List<String> repairs = near.isEmpty() ? List.of("charge q at (0 cm, 0 cm)") : near;
          return tokens.fault(
              Problem.Kind.SYNTAX,
              "Here begins one of: " + String.join(", ", FieldItem.Shape.words()) + ".",
              token.span(),
              repairs);
        });
  }

  private Expr extent(FieldItem.Shape shape) {
    need(shape.extent(), "belongs here, as in: " + shape.example());
    return sum();
  }

  private boolean flat() {
    boolean flat = tokens.acceptWord("flat");
    if (!flat) {
      tokens.acceptWord("across");
    }
    return flat;
  }

  private void need(String word, String wanted) {
    if (!tokens.acceptWord(word)) {
      throw tokens.unexpected("“" + word + "” " + wanted);
    }
  }

  private Place end(String example) {
    need("to", "and the other place belong here, as in: " + example);
    return place();
  }

  /** {@code (x, y)}. */
  private Place place() {
    Token open = tokens.peek();
    if (!tokens.accept("(")) {
      throw tokens.unexpected("a place in brackets belongs here, as in: (3 cm, 0 cm)");
    }
    Expr x = sum();
    if (!tokens.accept(",")) {
      String written = tokens.text(open.span().to(tokens.last()));
      throw tokens.fault(
          "A place has two coordinates with a comma between them.",
          open.span().to(tokens.peek().span()),
          written + ", 0 cm)");
    }
    Expr y = sum();
    if (tokens.peek().is(",")) {
      throw tokens.fault(
          "A place has two coordinates: a map lies in a plane.",
          open.span().to(tokens.peek().span()),
          tokens.text(open.span().to(tokens.last())) + ")");
    }
    if (!tokens.accept(")")) {
      throw tokens.fault("This bracket is not closed; a place ends with ).", open.span(), "(x, y)");
    }
    return new Place(open.span().to(tokens.last()), x, y);
  }

  private Expr sum() {
    return new ExpressionParser(tokens, names, ENDS).sum();
  }

  private Statement.Option name(String example) {
    Token token = tokens.peek();
    if (token.type() != Token.Type.NAME) {
      throw tokens.unexpected("the name of a field belongs here, as in: " + example);
    }
    return tokens.name(example);
  }

  Statement potential() {
    String example = "potential of pair at (0 cm, 3 cm)";
    need("of", "and the name of a field belong here, as in: " + example);
    Statement.Option field = name(example);
    need("at", "and a place belong here, as in: " + example);
    Place at = place();
    return new FieldStatement.Probe(whole(), field, at, description());
  }

  Statement map() {
    Statement.Option field = name("map pair");
    FieldStatement.Corners frame = frame();
    boolean vectors = tokens.acceptWord("with");
    if (vectors && !tokens.acceptWord("vectors")) {
      throw tokens.unexpected("“vectors” belongs here, as in: map pair with vectors");
    }
    return new FieldStatement.Map(whole(), field, frame, vectors, description());
  }

  Statement relief() {
    Statement.Option field = name("relief pair");
    return new FieldStatement.Relief(whole(), field, frame(), description());
  }

  private FieldStatement.@Nullable Corners frame() {
    return tokens.peek().isWord("from")
        ? corners("map pair from (-5 cm, -4 cm) to (5 cm, 4 cm)")
        : null;
  }

  private FieldStatement.Corners corners(String example) {
    Span from = tokens.peek().span();
    need("from", "and a place belong here, as in: " + example);
    Place first = place();
    Place second = end(example);
    return new FieldStatement.Corners(from.to(tokens.last()), first, second);
  }

  Statement section() {
    String example = "section pair from (-5 cm, 1 cm) to (5 cm, 1 cm)";
    Statement.Option field = name(example);
    FieldStatement.Corners line = corners(example);
    return new FieldStatement.Section(whole(), field, line, description());
  }

  Statement release() {
    Expr charge = tokens.acceptWord("charge") ? sum() : null;
    need("mass", "belongs here, as in: " + RELEASE);
    Expr mass = sum();
    need("at", "and a place belong here, as in: " + RELEASE);
    Place at = place();
    Place moving = tokens.acceptWord("moving") ? place() : null;
    need("in", "and the name of a field belong here, as in: " + RELEASE);
    Statement.Option field = name(RELEASE);
    Expr lasting = tokens.acceptWord("for") ? sum() : null;
    FieldStatement.Body body = new FieldStatement.Body(charge, mass, at, moving);
    return new FieldStatement.Release(whole(), body, field, lasting, description());
  }

  private Span whole() {
    return start.to(tokens.last());
  }

  private String description() {
    return tokens.peek().type() == Token.Type.STRING
        ? tokens.next().text().replace("\\\"", "\"")
        : "";
  }
}
