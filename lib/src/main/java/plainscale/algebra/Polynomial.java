package plainscale.algebra;

import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.math3.fraction.BigFraction;

/** Several powers of the unknown, or of one function of it: taken out, or a quadratic equation. */
final class Polynomial {
  private final Board board;
  private final String name;

  Polynomial(Board board, String name) {
    this.board = board;
    this.name = name;
  }

  /** What to do with a sum that is zero and that comes from the line. */
  Turn turn(Line line, Sum zero) {
    Sum sum = Expansion.of(zero);
    Optional<Atom> variable = variable(sum);
    if (variable.isEmpty()) {
      return new Waves(board, name).turn(line, sum);
    }
    NavigableMap<BigFraction, Sum> powers = powers(sum, variable.get());
    BigFraction least = powers.firstKey();
    if (least.doubleValue() > 0) {
      return withoutZero(line, sum, Term.of(variable.get(), least));
    }
    boolean quadratic =
        powers.size() == 3
            && least.equals(BigFraction.ZERO)
            && powers.lastKey().equals(powers.higherKey(least).multiply(2));
    return quadratic ? quadratic(line, variable.get(), powers) : Isolation.stuck();
  }

  /** The only atom that contains the unknown, if no term has two of them. */
  private Optional<Atom> variable(Sum sum) {
    Atom variable = null;
    for (Term term : sum.terms()) {
      Term part = term.part(atom -> atom.contains(name));
      if (part.isNumber()) {
        continue;
      }
      Atom atom = part.factors().firstKey();
      if (part.factors().size() > 1 || (variable != null && variable.compareTo(atom) != 0)) {
        return Optional.empty();
      }
      variable = atom;
    }
    return Optional.ofNullable(variable);
  }

  private NavigableMap<BigFraction, Sum> powers(Sum sum, Atom variable) {
    NavigableMap<BigFraction, Sum> powers = new TreeMap<>();
    for (Term term : sum.terms()) {
      Term rest = term.part(atom -> atom.compareTo(variable) != 0).times(term.coefficient());
      powers.merge(term.exponent(variable), Sum.of(rest), Sum::plus);
    }
    return powers;
  }

  /** Every term contains the unknown: zero is one root, and the others follow by division. */
  private Turn withoutZero(Line line, Sum sum, Term root) {
    if (!line.right().isZero()) {
      Line.Note note = Line.Note.of("Bring everything in {0} to one side.");
      return Turn.Next.of(line.then(Rule.COLLECT, sum, Sum.ZERO, note));
    }
    Term divisor = root.times(knownFactor(sum));
    Sum left = Expansion.of(Sum.of(sum.terms().stream().map(t -> t.over(divisor)).toList()));
    String reason = "Divide both sides of {0} by " + board.text(divisor) + ".";
    Line.Note note = Line.Note.of(reason, board.notZero(divisor));
    Line next = line.then(Rule.DIVIDE_BY, left, Sum.ZERO, note);
    Atom atom = root.factors().firstKey();
    Line.Note may = Line.Note.of(board.text(root) + " could be zero.");
    Line zero = line.then(Rule.CHOOSE_ROOT, Sum.of(Term.of(atom)), Sum.ZERO, may);
    String why = atom instanceof Atom.Symbol ? name + " ≠ 0 is looked for." : "";
    return new Turn.Next(next, List.of(new Turn.Alternative(zero, why)));
  }

  /** What stands in every term above the line and does not contain the unknown. */
  private Term knownFactor(Sum sum) {
    Term common = sum.terms().stream().reduce(Term::common).orElse(Term.ONE);
    return common.part(atom -> !atom.contains(name) && common.exponent(atom).doubleValue() > 0);
  }

  private Turn quadratic(Line line, Atom variable, NavigableMap<BigFraction, Sum> powers) {
    List<Sum> sums = List.copyOf(powers.values());
    Coefficients k = new Coefficients(sums.get(2), sums.get(1), sums.get(0));
    Coefficients positive = k.a().terms().get(0).coefficient().doubleValue() < 0 ? k.negate() : k;
    Sum base = Sum.of(Term.of(variable, powers.lastKey().divide(2)));
    return new Quadratic(board).turn(line, base, positive);
  }

  /** a x² + b x + c. */
  record Coefficients(Sum a, Sum b, Sum c) {
    Coefficients negate() {
      return new Coefficients(a.negate(), b.negate(), c.negate());
    }

    Sum discriminant() {
      return Expansion.of(b.times(b).minus(a.times(c).times(Sum.number(4))));
    }

    Sum root(int sign, Sum root) {
      Sum above = sign > 0 ? root.minus(b) : b.negate().minus(root);
      return above.over(a.times(Sum.number(2)));
    }
  }
}
