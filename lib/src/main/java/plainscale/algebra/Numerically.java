package plainscale.algebra;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.exception.NoBracketingException;

/**
 * Roots by numbers. The two sides are compared on a fixed set of values of the unknown: zero, eight
 * values in each decade from 10⁻¹⁵ to 10¹⁵ in SI units, both signs, and each degree of two turns if
 * the unknown stands in an angle. Between two neighbours at which the difference changes sign,
 * Brent's method finds the root. Where the sides stop having values, as the root of a negative
 * number has none, the edge is looked for by halving and counts as one of the values. A root at
 * which the sides touch without crossing is found only if it is one of the values, and of two roots
 * between neighbours neither is.
 */
public final class Numerically {
  private static final int DECADES = 15;
  private static final int PER_DECADE = 8;
  private static final int DEGREES = 360;
  private static final double TURN = 2 * Math.PI;
  private static final int MOST_EVALUATIONS = 200;
  private static final double RELATIVE = 1e-14;
  private static final double ABSOLUTE = 1e-300;
  private static final double FITS = 1e-8;
  private static final double SAME = 1e-9;
  private static final int MOST_HALVINGS = 60;

  /** A square root of the last digit, as a root has at the edge of its domain. */
  private static final double EDGE_FITS = 1e-7;

  private static final double[] NUMBERS = grid(false);
  private static final double[] ANGLES = grid(true);

  private final Equation equation;
  private final String unknown;
  private final Map<String, Double> values;
  private int evaluations;

  /** A root, the bracket that it lies in, and by how much the sides differ there, in SI units. */
  public record Root(double value, double low, double high, double residual) {}

  /** All roots that were found, from the least to the greatest, and what it cost. */
  public record Roots(List<Root> roots, int evaluations) {
    /** Keeps its own copy of the list. */
    public Roots {
      roots = List.copyOf(roots);
    }

    private Roots withinOneTurn() {
      List<Root> near = roots.stream().filter(r -> Math.abs(r.value()) <= TURN).toList();
      return near.isEmpty() ? this : new Roots(near, evaluations);
    }
  }

  private Numerically(Equation equation, String unknown, Map<String, Double> values) {
    this.equation = equation;
    this.unknown = unknown;
    this.values = new HashMap<>(values);
  }

  /**
   * The roots of an equation in which every other name has a value; of an unknown that is an angle
   * itself those within one turn, if there are any.
   */
  public static Roots solve(Equation equation, String unknown, Known known) {
    Map<String, Double> values = new HashMap<>();
    for (String name : Mentions.of(List.of(equation)).names()) {
      known.value(name).ifPresent(value -> values.put(name, value));
    }
    Roots roots = solve(equation, unknown, values);
    return isAngle(equation, unknown) ? roots.withinOneTurn() : roots;
  }

  private static boolean isAngle(Equation equation, String unknown) {
    Line line = Line.relation(NormalForm.of(equation.left()), NormalForm.of(equation.right()));
    return Angles.isAngle(List.of(line), unknown);
  }

  static Roots solve(Equation equation, String unknown, Map<String, Double> values) {
    Numerically search = new Numerically(equation, unknown, values);
    boolean angle = Mentions.of(List.of(equation)).angles().contains(unknown);
    List<Root> roots = search.between(angle ? ANGLES : NUMBERS);
    return new Roots(roots, search.evaluations);
  }

  private static double[] grid(boolean angles) {
    List<Double> grid = new ArrayList<>(List.of(0.0));
    for (int i = -DECADES * PER_DECADE; i <= DECADES * PER_DECADE; i++) {
      double size = Math.pow(10, (double) i / PER_DECADE);
      grid.addAll(List.of(size, -size));
    }
    for (int i = -DEGREES; angles && i <= DEGREES; i++) {
      grid.add(Math.toRadians(i));
    }
    return grid.stream().mapToDouble(Double::doubleValue).sorted().distinct().toArray();
  }

  private List<Root> between(double[] grid) {
    List<Root> roots = new ArrayList<>();
    double before = difference(grid[0]);
    for (int i = 1; i < grid.length; i++) {
      double after = difference(grid[i]);
      if (after == 0) {
        add(roots, new Root(grid[i], grid[i], grid[i], 0));
      } else if (changes(before, after)) {
        inside(grid[i - 1], grid[i], roots);
      } else if (Double.isNaN(before) != Double.isNaN(after)) {
        toEdge(grid[i - 1], grid[i], roots);
      }
      before = after;
    }
    return roots;
  }

  private static boolean changes(double before, double after) {
    return before * after < 0 || Math.signum(before) * Math.signum(after) < 0;
  }

  /** From the one of two values at which there is a difference to the last such between them. */
  private void toEdge(double low, double high, List<Root> roots) {
    boolean below = !Double.isNaN(difference(low));
    double there = below ? low : high;
    double beyond = below ? high : low;
    double edge = edge(there, beyond);
    double at = difference(edge);
    double start = difference(there);
    if (Math.abs(at) <= EDGE_FITS * Math.abs(start)) {
      add(roots, new Root(edge, Math.min(edge, beyond), Math.max(edge, beyond), at));
    } else if (changes(start, at)) {
      inside(Math.min(there, edge), Math.max(there, edge), roots);
    }
  }

  private double edge(double there, double beyond) {
    double last = there;
    double none = beyond;
    for (int i = 0; i < MOST_HALVINGS; i++) {
      double middle = last + (none - last) / 2;
      if (Double.isNaN(difference(middle))) {
        none = middle;
      } else {
        last = middle;
      }
    }
    return last;
  }

  private void inside(double low, double high, List<Root> roots) {
    try {
      BrentSolver solver = new BrentSolver(RELATIVE, ABSOLUTE);
      double root = solver.solve(MOST_EVALUATIONS, this::difference, low, high);
      Map<String, Double> at = at(root);
      double left = Approximate.of(equation.left(), at).value();
      double right = Approximate.of(equation.right(), at).value();
      double scale = Math.abs(left) + Math.abs(right) + reach(low) + reach(high);
      if (Math.abs(left - right) <= FITS * scale) { // at a pole the sign changes too
        add(roots, new Root(root, low, high, left - right));
      }
    } catch (MathIllegalStateException | NoBracketingException e) {
      // No root was closed in on: there is a gap in the domain.
      evaluations++;
    }
  }

  private double reach(double x) {
    double difference = Math.abs(difference(x));
    return Double.isFinite(difference) ? difference : 0;
  }

  private static void add(List<Root> roots, Root root) {
    boolean seen =
        roots.stream()
            .anyMatch(r -> Math.abs(r.value() - root.value()) <= SAME * Math.abs(root.value()));
    if (!seen) {
      roots.add(root);
    }
  }

  private Map<String, Double> at(double x) {
    values.put(unknown, x);
    return values;
  }

  /** Not a number as well where a side is too large for one. */
  private double difference(double x) {
    evaluations++;
    Map<String, Double> at = at(x);
    double left = Approximate.of(equation.left(), at).value();
    double right = Approximate.of(equation.right(), at).value();
    return Double.isFinite(left) && Double.isFinite(right) ? left - right : Double.NaN;
  }
}
