package plainscale.algebra;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.apache.commons.math3.fraction.BigFraction;

/** Brings together what contains the unknown, where it stands in several places. */
final class Gathering {
  private final Board board;
  private final String name;
  private final Identities identities;

  Gathering(Board board, String name) {
    this.board = board;
    this.name = name;
    this.identities = new Identities(board, name);
  }

  private List<Term> with(Sum sum) {
    return sum.terms().stream().filter(term -> term.contains(name)).toList();
  }

  private Sum without(Sum sum) {
    return Sum.of(sum.terms().stream().filter(term -> !term.contains(name)).toList());
  }

  /** The unknown stands on both sides. */
  Turn bothSides(Line line) {
    if (line.left().isSingle() && line.right().isSingle() && isSimple(line)) {
      return ratio(line);
    }
    Optional<Line> simpler = new Logarithms(board, name).of(line).or(() -> simpler(line));
    return Turn.Next.of(simpler.orElseGet(() -> separated(line, line.left(), line.right())));
  }

  /** Several terms, of which at least one contains the unknown, all on one side. */
  Turn oneSide(Line line, Sum side, Sum other) {
    List<Term> terms = with(side);
    if (terms.size() == 1) {
      return Turn.Next.of(separated(line, side, other));
    }
    Optional<Line> simpler = simpler(line);
    if (simpler.isPresent()) {
      return Turn.Next.of(simpler.get());
    }
    if (alike(terms)) {
      return Turn.Next.of(
          without(side).isZero() ? collected(line, terms, other) : separated(line, side, other));
    }
    return new Polynomial(board, name).turn(line, side.minus(other));
  }

  /** What is cleared away before terms are compared: denominators, brackets, squares of cosines. */
  private Optional<Line> simpler(Line line) {
    return identities
        .tangents(line)
        .or(() -> cleared(line))
        .or(() -> expanded(line))
        .or(() -> identities.of(line))
        .or(() -> new Radicals(board, name).of(line));
  }

  /** A product with the unknown in several factors. */
  Turn product(Line line, Sum other) {
    if (other.isZero()) {
      return Isolation.stuck();
    }
    return new Logarithms(board, name)
        .of(line)
        .or(() -> identities.of(line))
        .or(() -> cleared(line))
        .or(() -> expanded(line))
        .<Turn>map(Turn.Next::of)
        .orElseGet(Isolation::stuck);
  }

  /** What contains the unknown on one side, the rest on the other, so that few signs are minus. */
  private Line separated(Line line, Sum side, Sum other) {
    Sum unknown = Sum.of(with(side)).minus(Sum.of(with(other)));
    if (unknown.isZero()) {
      return shifted(line, new Sum[] {side, other}, Sum.of(with(side)));
    }
    boolean negative = unknown.terms().stream().allMatch(t -> t.coefficient().doubleValue() < 0);
    return negative ? moved(line, other, side) : moved(line, side, other);
  }

  private Line moved(Line line, Sum side, Sum other) {
    Sum moved = without(side).plus(Sum.of(with(other)));
    return shifted(line, new Sum[] {side, other}, moved);
  }

  /** Both sides less a sum, said the shorter way. */
  Line shifted(Line line, Sum[] sides, Sum moved) {
    long minus = moved.terms().stream().filter(t -> t.coefficient().doubleValue() < 0).count();
    boolean adds = minus == moved.terms().size();
    boolean mixed = minus > 0 && !adds;
    String reason =
        adds
            ? "Add " + board.text(moved.negate()) + " to both sides of {0}."
            : "Subtract " + board.text(moved) + " from both sides of {0}.";
    Line.Note note =
        Line.Note.of(
            mixed
                ? "Bring what contains " + name + " to one side of {0}, the rest to the other."
                : reason);
    Rule rule = adds ? Rule.ADD_TO : mixed ? Rule.COLLECT : Rule.SUBTRACT_FROM;
    return line.then(rule, sides[0].minus(moved), sides[1].minus(moved), note);
  }

