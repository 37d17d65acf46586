package plainscale.algebra;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.commons.math3.fraction.BigFraction;
import plainscale.quantity.ElementaryFunction;

/** Two lines to one without a name that both contain. */
final class Combination {
  private final Board board;
  private final String name;

  Combination(Board board, String name) {
    this.board = board;
    this.name = name;
  }

  Optional<Line> of(Line first, Line second) {
    return equated(first, second)
        .or(() -> products(first, second))
        .or(() -> sums(first, second))
        .or(() -> squares(first, second))
        .filter(line -> !line.contains(name));
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

  /** F cos θ and F sin θ: squared and added, since sin² + cos² = 1. */
  private Optional<Line> squares(Line first, Line second) {
    Sum a = first.side(name);
    Sum b = second.side(name);
    boolean once = !first.opposite(a).contains(name) && !second.opposite(b).contains(name);
    if (!once || !a.isSingle() || !b.isSingle() || !areLegs(a.asTerm(), b.asTerm())) {
      return Optional.empty();
    }
    Line one = squared(first, a);
    Line two = squared(second, b);
    Line.Note add = Line.Note.of("Add {0} and {1}.");
    Line sum =
        Line.by(
            Rule.ADD_EQUATIONS,
            List.of(one, two),
            one.left().plus(two.left()),
            one.right().plus(two.right()),
            add);
    Sum rest = Sum.of(free(a.asTerm()).power(BigFraction.TWO));
    Line.Note note = Line.Note.of("In {0}, sin(%s)^2 + cos(%s)^2 = 1.".formatted(name, name));
    return Optional.of(sum.then(Rule.IDENTITY, rest, sum.right(), note));
  }

  private Line squared(Line line, Sum side) {
    Sum square = side.power(BigFraction.TWO);
    Sum other = line.opposite(side).power(BigFraction.TWO);
    return line.then(Rule.RAISE, square, other, Line.Note.of("Square both sides of {0}."));
  }

  private Term free(Term term) {
    return term.part(atom -> !atom.contains(name)).times(term.coefficient());
  }

  /** The same factor, once with the sine of the name and once with the cosine. */
  private boolean areLegs(Term a, Term b) {
    Sum angle = Sum.symbol(name);
    Term sine = Term.of(new Atom.Applied(ElementaryFunction.SIN, angle));
    Term cosine = Term.of(new Atom.Applied(ElementaryFunction.COS, angle));
    boolean legs =
        (a.equals(free(a).times(sine)) && b.equals(free(b).times(cosine)))
            || (a.equals(free(a).times(cosine)) && b.equals(free(b).times(sine)));
    return legs && free(a).equals(free(b));
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
