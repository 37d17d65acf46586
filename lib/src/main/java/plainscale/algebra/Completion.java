package plainscale.algebra;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import plainscale.notation.Expr;

/**
 * Gives every name of a derivation a value, beginning with the answer and what it contains: one
 * unknown after another is computed from an equation in which all else has a value. Then the
 * relations must hold.
 */
final class Completion {
  private final String unknown;
  private final List<Equation> relations;
  private final List<Open> equations = new ArrayList<>();
  private final Set<String> names;
  private final List<String> known;
  private final Points points;

  Completion(Derivation derivation, Collection<Integer> used, Predicate<String> isKnown) {
    this.unknown = derivation.unknown();
    this.relations = used.stream().map(derivation::equation).toList();
    relations.forEach(relation -> equations.add(Open.of(relation)));
    derivation.steps().forEach(step -> equations.add(Open.of(step.after())));
    Mentions mentions = Mentions.of(relations);
    this.names = mentions.names();
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

  /** The values of all names: these, and what follows from them. */
  Optional<Map<String, Double>> completed(Map<String, Double> start, int number) {
    Map<String, Double> values = new HashMap<>(start);
    for (String name = missing(values); !name.isEmpty(); name = missing(values)) {
      Optional<Open> equation = determining(values);
      if (equation.isEmpty()) {
        values.put(name, points.value(name, number));
      } else {
        String next = equation.get().missing(values).get(0);
        Optional<Double> root = root(equation.get().equation(), next, values);
        if (root.isEmpty()) {
          return Optional.empty();
        }
        values.put(next, root.get());
      }
    }
    return Optional.of(values);
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

  private Optional<Open> determining(Map<String, Double> values) {
    return equations.stream().filter(open -> open.missing(values).size() == 1).findFirst();
  }

  /** A positive root before a negative one. */
  private Optional<Double> root(Equation equation, String name, Map<String, Double> values) {
    OptionalDouble direct = Backwards.root(equation, name, values);
    if (direct.orElse(0) > 0) {
      return Optional.of(direct.getAsDouble());
    }
    List<Double> roots =
        Numerically.solve(equation, name, values).roots().stream()
            .map(Numerically.Root::value)
            .filter(root -> root != 0 || !known.isEmpty()) // a mass of zero would fit anything
            .toList();
    return roots.stream().filter(root -> root > 0).findFirst().or(() -> roots.stream().findFirst());
  }

  /** An equation and its names, which are asked for at every point. */
  private record Open(Equation equation, Set<String> names) {
    static Open of(Equation equation) {
      return new Open(equation, Numerically.names(equation));
    }

    List<String> missing(Map<String, Double> values) {
      return names.stream().filter(name -> !values.containsKey(name)).toList();
    }
  }
}
