package plainscale.algebra;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import plainscale.notation.ProblemException;

/**
 * Derives an unknown from relations, step by step: the relations that are needed are chosen, other
 * unknowns eliminated on the shortest way that was found, the unknown isolated, and all of it
 * checked by numbers before it is told.
 *
 * <pre>{@code
 * Derivation d = Solver.solve(relations, "q", known, Budget.usual());
 * }</pre>
 */
public final class Solver {
  private static final int MOST_RELATIONS = 60;
  private static final int MOST_CONNECTED = 8;

  private final List<Relation> relations;
  private final String unknown;
  private final Board board;
  private final List<Line> lines;
  private final Selection selection;
  private final Reduction reduction;
  private final List<Search> searches = new ArrayList<>();

  private Solver(List<Relation> relations, String unknown, Board board) {
    this.relations = relations;
    this.unknown = unknown;
    this.board = board;
    this.lines = relations.stream().map(Relation::equation).map(Solver::line).toList();
    this.selection = selection(lines);
    this.reduction = new Reduction(board, unknown);
  }

  private Selection selection(List<Line> of) {
    return new Selection(of, name -> !board.known().isKnown(name));
  }

  private static Line line(Equation equation) {
    return Line.relation(NormalForm.of(equation.left()), NormalForm.of(equation.right()));
  }

  /** The derivation of the unknown; the answer contains known names only. */
  public static Derivation solve(
      List<Relation> relations, String unknown, Known known, Budget budget) {
    if (relations.size() > MOST_RELATIONS) {
      String why = "There are " + relations.size() + " relations; the most is 60.";
      return bounded(relations, unknown, why);
    }
    try {
      List<Equation> equations = relations.stream().map(Relation::equation).toList();
      Writer writer = new Writer(NameOrder.of(equations));
      Board board = new Board(writer, new Others(known, unknown), budget);
      return new Solver(relations, unknown, board).deriveOrStop();
    } catch (TooLargeException e) {
      return bounded(relations, unknown, String.valueOf(e.getMessage()));
    } catch (ArithmeticException e) {
      return bounded(relations, unknown, "A relation divides by zero.");
    } catch (ProblemException e) {
      return bounded(relations, unknown, e.problems().get(0).sentence());
    } catch (StackOverflowError e) {
      return bounded(relations, unknown, "The relations are nested too deep.");
    }
  }

  private static Derivation bounded(List<Relation> relations, String unknown, String why) {
    return new Derivation(unknown, relations, List.of(), new Outcome.Bounded(why));
  }

  /** What is known, without the unknown itself. */
  private record Others(Known known, String unknown) implements Known {
    @Override
    public boolean isKnown(String name) {
      return !name.equals(unknown) && known.isKnown(name);
    }

    @Override
    public OptionalDouble value(String name) {
      return isKnown(name) ? known.value(name) : OptionalDouble.empty();
    }
  }

  private Derivation deriveOrStop() {
    try {
      return derive();
    } catch (TooLargeException e) {
      return stopped(String.valueOf(e.getMessage()));
    } catch (ProblemException e) {
      return stopped(e.problems().get(0).sentence());
    }
  }

  /** What was reached with the fewest equations left; nothing if someone wanted it stopped. */
  private Derivation stopped(String why) {
    Optional<Search.Found> reached =
        searches.stream()
            .flatMap(search -> search.smallest().stream())
            .min(
                Comparator.comparing((Search.Found found) -> found.live().size())
                    .thenComparing(Search.Found::steps));
    return reached
        .filter(found -> !board.budget().isStopped())
        .flatMap(found -> new Telling(board, relations, lines, unknown).stopped(found, why))
        .orElseGet(() -> bounded(relations, unknown, why));
  }

  private Search search(UnaryOperator<Line> afterwards) {
    Search search = new Search(board, unknown, afterwards);
    searches.add(search);
    return search;
  }

  private Derivation derive() {
    return best(selection.determining(unknown), lines)
        .or(this::byCancelling)
        .map(found -> new Telling(board, relations, lines, unknown).tell(found))
        .orElseGet(this::free);
  }

  /** The best end of the smallest sets of these equations that have one. */
  private Optional<Search.Found> best(List<BitSet> sets, List<Line> of) {
    Optional<Search.Found> best = Optional.empty();
    int size = 0;
    for (BitSet set : sets) {
      if (set.cardinality() > size && best.map(Solver::isAnswer).orElse(false)) {
        break;
      }
      size = set.cardinality();
      Search search = search(UnaryOperator.identity());
      Search.Found found = search.run(set.stream().mapToObj(of::get).toList());
      if (found.path().isEmpty() && search.isDependent()) {
        continue; // the equations say less than their number
      }
      if (best.isEmpty() || Solver.order().compare(found, best.get()) < 0) {
        best = Optional.of(found);
      }
    }
    return best;
  }

  private static boolean isAnswer(Search.Found found) {
    return found.kind() != Turn.Kind.DROPPED && found.kind() != Turn.Kind.STUCK;
  }

  private static Comparator<Search.Found> order() {
    return Comparator.comparing((Search.Found found) -> found.kind() == Turn.Kind.DROPPED)
        .thenComparing(found -> found.path().isEmpty())
        .thenComparing(found -> found.kind() == Turn.Kind.STUCK)
        .thenComparing(Search.Found::steps);
  }

  /** With more unknowns than relations, some may still cancel: at once, or on the way. */
  private Optional<Search.Found> byCancelling() {
    List<Line> reduced = reduction.of(lines);
    Selection left = selection(reduced);
    return best(left.determining(unknown), reduced)
        .filter(found -> found.kind() != Turn.Kind.DROPPED)
        .or(() -> onTheWay(left.entangled(unknown), reduced));
  }

  private Optional<Search.Found> onTheWay(BitSet set, List<Line> reduced) {
    if (set.isEmpty() || set.cardinality() > MOST_CONNECTED) {
      return Optional.empty();
    }
    Search.Found found = search(reduction::of).run(set.stream().mapToObj(reduced::get).toList());
    return Optional.of(found).filter(Solver::isAnswer);
  }

  /** Too few relations: which quantities keep the unknown from being found. */
  private Derivation free() {
    if (!selection.isComplete()) {
      return bounded(relations, unknown, "There are too many ways to choose among the relations.");
    }
    Selection left = selection(reduction.of(lines));
    Set<String> names = new TreeSet<>(left.names(left.connected(unknown)));
    names.remove(unknown);
    names.removeIf(this::isDetermined);
    Outcome outcome =
        names.isEmpty()
            ? new Outcome.Free(List.of(unknown))
            : new Outcome.Free(new ArrayList<>(names));
    return new Derivation(unknown, relations, List.of(), outcome);
  }

  /** Whether a name follows without the unknown. */
  private boolean isDetermined(String name) {
    return selection.determining(name).stream()
        .anyMatch(set -> !selection.names(set).contains(unknown));
  }
}
