package plainscale.algebra;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import plainscale.quantity.ElementaryFunction;

/** Whether an equation follows from others by its rule, at one point. */
final class StepCheck {
  private static final int HIGHEST_ROOT = 12;

  private final Rule rule;
  private final List<Equation> from;
  private final Equation after;
  private final boolean zeroSides;

  StepCheck(Rule rule, List<Equation> from, Equation after) {
    this.rule = rule;
    this.from = from;
    this.after = after;
    this.zeroSides = hasZeroSides();
  }

  /** What a point says: empty if the sides have no good values there. */
  Optional<Boolean> at(Points points, Map<String, Double> values) {
    Optional<Map<String, Double>> moved =
        switch (rule) {
          case SUBSTITUTE -> points.on(from.get(1), values);
          case QUADRATIC_FORMULA, CHOOSE_ROOT -> points.on(after, values);
          default -> zeroSides ? points.on(after, values) : Optional.of(values);
        };
    return moved.flatMap(this::holdsAt);
  }

  /** With zero on a side any factor would do: what is checked then is that the root is kept. */
  private boolean hasZeroSides() {
    return (rule == Rule.MULTIPLY_BY || rule == Rule.DIVIDE_BY)
        && (NormalForm.of(after.right()).isZero() || NormalForm.of(after.left()).isZero());
  }

  private Optional<Boolean> holdsAt(Map<String, Double> values) {
    Sides result = Sides.of(after, values);
    List<Sides> sources = from.stream().map(equation -> Sides.of(equation, values)).toList();
    if (zeroSides) {
      return Optional.of(sources.get(0).equal());
    }
    boolean root = rule == Rule.QUADRATIC_FORMULA || rule == Rule.CHOOSE_ROOT;
    boolean zero = root && NormalForm.of(after.right()).isZero(); // no digits of a zero are good
    boolean usable =
        (zero ? result.exists() : result.usable())
            && sources.stream().allMatch(s -> root ? s.exists() : s.usable());
    return usable ? Optional.of(holds(result, sources)) : Optional.empty();
  }

  private boolean holds(Sides a, List<Sides> s) {
    Sides b = s.get(0);
    return switch (rule) {
      case SUBSTITUTE -> a.nearlySame(b) || a.nearlySame(b.swapped());
      case FACTOR_OUT, EXPAND, IDENTITY, SWAP_SIDES -> a.same(b) || a.same(b.swapped());
      case MULTIPLY_BY, DIVIDE_BY ->
          a.left().times(b.right()).near(a.right().times(b.left()))
              || a.left().times(b.left()).near(a.right().times(b.right()));
      case ADD_TO, SUBTRACT_FROM, COLLECT -> sameSize(a.difference(), b.difference());
      case ADD_EQUATIONS -> added(a, b, s.get(1));
      case SQUARE_AND_ADD ->
          added(a, b.squares(), s.get(1).squares())
              || added(a, b.squares(), s.get(1).squares().swapped());
      case SUBTRACT_EQUATIONS ->
          sameSize(a.difference(), b.difference().minus(s.get(1).difference()));
      case DIVIDE_EQUATIONS -> sameRatio(a, b, s.get(1).swapped());
      case MULTIPLY_EQUATIONS -> sameRatio(a, b, s.get(1));
      case EQUATE -> equated(a, b, s.get(1));
      case RECIPROCAL -> reciprocal(a, b) || reciprocal(a, b.swapped());
      case RAISE -> raised(a, b) || raised(a, b.swapped());
      case ROOT -> root(a, b) || root(a, b.swapped());
      case INVERSE_FUNCTION -> inverse(a, b) || inverse(a, b.swapped());
      case QUADRATIC_FORMULA, CHOOSE_ROOT -> b.equal();
    };
  }

  private static boolean sameSize(Approximate a, Approximate b) {
    return a.near(b) || a.near(b.negate());
  }

  private static boolean added(Sides a, Sides b, Sides c) {
    return sameSize(a.difference(), b.difference().plus(c.difference()));
  }

  private static boolean sameRatio(Sides a, Sides b, Sides c) {
    Approximate left = b.left().times(c.left());
    Approximate right = b.right().times(c.right());
    return a.left().times(right).near(a.right().times(left))
        || a.left().times(left).near(a.right().times(right));
  }

  private static boolean equated(Sides a, Sides b, Sides c) {
    for (Sides first : List.of(b, b.swapped())) {
      for (Sides second : List.of(c, c.swapped())) {
        Sides equated = new Sides(first.right(), second.right());
        boolean same = first.left().near(second.left());
        if (same && (a.same(equated) || a.same(equated.swapped()))) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean reciprocal(Sides a, Sides b) {
    Approximate one = Approximate.of(1);
    return a.left().times(b.left()).near(one) && a.right().times(b.right()).near(one);
  }

  /** The same exponent on both sides. */
  private static boolean raised(Sides a, Sides b) {
    Approximate first = logarithm(a.left()).times(logarithm(b.right()));
    Approximate second = logarithm(a.right()).times(logarithm(b.left()));
    return first.near(second);
  }

  private static Approximate logarithm(Approximate x) {
    return x.apply(ElementaryFunction.ABS).apply(ElementaryFunction.LN);
  }

  private static boolean root(Sides a, Sides b) {
    return IntStream.rangeClosed(2, HIGHEST_ROOT)
        .mapToObj(n -> new Approximate(n, 0))
        .anyMatch(n -> a.left().power(n).near(b.left()) && a.right().power(n).near(b.right()));
  }

  /** Some function takes the new sides back to the old ones. */
  private static boolean inverse(Sides a, Sides b) {
    Set<ElementaryFunction> functions = new HashSet<>(List.of(ElementaryFunction.values()));
    functions.remove(ElementaryFunction.ABS);
    return functions.stream()
        .anyMatch(f -> a.left().apply(f).near(b.left()) && a.right().apply(f).near(b.right()));
  }

  /** Both sides as numbers. */
  private record Sides(Approximate left, Approximate right) {
    static Sides of(Equation equation, Map<String, Double> values) {
      return new Sides(
          Approximate.of(equation.left(), values), Approximate.of(equation.right(), values));
    }

    Sides swapped() {
      return new Sides(right, left);
    }

    boolean exists() {
      return Double.isFinite(left.value()) && Double.isFinite(right.value());
    }

    boolean usable() {
      return left.usable() && right.usable();
    }

    /** At a point that was computed first. */
    boolean equal() {
      return left.nearly(right);
    }

    boolean same(Sides other) {
      return left.near(other.left) && right.near(other.right);
    }

    boolean nearlySame(Sides other) {
      return left.nearly(other.left) && right.nearly(other.right);
    }

    Sides squares() {
      return new Sides(left.times(left), right.times(right));
    }

    Approximate difference() {
      return left.minus(right);
    }
  }
}
