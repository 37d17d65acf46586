package plainscale.algebra;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plainscale.notation.Expr;

/**
 * Gives every name of a derivation a value, beginning with the answer and what it contains: one
 * unknown after another is computed from an equation in which all else has a value. Then the
 * relations must hold.
 */
final class Completion {
  private static final int MOST_WAYS = 16;
  private static final String NOT_ZERO = " ≠ 0";

  /** Of more turns sines keep so few digits that anything would fit. */
  private static final double ONE_TURN = 2 * Math.PI;

  private final String unknown;
  private final List<Equation> relations;
  private final List<Open> equations = new ArrayList<>();
  private final Set<String> names;
  private final Set<String> angles;
  private final Set<String> cancelled;
  private final List<String> known;
  private final Points points;

  Completion(Derivation derivation, Collection<Integer> used, Predicate<String> isKnown) {
    this.unknown = derivation.unknown();
    this.relations = used.stream().map(derivation::equation).toList();
    relations.forEach(relation -> equations.add(Open.of(relation)));
    derivation.steps().forEach(step -> equations.add(Open.of(step.after())));
    Mentions mentions = Mentions.of(relations);
    this.names = mentions.names();
    this.angles = mentions.angles();
    this.cancelled = cancelled(derivation.steps());
    this.known = names.stream().filter(isKnown).filter(n -> !n.equals(unknown)).toList();
    this.points = new Points(names.size(), mentions.angles());
  }

  /** Whether the relations hold at a random point; empty if it cannot be completed. */
  Optional<Boolean> at(Expr answer, int number) {
    Set<String> given = Mentions.of(List.of(new Equation(answer, answer))).names();
    Map<String, Double> values = points.next(given, number);
    known.forEach(name -> values.computeIfAbsent(name, n -> points.value(n, number)));
    values.put(unknown, Approximate.of(answer, values).value());
    return Approximate.of(answer, values).usable() ? complete(values, number) : Optional.empty();
  }

  /** Whether the relations hold with these values and what follows from them. */
  private Optional<Boolean> complete(Map<String, Double> start, int number) {
    return completed(start, number).map(this::holds);
  }

  /**
   * The values of all names: these, and what follows from them. Where an equation has several roots
   * they are tried in turn until the relations hold; if they never do, the first values count.
   */
  Optional<Map<String, Double>> completed(Map<String, Double> start, int number) {
    Optional<Map<String, Double>> first = new Attempt(number, false).from(start);
    if (first.map(this::holds).orElse(false)) {
      return first;
    }
    Optional<Map<String, Double>> thorough = new Attempt(number, true).from(start);
    return thorough.filter(this::holds).or(() -> first).or(() -> thorough);
  }

  /** One way after the other through the roots; all roots only if it is to be thorough. */
  private final class Attempt {
    private final int number;
    private final boolean thorough;
    private int left = MOST_WAYS;

    Attempt(int number, boolean thorough) {
      this.number = number;
      this.thorough = thorough;
    }

    Optional<Map<String, Double>> from(Map<String, Double> start) {
      Map<String, Double> values = new HashMap<>(start);
      for (String name = missing(values); !name.isEmpty(); name = missing(values)) {
        Optional<Open> equation = determining(values);
        if (equation.isEmpty()) {
          values.put(name, points.value(name, number));
        } else {
          String next = equation.get().missing(values).get(0);
          List<Double> roots = roots(equation.get().equation(), next, values, thorough);
          if (roots.size() > 1 && !thorough) {
            roots = roots.subList(0, 1);
          }
          if (roots.size() != 1) {
            return branched(values, next, roots);
          }
          values.put(next, roots.get(0));
        }
      }
      return Optional.of(values);
    }

    private Optional<Map<String, Double>> branched(
        Map<String, Double> values, String name, List<Double> roots) {
      Optional<Map<String, Double>> first = Optional.empty();
      for (double root : roots) {
        if (left-- <= 0) {
          break;
        }
        Map<String, Double> next = new HashMap<>(values);
        next.put(name, root);
        Optional<Map<String, Double>> all = from(next);
        if (all.map(Completion.this::holds).orElse(false)) {
          return all;
        }
        first = first.or(() -> all);
      }
      return first;
    }
  }

  /** Whether the relations hold. */
  boolean holds(Map<String, Double> values) {
    return relations.stream().allMatch(r -> holds(r, values));
  }

  /** All names of the relations. */
  Set<String> names() {
    return names;
  }

  private static boolean holds(Equation equation, Map<String, Double> values) {
    Approximate left = Approximate.of(equation.left(), values);
    return left.nearly(Approximate.of(equation.right(), values));
  }

  private String missing(Map<String, Double> values) {
    return names.stream().filter(name -> !values.containsKey(name)).findFirst().orElse("");
  }

  /** First those in which the name stands once: they have the fewest roots. */
  private Optional<Open> determining(Map<String, Double> values) {
    List<Open> possible =
        equations.stream().filter(open -> open.missing(values).size() == 1).toList();
    return possible.stream()
        .filter(open -> open.isOnce(open.missing(values).get(0)))
        .findFirst()
        .or(() -> possible.stream().findFirst());
  }

  private boolean mayBeZero(String name) {
    return !known.isEmpty() && !cancelled.contains(name);
  }

  /**
   * The names of which steps say that they are not zero, because both sides are divided by them.
   */
  private static Set<String> cancelled(List<Step> steps) {
    return steps.stream()
        .filter(step -> step.rule() == Rule.DIVIDE_BY)
        .flatMap(step -> step.condition().stream())
        .flatMap(condition -> Stream.of(condition.split(", ")))
        .filter(condition -> condition.endsWith(NOT_ZERO))
        .map(condition -> condition.substring(0, condition.length() - NOT_ZERO.length()))
        .collect(Collectors.toSet());
  }

  /** Positive roots before negative ones. */
  private List<Double> roots(
      Equation equation, String name, Map<String, Double> values, boolean thorough) {
    OptionalDouble direct = Backwards.root(equation, name, values);
    if (direct.orElse(0) > 0 && !thorough) {
      return List.of(direct.getAsDouble());
    }
    return Numerically.solve(equation, name, values).roots().stream()
        .map(Numerically.Root::value)
        .filter(root -> root != 0 || mayBeZero(name)) // a mass of zero would fit anything
        .filter(root -> !thorough || !angles.contains(name) || Math.abs(root) <= ONE_TURN)
        .sorted(Comparator.comparing(root -> root <= 0))
        .toList();
  }

  /** An equation and its names, which are asked for at every point. */
  private record Open(Equation equation, Map<String, Integer> counts) {
    static Open of(Equation equation) {
      return new Open(equation, Mentions.of(List.of(equation)).counts());
    }

    boolean isOnce(String name) {
      return counts.getOrDefault(name, 0) == 1;
    }

    List<String> missing(Map<String, Double> values) {
      return counts.keySet().stream().filter(name -> !values.containsKey(name)).toList();
    }
  }
}
