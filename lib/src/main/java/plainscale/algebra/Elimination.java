package plainscale.algebra;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The ways in which a name goes from all equations but one, which then is no longer needed. */
final class Elimination {
  private final Board board;
  private final String name;

  Elimination(Board board, String name) {
    this.board = board;
    this.name = name;
  }

  /** The equations that are left over, in each way. */
  List<List<Line>> ways(List<Line> live) {
    List<List<Line>> ways = new ArrayList<>();
    for (Line pivot : live) {
      if (pivot.contains(name)) {
        List<Line> targets =
            live.stream().filter(line -> line != pivot && line.contains(name)).toList();
        List<Line> rest =
            live.stream().filter(line -> line != pivot && !line.contains(name)).toList();
        combined(pivot, targets).ifPresent(lines -> ways.add(joined(lines, rest)));
        substituted(pivot, targets).ifPresent(lines -> ways.add(joined(lines, rest)));
      }
    }
    return ways;
  }

  private static List<Line> joined(List<Line> lines, List<Line> rest) {
    List<Line> all = new ArrayList<>(rest);
    all.addAll(lines);
    return all;
  }

  private Optional<List<Line>> combined(Line pivot, List<Line> targets) {
    Combination combination = new Combination(board, name);
    List<Line> results = new ArrayList<>();
    for (Line target : targets) {
      board.spend();
      Optional<Line> line = combination.of(target, pivot);
      if (line.isEmpty()) {
        return Optional.empty();
      }
      results.add(withTangent(line.get()));
    }
    return Optional.of(results);
  }

  private Line withTangent(Line line) {
    Line result = line;
    for (String other : line.names()) {
      Optional<Line> next = Identities.tangent(board, other, result);
      result = next.orElse(result);
    }
    return result;
  }

  /** The first line on the way to the name alone that is enough for all targets. */
  private Optional<List<Line>> substituted(Line pivot, List<Line> targets) {
    if (targets.isEmpty()) {
      return Optional.of(List.of());
    }
    Isolation.Path path = new Isolation(board, name).run(pivot);
    for (Line line : path.lines()) {
      Optional<List<Line>> lines =
          Substitution.from(board, name, line).flatMap(source -> source.into(targets));
      if (lines.isPresent() && (path.isCertain() || line == pivot)) {
        return lines;
      }
    }
    return Optional.empty();
  }
}
