package plainscale.algebra;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * An equation on the board in normal form, and how it came about: by a rule from other lines, or as
 * a relation of the lesson. Lines are compared by identity.
 */
final class Line {
  /** What is harder than one step of the usual kind; where paths are as long, this decides. */
  private static final Map<Rule, Double> EFFORT =
      Map.of(
          Rule.SUBSTITUTE,
          1.1,
          Rule.QUADRATIC_FORMULA,
          6.5,
          Rule.RAISE,
          1.5,
          Rule.SQUARE_AND_ADD,
          2.0);

  private static final double ALONE = 1.2;
  private static final double TURNED = 0.02;

  private final Optional<Rule> rule;
  private final List<Line> from;
  private final Sum left;
  private final Sum right;
  private final Note note;

  /** Why: {@code {0}} and {@code {1}} stand for the numbers of the lines that it comes from. */
  record Note(String reason, Optional<String> condition) {
    static Note of(String reason) {
      return new Note(reason, Optional.empty());
    }

    static Note of(String reason, String condition) {
      return new Note(reason, Optional.of(condition).filter(text -> !text.isEmpty()));
    }
  }

  private Line(Optional<Rule> rule, List<Line> from, Sum left, Sum right, Note note) {
    this.rule = rule;
    this.from = List.copyOf(from);
    this.left = left;
    this.right = right;
    this.note = note;
  }

  static Line relation(Sum left, Sum right) {
    return new Line(Optional.empty(), List.of(), left, right, Note.of(""));
  }

  static Line by(Rule rule, List<Line> from, Sum left, Sum right, Note note) {
    return new Line(Optional.of(rule), from, left, right, note);
  }

  Line then(Rule rule, Sum newLeft, Sum newRight, Note why) {
    return by(rule, List.of(this), newLeft, newRight, why);
  }

  Optional<Rule> rule() {
    return rule;
  }

  List<Line> from() {
    return from;
  }

  Sum left() {
    return left;
  }

  Sum right() {
    return right;
  }

  Note note() {
    return note;
  }

  boolean contains(String name) {
    return left.contains(name) || right.contains(name);
  }

  Set<String> names() {
    Set<String> names = new TreeSet<>(left.names());
    names.addAll(right.names());
    return names;
  }

  /** The side that contains the name, if only one does; the left one if both do. */
  Sum side(String name) {
    return left.contains(name) ? left : right;
  }

  Sum opposite(Sum side) {
    return side.equals(left) ? right : left;
  }

  String key() {
    return left.key() + "=" + right.key();
  }

  /** About one; a name that stands alone is rather substituted than added away. */
  double effort() {
    if (rule.isEmpty()) {
      return 0;
    }
    boolean sum = rule.get() == Rule.ADD_EQUATIONS || rule.get() == Rule.SUBTRACT_EQUATIONS;
    boolean alone = sum && from.stream().anyMatch(Line::hasSymbolAlone);
    return (alone ? ALONE : EFFORT.getOrDefault(rule.get(), 1.0)) + (isTurned() ? TURNED : 0);
  }

  /** Whether something is put in that was not given so. */
  private boolean isTurned() {
    return rule.equals(Optional.of(Rule.SUBSTITUTE)) && from.get(1).rule().isPresent();
  }

  private boolean hasSymbolAlone() {
    return left.names().stream().anyMatch(left::isSymbol)
        || right.names().stream().anyMatch(right::isSymbol);
  }

  /** All lines that these need, in an order in which each stands after what it comes from. */
  static List<Line> needed(List<Line> lines) {
    Set<Line> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    List<Line> ordered = new ArrayList<>();
    lines.forEach(line -> line.collect(seen, ordered));
    return ordered;
  }

  private void collect(Set<Line> seen, List<Line> ordered) {
    if (seen.add(this)) {
      from.forEach(line -> line.collect(seen, ordered));
      ordered.add(this);
    }
  }
}
