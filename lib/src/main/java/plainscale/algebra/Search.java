package plainscale.algebra;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/**
 * The shortest way from equations to the unknown, as far as the moves go: states are tried in the
 * order of the number of lines that they need, with one more for each other equation that is left.
 */
final class Search {
  private static final int MOST_STATES = 600;
  private static final int MOST_AFTER_FIRST = 150;
  private static final double BY_SIZE = 1e-5;

  private final Board board;
  private final String unknown;
  private final PriorityQueue<State> queue = new PriorityQueue<>();
  private final Set<String> seen = new HashSet<>();
  private final UnaryOperator<Line> afterwards;
  private Optional<Found> numeric = Optional.empty();
  private Optional<Found> smallest = Optional.empty();
  private boolean dependent;
  private int order;
  private int fewest;

  /** Each equation that an elimination leaves goes through {@code afterwards}. */
  Search(Board board, String unknown, UnaryOperator<Line> afterwards) {
    this.board = board;
    this.unknown = unknown;
    this.afterwards = afterwards;
  }

  /** Where the search ended: the equations that are left, and how the unknown was isolated. */
  record Found(List<Line> live, Optional<Isolation.Path> path) {
    Turn.Kind kind() {
      return path.map(p -> p.end().kind()).orElse(Turn.Kind.STUCK);
    }

    List<Line> needed() {
      return Line.needed(path.map(p -> List.of(p.last())).orElse(live));
    }

    int steps() {
      return (int) needed().stream().filter(line -> line.rule().isPresent()).count();
    }

    /** How hard the lines are to follow: about one for each. */
    double effort() {
      return needed().stream().mapToDouble(Line::effort).sum();
    }
  }

  private record State(double cost, int order, Found found) implements Comparable<State> {
    @Override
    public int compareTo(State other) {
      int byCost = Double.compare(cost, other.cost);
      return byCost != 0 ? byCost : Integer.compare(order, other.order);
    }
  }

  /** The best end that was found. */
  Found run(List<Line> relations) {
    fewest = relations.size();
    push(new Found(relations, Optional.empty()));
    Optional<Found> answer = explored(MOST_STATES);
    while (answer.isEmpty() && numeric.isEmpty() && !smallest.isEmpty() && furtherFromSmallest()) {
      answer = explored(MOST_AFTER_FIRST);
    }
    return answer.or(() -> numeric).or(() -> smallest).orElseThrow();
  }

  /** Goes on from the fewest equations only; whether there are fewer than when it last did so. */
  private boolean furtherFromSmallest() {
    Found from = smallest.orElseThrow();
    if (from.live().size() >= fewest) {
      return false;
    }
    fewest = from.live().size();
    queue.clear();
    seen.clear();
    push(from);
    return true;
  }

  /** An answer within so many states, if there is one. */
  private Optional<Found> explored(int most) {
    int left = most;
    while (!queue.isEmpty() && left > 0) {
      Found found = queue.remove().found();
      if (found.path().isPresent()) {
        if (found.kind() != Turn.Kind.STUCK && found.kind() != Turn.Kind.DROPPED) {
          return Optional.of(found);
        }
        if (numeric.isEmpty() || numeric.get().kind() == Turn.Kind.DROPPED) {
          numeric = Optional.of(found);
          left = Math.min(left, MOST_AFTER_FIRST);
        }
      } else if (seen.add(key(found))) {
        left--;
        expand(found);
      }
    }
    return Optional.empty();
  }

  /** The fewest equations that the search has come to, wherever it is. */
  Optional<Found> smallest() {
    return smallest;
  }

  /** Whether an equation turned out to say nothing new. */
  boolean isDependent() {
    return dependent;
  }

  private static String key(Found found) {
    Set<String> keys = new TreeSet<>();
    found.live().forEach(line -> keys.add(line.key()));
    return String.join(";", keys);
  }

  private void push(Found found) {
    int size = found.needed().stream().mapToInt(line -> line.key().length()).sum();
    int open = found.path().isPresent() ? 0 : found.live().size() - 1;
    queue.add(new State(found.effort() + open + BY_SIZE * size, order++, found));
  }

  private void expand(Found found) {
    if (smallest.isEmpty() || found.live().size() < smallest.get().live().size()) {
      smallest = Optional.of(found);
    }
    for (Line line : found.live()) {
      Set<String> names = unknowns(line);
      if (names.isEmpty() || names.equals(Set.of(unknown))) {
        end(found.live(), line);
        return;
      }
    }
    for (String name : unknowns(found.live())) {
      if (!name.equals(unknown)) {
        eliminate(found, name);
      }
    }
  }

  private void eliminate(Found found, String name) {
    for (List<Line> way : ways(found, name)) {
      List<Line> useful = way.stream().filter(line -> !isEmpty(line)).toList();
      dependent |= useful.size() < way.size() || useful.isEmpty();
      if (!useful.isEmpty()) {
        push(new Found(useful.stream().map(afterwards).toList(), Optional.empty()));
      }
    }
  }

  private List<List<Line>> ways(Found found, String name) {
    try {
      return new Elimination(board, name).ways(found.live());
    } catch (ArithmeticException | TooLargeException e) {
      return List.of(); // a division by zero, or formulas without end
    }
  }

  private static boolean isEmpty(Line line) {
    return line.left().equals(line.right());
  }

  private void end(List<Line> live, Line line) {
    Isolation.Path path = new Isolation(board, unknown).run(line).tidied(board);
    push(new Found(live, Optional.of(path)));
  }

  private Set<String> unknowns(Line line) {
    Set<String> names = new TreeSet<>(line.names());
    names.removeIf(name -> board.known().isKnown(name) && !name.equals(unknown));
    return names;
  }

  /** The names that have no value, in the order of the alphabet. */
  List<String> unknowns(List<Line> lines) {
    Set<String> names = new TreeSet<>();
    lines.forEach(line -> names.addAll(unknowns(line)));
    return new ArrayList<>(names);
  }
}
