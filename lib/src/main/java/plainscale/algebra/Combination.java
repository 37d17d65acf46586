package plainscale.algebra;

import static plainscale.quantity.ElementaryFunction.COS;
import static plainscale.quantity.ElementaryFunction.SIN;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.commons.math3.fraction.BigFraction;

/** Two lines to one without a name that both contain. */
final class Combination {
  private final Board board;
  private final String name;
  private final IdentityHashMap<Line, Line> arranged = new IdentityHashMap<>();

  Combination(Board board, String name) {
    this.board = board;
    this.name = name;
  }

  Optional<Line> of(Line first, Line second) {
    return equated(first, second)
        .or(() -> products(first, second))
        .or(() -> sums(first, second))
        .or(() -> arranged(first, second))
        .filter(line -> !line.contains(name));
  }

  /** The term with the name alone on one side of each, as in T cos θ - m g = 0. */
  private Optional<Line> arranged(Line first, Line second) {
    Line a = arranged.computeIfAbsent(first, this::arranged);
    Line b = arranged.computeIfAbsent(second, this::arranged);
    boolean same = a == first && b == second; // then the products were tried before
    return (same ? Optional.<Line>empty() : products(a, b))
        .or(() -> new Squares(board, name).of(a, b));
  }

  private Line arranged(Line line) {
    boolean once = line.left().contains(name) != line.right().contains(name);
    Sum side = line.side(name);
    long terms = side.terms().stream().filter(term -> term.contains(name)).count();
    return once
            && terms == 1
            && !side.isSingle()
            && new Gathering(board, name).oneSide(line, side, line.opposite(side))
                instanceof Turn.Next next
        ? next.line()
        : line;
  }

  /** The same expression stands alone in both. */
  private Optional<Line> equated(Line first, Line second) {
    for (Sum side : List.of(first.left(), first.right())) {
      for (Sum other : List.of(second.left(), second.right())) {
        if (side.equals(other) && side.contains(name)) {
          Line.Note note =
              Line.Note.of(
                  "{0} and {1} both have "
                      + board.text(side)
                      + " on one side: equate the other sides.");
          return Optional.of(
              Line.by(
                  Rule.EQUATE,
                  List.of(first, second),
                  first.opposite(side),
                  second.opposite(other),
                  note));
        }
      }
    }
    return Optional.empty();
  }

  /** Products on all sides: divided by or multiplied with one another. */
  private Optional<Line> products(Line first, Line second) {
    boolean single =
        List.of(first.left(), first.right(), second.left(), second.right()).stream()
            .allMatch(Sum::isSingle);
    if (!single) {
      return Optional.empty();
    }
    Term a = part(first);
    Term b = part(second);
    List<Line> from = List.of(first, second);
    if (a.equals(b) && isCotangent(first, second) && !isCotangent(second, first)) {
      return products(second, first);
    }
    if (a.equals(b)) {
      String condition = board.notZero(second.left().asTerm());
      Line.Note note = Line.Note.of("Divide {0} by {1}: " + name + " cancels.", condition);
      return Optional.of(
          Line.by(
              Rule.DIVIDE_EQUATIONS,
              from,
              first.left().over(second.left()),
              first.right().over(second.right()),
              note));
    }
    if (a.times(b).isNumber()) {
      Line.Note note = Line.Note.of("Multiply {0} by {1}: " + name + " cancels.");
      return Optional.of(
          Line.by(
              Rule.MULTIPLY_EQUATIONS,
              from,
              first.left().times(second.left()),
              first.right().times(second.right()),
              note));
    }
    return Optional.empty();
  }

  /** Whether a division would give a cosine over a sine, and the other way round the tangent. */
  private static boolean isCotangent(Line first, Line second) {
    return isCotangent(first.left().over(second.left()))
        || isCotangent(first.right().over(second.right()));
  }

  private static boolean isCotangent(Sum quotient) {
    Term term = quotient.asTerm();
    return term.factors().keySet().stream()
        .anyMatch(
            atom ->
                atom instanceof Atom.Applied sine
                    && sine.function() == SIN
                    && term.exponent(sine).equals(BigFraction.MINUS_ONE)
                    && term.exponent(new Atom.Applied(COS, sine.argument()))
                        .equals(BigFraction.ONE));
  }

  /** What contains the name, all on the left. */
  private Term part(Line line) {
    Predicate<Atom> contains = atom -> atom.contains(name);
    return line.left().asTerm().part(contains).over(line.right().asTerm().part(contains));
  }

  /** The same multiple of the name in both: added or subtracted. */
  private Optional<Line> sums(Line first, Line second) {
    Optional<Term> a = term(first);
    Optional<Term> b = term(second);
    if (a.isEmpty() || b.isEmpty() || !a.get().key().equals(b.get().key())) {
      return Optional.empty();
    }
    BigFraction ratio = a.get().coefficient().divide(b.get().coefficient());
    BigFraction size = ratio.abs();
    boolean adds = ratio.doubleValue() < 0;
    if (size.equals(BigFraction.ONE)) {
      return Optional.of(added(first, second, adds));
    }
    Sum factor = Sum.of(Term.number(size));
    Line scaled =
        second.then(
            Rule.MULTIPLY_BY,
            Expansion.of(second.left().times(factor)),
            Expansion.of(second.right().times(factor)),
            Line.Note.of("Multiply both sides of {0} by " + board.text(factor) + "."));
    return Optional.of(added(first, scaled, adds));
  }

  /** Both sides are added or subtracted; what then stands on both sides is left out. */
  private Line added(Line first, Line second, boolean adds) {
    Sum left = adds ? first.left().plus(second.left()) : first.left().minus(second.left());
    Sum right = adds ? first.right().plus(second.right()) : first.right().minus(second.right());
    Sum both = Sum.of(left.terms().stream().filter(term -> right.terms().contains(term)).toList());
    String words =
        adds
            ? "Add {0} and {1}: " + name + " cancels."
            : "Subtract {1} from {0}: " + name + " cancels.";
    Rule rule = adds ? Rule.ADD_EQUATIONS : Rule.SUBTRACT_EQUATIONS;
    return Line.by(
        rule, List.of(first, second), left.minus(both), right.minus(both), Line.Note.of(words));
  }

  /** The only term that contains the name, as if it stood on the left. */
  private Optional<Term> term(Line line) {
    List<Term> terms =
        line.left().minus(line.right()).terms().stream().filter(t -> t.contains(name)).toList();
    boolean once =
        terms.size() == 1 && terms.get(0).part(atom -> atom.contains(name)).equals(linear());
    return once ? Optional.of(terms.get(0)) : Optional.empty();
  }

  private Term linear() {
    return Term.of(new Atom.Symbol(name));
  }
}
