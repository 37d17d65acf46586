package plainscale.algebra;

import java.util.List;
import java.util.stream.Stream;

/**
 * A factor that stands in every term of both sides cancels, as the mass in m g h = ½ m v²: both
 * sides are divided by it.
 */
final class Reduction {
  private final Board board;
  private final String unknown;

  Reduction(Board board, String unknown) {
    this.board = board;
    this.unknown = unknown;
  }

  /** The line without what all its terms have in common, if a name without a value goes so. */
  Line of(Line line) {
    Term common = common(line);
    boolean cancels =
        common.factors().keySet().stream()
            .anyMatch(atom -> atom.names().stream().anyMatch(this::isOpen));
    return cancels ? divided(line, common) : line;
  }

  /** A root for the unknown would be lost. */
  private Term common(Line line) {
    List<Term> terms =
        Stream.concat(line.left().terms().stream(), line.right().terms().stream()).toList();
    Term common = terms.stream().reduce(Term::common).orElse(Term.ONE);
    return common.part(atom -> !atom.contains(unknown) && isInAll(atom, terms));
  }

  /** Above the line in all terms, or below it in all terms. */
  private static boolean isInAll(Atom atom, List<Term> terms) {
    return terms.stream().allMatch(term -> term.exponent(atom).doubleValue() > 0)
        || terms.stream().allMatch(term -> term.exponent(atom).doubleValue() < 0);
  }

  private boolean isOpen(String name) {
    return !name.equals(unknown) && !board.known().isKnown(name);
  }

  private Line divided(Line line, Term divisor) {
    Sum[] sides = {over(line.left(), divisor), over(line.right(), divisor)};
    return Peeling.scaled(board, line, divisor, sides);
  }

  private static Sum over(Sum sum, Term divisor) {
    return Sum.of(sum.terms().stream().map(term -> term.over(divisor)).toList());
  }

  /** All of them so. */
  List<Line> of(List<Line> lines) {
    return lines.stream().map(this::of).toList();
  }
}
