package plainscale.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plainscale.text.Near;

/**
 * What belongs to forces in a statement: bodies, and the forces on one of them.
 *
 * <pre>{@code
 * forces    := "on" body "mirrors" body [ "with" edition ]
 *            | "on" body [ "slope" sum ] ":" force { "," force } [ "with" edition ]
 * edition   := "missing" | "directions" | "dot"
 * force     := "?" | label sum direction [ "by" body ]
 * direction := "up" | "down" | "left" | "right" | "along" sum
 *            | "uphill" | "downhill" | "away" | "into"
 * }</pre>
 */
final class ForcesParser {
  private static final String EXAMPLE = "forces on \"ball\": weight m g_n down by \"Earth\"";
  private static final String SLOPE = "slope";
  private static final String MIRRORS = "mirrors";
  private static final Set<String> ENDS = Set.copyOf(Direction.words());

  private final Tokens tokens;
  private final Names names;

  ForcesParser(Tokens tokens, Names names) {
    this.tokens = tokens;
    this.names = names;
  }

  /** What follows the word “forces”, which stands at {@code start}. */
  Statement.Forces forces(Span start) {
    Statement.Option body = on();
    if (tokens.acceptWord(MIRRORS)) {
      return image(start, body);
    }
    Expr slope = slope();
    colon(body);
    Span first = tokens.peek().span();
    List<Acting> acting = acting(body.text());
    tokens.part(Line.What.FORCES, first);
    refuseWithoutSlope(slope, acting, body);
    ForcesEdition edition = edition();
    return new Statement.Forces(start.to(tokens.last()), body, null, slope, acting, edition);
  }

  /** {@code mirrors "left ball"}: the forces on another body, left and right exchanged. */
  private Statement.Forces image(Span start, Statement.Option body) {
    Statement.Option other = body("the other body belongs here, as in: mirrors \"left ball\"");
    if (other.text().equals(body.text())) {
      throw tokens.fault("A body is no mirror image of itself.", other.span(), "\"left ball\"");
    }
    ForcesEdition edition = edition();
    Span span = start.to(tokens.last());
    return new Statement.Forces(span, body, other, null, List.of(), edition);
  }

  /** What follows the word “pairs”, which stands at {@code start}. */
  Statement.Pairs pairs(Span start) {
    List<Statement.Option> bodies = bodies();
    return new Statement.Pairs(start.to(tokens.last()), bodies);
  }

  /** {@code on "left ball"}. */
  private Statement.Option on() {
    if (!tokens.acceptWord("on")) {
      throw tokens.unexpected("“on” and the body belong here, as in: " + EXAMPLE);
    }
    return text("the name of the body belongs here, as in: " + EXAMPLE);
  }

  /** {@code slope 25°}, if it is there. */
  private @Nullable Expr slope() {
    if (!tokens.peek().text().equals(SLOPE) || tokens.peek(1).is(":")) {
      return null;
    }
    tokens.next();
    return new ExpressionParser(tokens, names).sum();
  }

  private void colon(Statement.Option body) {
    int more = 0;
    while (tokens.peek(more).type() == Token.Type.NAME) {
      more++;
    }
    if (more > 0 && tokens.peek(more).is(":")) {
      throw severalWords(body.span().to(tokens.peek(more - 1).span()));
    }
    if (!tokens.accept(":")) {
      throw tokens.fault(
          "After the body comes a colon.", tokens.peek().span(), "on \"" + body.text() + "\": …");
    }
  }

  private void refuseWithoutSlope(
      @Nullable Expr slope, List<Acting> acting, Statement.Option body) {
    for (Acting force : acting) {
      if (slope == null
          && force.pointing() instanceof Acting.Towards towards
          && towards.direction().isOnSlope()) {
        throw tokens.fault(
            "“%s” needs the angle of the slope.".formatted(towards.direction().word()),
            force.size().span(),
            "forces on \"" + body.text() + "\" slope 25°: …");
      }
    }
  }

  private ProblemException severalWords(Span words) {
    return tokens.fault(
        "A name of several words stands in quotation marks.",
        words,
        "\"" + tokens.text(words) + "\"");
  }

