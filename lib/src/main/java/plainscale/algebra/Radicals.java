package plainscale.algebra;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.fraction.BigFraction;

/** One square root of a sum with the unknown: alone on its side it is squared away. */
final class Radicals {
  private final Board board;
  private final String name;

  Radicals(Board board, String name) {
    this.board = board;
    this.name = name;
  }

  Optional<Line> of(Line line) {
    List<Term> roots = new ArrayList<>();
    line.left().terms().stream().filter(this::isRoot).forEach(roots::add);
    line.right().terms().stream().filter(this::isRoot).forEach(roots::add);
    if (roots.size() != 1) {
      return Optional.empty();
    }
    Term root = roots.get(0);
    boolean left = line.left().terms().contains(root);
    Sum side = left ? line.left() : line.right();
    Sum other = left ? line.right() : line.left();
    return Optional.of(side.isSingle() ? squared(line, side, other) : alone(line, side, other));
  }

  private Line squared(Line line, Sum side, Sum other) {
    Sum square = Expansion.of(side.power(BigFraction.TWO));
    Sum right = Expansion.of(other.power(BigFraction.TWO));
    return line.then(
        Rule.RAISE,
        square,
        right,
        Line.Note.of("Square both sides of {0}.", board.text(other) + " ≥ 0"));
  }

  private Line alone(Line line, Sum side, Sum other) {
    Sum rest = Sum.of(side.terms().stream().filter(term -> !isRoot(term)).toList());
    return new Gathering(board, name).shifted(line, new Sum[] {side, other}, rest);
  }

  private boolean isRoot(Term term) {
    return term.factors().entrySet().stream()
        .anyMatch(
            factor ->
                factor.getKey() instanceof Atom.Group
                    && factor.getKey().contains(name)
                    && factor.getValue().getDenominator().intValue() == 2);
  }
}
