package plainscale.algebra;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import plainscale.notation.Expr;

/** Seeded random values of names: positive, of several magnitudes; angles below a right angle. */
final class Points {
  private static final double[] DECADES = {0.2, 1, 1, 3};
  private static final double WIDEST_ANGLE = 1.5;
  private static final double LEAST_ANGLE = 0.05;

  private final Random random;
  private final Set<String> angles;

  Points(long seed, Set<String> angles) {
    this.random = new Random(seed);
    this.angles = Set.copyOf(angles);
  }

  /** One value for each name, all of a like magnitude or not, by the number of the point. */
  Map<String, Double> next(Collection<String> names, int number) {
    Map<String, Double> values = new HashMap<>();
    names.forEach(name -> values.put(name, value(name, number)));
    return values;
  }

  double value(String name, int number) {
    if (angles.contains(name)) {
      return LEAST_ANGLE + (WIDEST_ANGLE - LEAST_ANGLE) * random.nextDouble();
    }
    double decades = DECADES[number % DECADES.length];
    return Math.pow(10, decades * (2 * random.nextDouble() - 1));
  }

  /** Changes the value of one name so that the equation holds; empty if none can be found. */
  Optional<Map<String, Double>> on(Equation equation, Map<String, Double> values) {
    if (equation.left() instanceof Expr.Name alone) {
      Map<String, Double> moved = new HashMap<>(values);
      double value = Approximate.of(equation.right(), values).value();
      moved.put(alone.text(), value);
      boolean once = !Mentions.of(List.of(rightOnly(equation))).names().contains(alone.text());
      return once && Double.isFinite(value) ? Optional.of(moved) : Optional.empty();
    }
    List<String> names = List.copyOf(Mentions.of(List.of(equation)).names());
    if (names.isEmpty()) {
      return holds(equation, values) ? Optional.of(values) : Optional.empty();
    }
    int first = random.nextInt(names.size());
    for (int i = 0; i < names.size(); i++) {
      String name = names.get((first + i) % names.size());
      OptionalDouble root = root(equation, name, values);
      if (root.isPresent()) {
        Map<String, Double> moved = new HashMap<>(values);
        moved.put(name, root.getAsDouble());
        return Optional.of(moved);
      }
    }
    return Optional.empty();
  }

  private OptionalDouble root(Equation equation, String name, Map<String, Double> values) {
    OptionalDouble direct = Backwards.root(equation, name, values);
    if (direct.isPresent() && isGood(name, direct.getAsDouble())) {
      return direct;
    }
    return Numerically.solve(equation, name, values).roots().stream()
        .mapToDouble(Numerically.Root::value)
        .filter(root -> isGood(name, root))
        .findFirst();
  }

  private boolean isGood(String name, double root) {
    return root > 0 && (!angles.contains(name) || root < Math.PI);
  }

  private static Equation rightOnly(Equation equation) {
    return new Equation(equation.right(), equation.right());
  }

  static boolean holds(Equation equation, Map<String, Double> values) {
    Approximate left = Approximate.of(equation.left(), values);
    Approximate right = Approximate.of(equation.right(), values);
    return left.near(right);
  }
}