  /** A word, or a text in quotation marks that is not empty. */
  private Statement.Option text(String wanted) {
    Token token = tokens.peek();
    String text = token.text().replace("\\\"", "\"").strip();
    boolean there = token.type() == Token.Type.NAME || token.type() == Token.Type.STRING;
    if (!there || text.isEmpty() || Keywords.ENDS_FORMULA.contains(text)) {
      throw tokens.unexpected(wanted);
    }
    return new Statement.Option(tokens.next().span(), text);
  }

  /** A body; its name may be a word if it is one only. */
  private Statement.Option body(String wanted) {
    boolean word = tokens.peek().type() == Token.Type.NAME;
    Statement.Option body = text(wanted);
    Token next = tokens.peek();
    if (word && next.type() == Token.Type.NAME && !Keywords.ENDS_FORMULA.contains(next.text())) {
      throw severalWords(body.span().to(next.span()));
    }
    return body;
  }

  /** {@code weight m g_n down by "Earth", thread T along 90° − θ by "hook"}. */
  private List<Acting> acting(String body) {
    List<Acting> acting = new ArrayList<>();
    do {
      if (!tokens.acceptBlank(Open.Asked.FORCES)) {
        acting.add(force(body));
      }
    } while (tokens.accept(","));
    refuseWithoutBy();
    if (!acting.isEmpty()) {
      refuseSecondDirection(acting.get(acting.size() - 1));
    }
    refuseWithoutComma("Between two forces stands a comma.");
    return List.copyOf(acting);
  }

  private Acting force(String body) {
    Statement.Option label = text("what the force is called belongs here, as in: " + EXAMPLE);
    if (ENDS.contains(tokens.peek().text())) {
      throw tokens.fault(
          "Between what the force is called and its direction stands its size.",
          label.span().to(tokens.peek().span()),
          "pull " + label.text() + " " + tokens.peek().text());
    }
    refuseSeveralWords(label);
    Expr size = new ExpressionParser(tokens, names, ENDS).sum();
    Acting.Pointing pointing = pointing(size);
    return new Acting(label.text(), size, pointing, agent(body));
  }

  /** {@code spring force 5 [N]}: words before a number that are no quantity. */
  private void refuseSeveralWords(Statement.Option label) {
    int more = 0;
    while (tokens.peek(more).type() == Token.Type.NAME
        && !names.isQuantity(Greek.normal(tokens.peek(more).text()))) {
      more++;
    }
    if (more > 0 && tokens.peek(more).type() == Token.Type.NUMBER) {
      throw severalWords(label.span().to(tokens.peek(more - 1).span()));
    }
  }

  /** {@code down "Earth"}: the word before the agent is missing. */
  private void refuseWithoutBy() {
    Token next = tokens.peek();
    Token after = tokens.peek(1);
    boolean last = after.type() == Token.Type.END || after.is(",") || after.isWord("with");
    if (next.type() == Token.Type.STRING && last) {
      throw tokens.fault(
          "What exerts the force stands after “by”.",
          next.span(),
          "by " + tokens.text(next.span()));
    }
  }

  /** {@code left down}: between two directions there is an angle. */
  private void refuseSecondDirection(Acting before) {
    Token next = tokens.peek();
    if (next.type() == Token.Type.NAME && ENDS.contains(next.text())) {
      String angle =
          Direction.of(next.text())
              .flatMap(second -> between(before.pointing(), second))
              .orElse("30°");
      throw tokens.fault(
          "A force has one direction; one between two words is an angle, anticlockwise from “right”.",
          next.span(),
          "along " + angle);
    }
  }

  private static Optional<String> between(Acting.Pointing first, Direction second) {
    return first instanceof Acting.Towards towards
        ? Direction.between(towards.direction(), second).map(degrees -> degrees + "°")
        : Optional.empty();
  }

