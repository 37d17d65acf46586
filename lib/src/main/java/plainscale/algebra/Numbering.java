package plainscale.algebra;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Numbers the lines of a derivation and makes steps of them. */
final class Numbering {
  private static final Set<Rule> SYMMETRIC =
      Set.of(Rule.ADD_EQUATIONS, Rule.SQUARE_AND_ADD, Rule.MULTIPLY_EQUATIONS, Rule.EQUATE);

  private final Writer writer;
  private final IdentityHashMap<Line, Integer> numbers = new IdentityHashMap<>();
  private final List<Step> steps = new ArrayList<>();

  /** The relations keep their places; of other lines only those that are needed get a number. */
  Numbering(Writer writer, List<Line> relations, List<Line> ends) {
    this.writer = writer;
    for (Line relation : relations) {
      numbers.put(relation, numbers.size() + 1);
    }
    for (Line line : Line.needed(ends)) {
      line.rule().ifPresent(rule -> add(rule, line));
    }
  }

  private void add(Rule rule, Line line) {
    int number = numbers.size() + 1;
    numbers.put(line, number);
    List<Integer> from = new ArrayList<>(line.from().stream().map(this::number).toList());
    if (SYMMETRIC.contains(rule)) {
      from.sort(null);
    }
    String reason = line.note().reason();
    for (int i = 0; i < from.size(); i++) {
      reason = reason.replace("{" + i + "}", "(" + from.get(i) + ")");
    }
    Optional<String> condition = line.note().condition();
    steps.add(new Step(number, rule, from, equation(line), reason, condition));
  }

  Equation equation(Line line) {
    return writer.equation(line.left(), line.right());
  }

  int number(Line line) {
    return numbers.getOrDefault(line, 0);
  }

  List<Step> steps() {
    return steps;
  }
}
