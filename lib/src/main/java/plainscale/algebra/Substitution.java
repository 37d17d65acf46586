package plainscale.algebra;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts what one line says about a name into other lines. */
final class Substitution {
  private final Board board;
  private final String name;
  private final Line source;
  private final Term power;
  private final Sum value;

  private Substitution(Board board, String name, Line source, Term power, Sum value) {
    this.board = board;
    this.name = name;
    this.source = source;
    this.power = power;
    this.value = value;
  }

  /**
   * The name may stand alone, as a power (v² = 2 g h) or under a function (sin θ = d/s), if the
   * other lines contain it only so.
   */
  static Optional<Substitution> from(Board board, String name, Line source) {
    for (Sum side : List.of(source.left(), source.right())) {
      Sum other = source.opposite(side);
      boolean alone = side.isSingle() && side.contains(name) && !other.contains(name);
      if (alone && isPower(side.asTerm())) {
        return Optional.of(new Substitution(board, name, source, side.asTerm(), other));
      }
    }
    return Optional.empty();
  }

  private static boolean isPower(Term term) {
    boolean one = term.coefficient().equals(Term.ONE.coefficient()) && term.factors().size() == 1;
    return one && !(term.factors().firstKey() instanceof Atom.Constant);
  }

  /** The other lines without the name, if it goes from all of them. */
  Optional<List<Line>> into(List<Line> targets) {
    List<Line> results = new ArrayList<>();
    for (Line target : targets) {
      Sum left = Replacement.in(target.left(), power, value);
      Sum right = Replacement.in(target.right(), power, value);
      if (left.contains(name) || right.contains(name)) {
        return Optional.empty();
      }
      String text = board.text(power);
      Line.Note note = Line.Note.of("Substitute " + text + " from {1} in {0}.");
      results.add(Line.by(Rule.SUBSTITUTE, List.of(target, source), left, right, note));
    }
    return Optional.of(results);
  }
}