  private Acting.Pointing pointing(Expr size) {
    Token token = tokens.peek();
    if (!ENDS.contains(token.text()) || token.type() != Token.Type.NAME) {
      throw withoutDirection(size);
    }
    refuseQuantity(token);
    tokens.next();
    Optional<Direction> direction = Direction.of(token.text());
    if (direction.isPresent()) {
      return new Acting.Towards(direction.get());
    }
    if (tokens.atEnd() || tokens.peek().is(",")) {
      throw tokens.unexpected("an angle from “right” belongs here, as in: along 30°");
    }
    return new Acting.Along(new ExpressionParser(tokens, names).sum());
  }

  private void refuseQuantity(Token token) {
    if (names.isDefined(token.text())) {
      throw tokens.fault(
          Problem.Kind.NAME,
          "“%1$s” is a direction in this line, and also a quantity of this sheet."
              .formatted(token.text()),
          token.span(),
          List.of("give the quantity another name: " + token.text() + "_1"));
    }
  }

  /** A direction that is written in another way was read as the last factor of the size. */
  private ProblemException withoutDirection(Expr size) {
    String last = tokens.text(tokens.last());
    Token next = tokens.peek();
    boolean unknown = Character.isLetter(last.codePointAt(0)) && !names.isQuantity(last);
    boolean after = size.span().start() < tokens.last().start();
    List<String> meant =
        Direction.meant(last)
            .map(ForcesParser::others)
            .orElseGet(() -> Near.to(last, Direction.words(), 1));
    if (unknown && meant.isEmpty() && after) {
      meant = List.of("up", "down", "left", "right", "along 30°");
    }
    if (unknown && !meant.isEmpty()) {
      return tokens.fault(
          Problem.Kind.SYNTAX, "I know no direction “" + last + "”.", tokens.last(), meant);
    }
    return tokens.fault(
        "After the size of a force comes its direction: up, down, left, right, or along an angle.",
        next.type() == Token.Type.END ? next.span() : tokens.last().to(next.span()),
        "… down",
        "… along 30°");
  }

  /** The word that is meant, and the others, since the north may also be where a map has it. */
  private static List<String> others(Direction meant) {
    return Stream.concat(
            Stream.of(meant.word()), Stream.of("up", "down", "left", "right", "along 30°"))
        .distinct()
        .toList();
  }

  private @Nullable String agent(String body) {
    if (!tokens.acceptWord("by")) {
      return null;
    }
    Statement.Option agent = body("what exerts the force belongs here, as in: by \"Earth\"");
    if (agent.text().equalsIgnoreCase(body)) {
      throw tokens.fault(
          "A body exerts no force on itself; after “by” stands what pulls or pushes it.",
          agent.span(),
          "by \"Earth\"");
    }
    return agent.text();
  }

  private void refuseWithoutComma(String sentence) {
    Token next = tokens.peek();
    boolean another = next.type() == Token.Type.NAME && !next.isWord("with");
    if (another || next.type() == Token.Type.STRING) {
      throw tokens.fault(sentence, next.span(), ", " + tokens.text(next.span()));
    }
  }

  /** {@code with missing}, {@code with directions} or {@code with dot} at the end. */
  private ForcesEdition edition() {
    if (!tokens.acceptWord("with")) {
      return ForcesEdition.WHOLE;
    }
    Optional<ForcesEdition> edition = ForcesEdition.of(tokens.peek().text());
    if (edition.isEmpty()) {
      String words = String.join(", ", ForcesEdition.words());
      throw tokens.unexpected("one of these words belongs here: " + words);
    }
    tokens.next();
    return edition.get();
  }

  /** {@code "left ball", "right ball"}: bodies, none of them twice; none at all means all. */
  private List<Statement.Option> bodies() {
    List<Statement.Option> bodies = new ArrayList<>();
    if (tokens.atEnd()) {
      return bodies;
    }
    do {
      Statement.Option body = body("the name of a body belongs here, as in: pairs \"left ball\"");
      if (bodies.stream().anyMatch(b -> b.text().equals(body.text()))) {
        throw tokens.fault("This body stands here twice.", body.span(), "delete it");
      }
      bodies.add(body);
    } while (tokens.accept(","));
    refuseWithoutComma("Between two bodies stands a comma.");
    return bodies;
  }
}