  private boolean alike(List<Term> terms) {
    return terms.stream().map(this::unknownPart).map(Term::key).distinct().count() == 1;
  }

  private Term unknownPart(Term term) {
    return term.part(atom -> atom.contains(name));
  }

  private Line collected(Line line, List<Term> terms, Sum other) {
    Term common = unknownPart(terms.get(0));
    Sum factor = Sum.of(terms.stream().map(term -> term.over(common)).toList());
    Sum product = Sum.of(common).times(factor);
    Line.Note note = Line.Note.of("Factor out " + board.text(common) + " in {0}.");
    return line.then(Rule.FACTOR_OUT, product, other, note);
  }

  /** Whether one factor at most is left of the unknown when the sides are divided. */
  private boolean isSimple(Line line) {
    Term quotient = unknownPart(line.left().asTerm()).over(unknownPart(line.right().asTerm()));
    return quotient.factors().size() <= 1
        || !Identities.tangent(board, name, Line.relation(Sum.of(quotient), Sum.ONE)).isEmpty();
  }

  /** One product on each side: the unknown goes to the left by division. */
  private Turn ratio(Line line) {
    Term divisor = unknownPart(line.right().asTerm());
    Sum left = line.left().over(Sum.of(divisor));
    Sum right = line.right().over(Sum.of(divisor));
    Sum[] sides = {left, right};
    Line next = Peeling.scaled(board, line, divisor, sides);
    Atom symbol = new Atom.Symbol(name);
    boolean losesZero =
        divisor.exponent(symbol).doubleValue() > 0
            && line.left().asTerm().exponent(symbol).doubleValue() > 0;
    return losesZero ? withoutZero(line, next) : Turn.Next.of(next);
  }

  private Turn withoutZero(Line line, Line next) {
    Line zero =
        line.then(
            Rule.CHOOSE_ROOT, Sum.symbol(name), Sum.ZERO, Line.Note.of(name + " could be zero."));
    return new Turn.Next(
        next, List.of(new Turn.Alternative(zero, "dividing by " + name + " left it out.")));
  }

  /** Multiplies by what stands below a line and contains the unknown. */
  private Optional<Line> cleared(Line line) {
    SortedMap<Atom, BigFraction> below = new TreeMap<>();
    for (Term term : both(line)) {
      for (Map.Entry<Atom, BigFraction> factor : term.factors().entrySet()) {
        if (factor.getKey().contains(name) && factor.getValue().doubleValue() < 0) {
          below.merge(
              factor.getKey(), factor.getValue().negate(), (a, b) -> a.compareTo(b) > 0 ? a : b);
        }
      }
    }
    if (below.isEmpty()) {
      return Optional.empty();
    }
    Term factor = new Term(BigFraction.ONE, below);
    Sum left = times(line.left(), factor);
    Sum right = times(line.right(), factor);
    Line.Note note = Line.Note.of("Multiply both sides of {0} by " + board.text(factor) + ".");
    return Optional.of(line.then(Rule.MULTIPLY_BY, left, right, note));
  }

  private static Sum times(Sum sum, Term factor) {
    return Expansion.of(Sum.of(sum.terms().stream().map(factor::times).toList()));
  }

  private List<Term> both(Line line) {
    List<Term> both = new ArrayList<>(line.left().terms());
    both.addAll(line.right().terms());
    return both;
  }

  private Optional<Line> expanded(Line line) {
    Predicate<Atom> opens = atom -> atom instanceof Atom.Group && atom.contains(name);
    if (both(line).stream().allMatch(term -> term.part(opens).isNumber())) {
      return Optional.empty();
    }
    Sum left = Expansion.of(line.left());
    Sum right = Expansion.of(line.right());
    if (left.equals(line.left()) && right.equals(line.right())) {
      return Optional.empty();
    }
    return Optional.of(
        line.then(Rule.EXPAND, left, right, Line.Note.of("Multiply out the brackets in {0}.")));
  }
}
