package plainscale.algebra;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.fraction.BigFraction;

/** A product that contains the unknown, on one side only: undoes what is outermost. */
final class Peeling {
  private final Board board;
  private final String name;
  private final Inverses inverses;
  private final Gathering gathering;

  Peeling(Board board, String name) {
    this.board = board;
    this.name = name;
    this.inverses = new Inverses(board, name);
    this.gathering = new Gathering(board, name);
  }

  Turn of(Line line, Term side, Sum other) {
    Term free = side.part(atom -> !atom.contains(name)).times(side.coefficient());
    Term rest = side.part(atom -> atom.contains(name));
    Optional<Line> doubled =
        rest.factors().size() > 1 && !other.isZero()
            ? new Identities(board, name).doubled(line)
            : Optional.empty();
    if (doubled.isPresent()) {
      return Turn.Next.of(doubled.get());
    }
    if (!free.isOne()) {
      return Turn.Next.of(scaled(line, free, rest, other));
    }
    if (rest.factors().size() > 1) {
      return gathering.product(line, other);
    }
    Atom atom = rest.factors().firstKey();
    BigFraction exponent = rest.exponent(atom);
    if (exponent.doubleValue() < 0) {
      return reciprocal(line, rest, other);
    }
    return exponent.equals(BigFraction.ONE)
        ? inverses.of(line, atom, other)
        : root(line, atom, exponent, other);
  }

  private Line scaled(Line line, Term free, Term rest, Sum other) {
    return scaled(board, line, free, new Sum[] {Sum.of(rest), other.over(Sum.of(free))});
  }

  /** Both sides divided by a product, said the shorter way. */
  static Line scaled(Board board, Line line, Term divisor, Sum[] sides) {
    Term factor = divisor.power(BigFraction.MINUS_ONE);
    boolean multiplies =
        factor.factors().values().stream().anyMatch(e -> e.doubleValue() > 0)
            || divisor.equals(Term.number(BigFraction.MINUS_ONE))
            || !factor.coefficient().getNumerator().abs().equals(BigInteger.ONE);
    String reason =
        multiplies
            ? "Multiply both sides of {0} by " + board.text(factor) + "."
            : "Divide both sides of {0} by " + board.text(divisor) + ".";
    Rule rule = multiplies ? Rule.MULTIPLY_BY : Rule.DIVIDE_BY;
    return line.then(rule, sides[0], sides[1], Line.Note.of(reason, board.notZero(divisor)));
  }

  private Turn reciprocal(Line line, Term rest, Sum other) {
    if (other.isZero()) {
      return new Turn.End(Turn.Kind.NOT_REAL, "a reciprocal is never zero");
    }
    Sum left = Sum.of(rest.power(BigFraction.MINUS_ONE));
    Sum right = other.power(BigFraction.MINUS_ONE);
    Line.Note note = Line.Note.of("Take the reciprocal of both sides of {0}.");
    return Turn.Next.of(line.then(Rule.RECIPROCAL, left, right, note));
  }

  private Turn root(Line line, Atom atom, BigFraction exponent, Sum other) {
    boolean even = Rationals.isEven(exponent.getNumerator());
    if (even && board.sign(other) < 0) {
      String text = board.text(Sum.of(Term.of(atom, exponent)));
      return new Turn.End(Turn.Kind.NOT_REAL, text + " would be negative");
    }
    Sum base = Sum.of(Term.of(atom));
    if (!Rationals.isWhole(exponent)) {
      return raised(line, base, exponent, other);
    }
    Board.Bare bare = board.withoutBars(other.power(exponent.reciprocal()));
    String what = exponent.getNumeratorAsInt() == 2 ? "square root" : rootName(exponent);
    if (!even) {
      Line.Note note = Line.Note.of("Take the " + what + " of both sides of {0}.");
      return Turn.Next.of(line.then(Rule.ROOT, base, bare.sum(), note));
    }
    return evenRoot(line, base, bare, what);
  }

  private static String rootName(BigFraction exponent) {
    int n = exponent.getNumeratorAsInt();
    return n == 3 ? "cube root" : n + "th root";
  }

  private Turn evenRoot(Line line, Sum base, Board.Bare root, String what) {
    String text = board.text(base);
    if (root.sum().isZero()) {
      Line.Note note = Line.Note.of("Take the " + what + " of both sides of {0}.");
      return Turn.Next.of(line.then(Rule.ROOT, base, root.sum(), note));
    }
    boolean simple = base.terms().size() == 1;
    String condition = root.assumed().isEmpty() ? "" : ", " + root.condition();
    String reason = "Take the " + what + " of {0}; " + text + " is positive.";
    Line taken =
        line.then(Rule.ROOT, base, root.sum(), Line.Note.of(reason, text + " ≥ 0" + condition));
    String other = "Take the " + what + " of {0}; " + text + " is negative.";
    Line left =
        line.then(
            Rule.ROOT, base, root.sum().negate(), Line.Note.of(other, text + " ≤ 0" + condition));
    String why = simple ? text + " is positive." : "";
    return choose(taken, left, base, why);
  }

  /** Of a sum under a square nothing tells the sign, unless its values do. */
  private Turn choose(Line taken, Line left, Sum base, String why) {
    OptionalDouble plus = inverse(taken, base);
    OptionalDouble minus = inverse(left, base);
    if (!why.isEmpty() || plus.isEmpty() || minus.isEmpty()) {
      return new Turn.Next(taken, List.of(new Turn.Alternative(left, why)));
    }
    if (plus.getAsDouble() > 0 == minus.getAsDouble() > 0) {
      return new Turn.Next(taken, List.of(new Turn.Alternative(left, "")));
    }
    boolean first = plus.getAsDouble() > 0;
    Turn.Alternative other = Turn.Alternative.negative(first ? left : taken, name);
    return new Turn.Next(first ? taken : left, List.of(other));
  }

  /** The value of the unknown, where it follows from values. */
  private OptionalDouble inverse(Line line, Sum base) {
    Isolation.Path path = new Isolation(board, name).run(line);
    return path.isDone() && !base.isZero()
        ? board.value(path.last().right())
        : OptionalDouble.empty();
  }

  private Turn raised(Line line, Sum base, BigFraction exponent, Sum other) {
    BigFraction power = exponent.reciprocal();
    String text =
        power.equals(BigFraction.TWO)
            ? "Square both sides of {0}."
            : "Raise both sides of {0} to the power " + power + ".";
    Line.Note note = Line.Note.of(text, notNegative(other));
    if (board.sign(other) < 0) {
      return new Turn.End(Turn.Kind.NOT_REAL, "a root would be negative");
    }
    return Turn.Next.of(line.then(Rule.RAISE, base, other.power(power), note));
  }

  /** "c - v ≥ 0", unless that is certain for positive quantities. */
  private String notNegative(Sum sum) {
    return board.sign(sum) > 0 ? "" : board.text(sum) + " ≥ 0";
  }
}
