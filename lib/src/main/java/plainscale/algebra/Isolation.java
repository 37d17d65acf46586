package plainscale.algebra;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Gets a name alone on the left side of an equation, move by move: what is outermost is undone
 * first; where the name stands several times, its terms are brought together.
 */
final class Isolation {
  private static final int MOST_MOVES = 25;

  private final Board board;
  private final String name;
  private final Peeling peeling;
  private final Gathering gathering;

  Isolation(Board board, String name) {
    this.board = board;
    this.name = name;
    this.peeling = new Peeling(board, name);
    this.gathering = new Gathering(board, name);
  }

  /** The lines from the given one on, how it ended, and what else would have followed. */
  record Path(List<Line> lines, Turn.End end, List<Turn.Alternative> alternatives) {
    Line last() {
      return lines.get(lines.size() - 1);
    }

    /** The answer with tangents, one for squares of sine and cosine, and shorter where possible. */
    Path tidied(Board board) {
      List<Line> all = new ArrayList<>(lines);
      for (String angle : isDone() ? last().right().names() : Set.<String>of()) {
        Identities.tangentInside(board, angle, all.get(all.size() - 1)).ifPresent(all::add);
        Identities.one(board, angle, all.get(all.size() - 1)).ifPresent(all::add);
      }
      if (isDone()) {
        Tidying.of(board, all.get(all.size() - 1)).ifPresent(all::add);
      }
      return new Path(all, end, alternatives);
    }

    boolean isDone() {
      return end.kind() == Turn.Kind.DONE;
    }

    /** Whether only one line follows as far as can be told. */
    boolean isCertain() {
      return alternatives.stream().noneMatch(other -> other.why().isEmpty());
    }
  }

  Path run(Line start) {
    List<Line> lines = new ArrayList<>(List.of(start));
    List<Turn.Alternative> alternatives = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    while (lines.size() < MOST_MOVES) {
      Line line = lines.get(lines.size() - 1);
      board.spend();
      Turn turn = seen.add(line.key()) ? safeTurn(line) : stuck();
      if (turn instanceof Turn.Next next) {
        lines.add(next.line());
        withOne(next.line()).ifPresent(lines::add);
        alternatives.addAll(next.alternatives());
      } else {
        return new Path(lines, (Turn.End) turn, alternatives);
      }
    }
    return new Path(lines, stuck(), alternatives);
  }

  /** After brackets are gone, one for the sum of the squares of a sine and a cosine. */
  private Optional<Line> withOne(Line line) {
    return line.rule().equals(Optional.of(Rule.EXPAND))
        ? line.names().stream()
            .flatMap(angle -> Identities.one(board, angle, line).stream())
            .findFirst()
        : Optional.empty();
  }

  static Turn.End stuck() {
    return new Turn.End(Turn.Kind.STUCK, "");
  }

  /** What would divide by zero or grow too long is no way to go. */
  private Turn safeTurn(Line line) {
    try {
      return turn(line);
    } catch (ArithmeticException | TooLargeException e) {
      return stuck();
    }
  }

  private Turn turn(Line line) {
    boolean left = line.left().contains(name);
    boolean right = line.right().contains(name);
    if (!left && !right) {
      return dropped(line);
    }
    if (left && right) {
      return gathering.bothSides(line);
    }
    Sum side = line.side(name);
    Sum other = line.opposite(side);
    if (side.isSymbol(name)) {
      return left ? new Turn.End(Turn.Kind.DONE, "") : swapped(line);
    }
    return side.isSingle()
        ? peeling.of(line, side.asTerm(), other)
        : gathering.oneSide(line, side, other);
  }

  private static Turn swapped(Line line) {
    Line.Note note = Line.Note.of("Swap the sides of {0}.");
    return Turn.Next.of(line.then(Rule.SWAP_SIDES, line.right(), line.left(), note));
  }

  private Turn dropped(Line line) {
    boolean differs = board.differ(line.left(), line.right());
    Turn.Kind kind = differs ? Turn.Kind.CONTRADICTION : Turn.Kind.DROPPED;
    return new Turn.End(kind, name + " drops out.");
  }
}
