package plainscale.algebra;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresFactory;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/**
 * Several equations solved together by numbers: the relative differences of their sides are made
 * zero by Levenberg and Marquardt's method from a fixed set of starts, angles between 0° and 90°,
 * other unknowns positive from 10⁻⁹ to 10⁹ in SI units. The first start that leads to a root
 * counts.
 */
public final class NumericSystem {
  private static final double[] ANGLES = {0.1, 0.3, 0.6, 0.9, 1.3};
  private static final double[] DECADES = {-2, 0, 2, -4, 4, -6, 6, -9, 9};
  private static final double FITS = 1e-10;
  private static final double STEP = 1e-6;
  private static final int MOST_STARTS = 400;
  private static final int MOST_STEPS = 200;

  private final List<Equation> equations;
  private final List<String> unknowns;
  private final Set<String> angles;
  private final Map<String, Double> known = new HashMap<>();

  private NumericSystem(List<Equation> equations, List<String> unknowns, Known known) {
    this.equations = equations;
    this.unknowns = unknowns;
    this.angles = Set.copyOf(Mentions.of(equations).angles());
    for (String name : Mentions.of(equations).names()) {
      known.value(name).ifPresent(value -> this.known.put(name, value));
    }
  }

  /** A root: the values in SI units, and the largest relative difference of two sides there. */
  public record Root(Map<String, Double> values, double residual) {
    /** Keeps its own copy of the values. */
    public Root {
      values = Map.copyOf(values);
    }
  }

  /** Whether the name stands in the angle of a sine or the like. */
  public static boolean isAngle(List<Equation> equations, String name) {
    return Mentions.of(equations).angles().contains(name);
  }

  /** A root of the equations with positive values, if one is found. */
  public static Optional<Root> solve(List<Equation> equations, List<String> unknowns, Known known) {
    NumericSystem system = new NumericSystem(equations, unknowns, known);
    return system.starts().stream().flatMap(start -> system.from(start).stream()).findFirst();
  }

  private List<double[]> starts() {
    List<double[]> starts = new ArrayList<>(List.of(new double[0]));
    for (String unknown : unknowns) {
      double[] values = angles.contains(unknown) ? ANGLES : DECADES;
      List<double[]> longer = new ArrayList<>();
      for (double value : values) {
        for (double[] start : starts) {
          double[] next = Arrays.copyOf(start, start.length + 1);
          next[start.length] = angles.contains(unknown) ? value : value * Math.log(10);
          longer.add(next);
        }
      }
      starts = longer;
    }
    return starts.subList(0, Math.min(MOST_STARTS, starts.size()));
  }

  private Optional<Root> from(double[] start) {
    LeastSquaresProblem problem =
        LeastSquaresFactory.create(
            model(),
            new ArrayRealVector(equations.size()),
            new ArrayRealVector(start),
            null,
            MOST_STEPS,
            MOST_STEPS);
    try {
      RealVector found = new LevenbergMarquardtOptimizer().optimize(problem).getPoint();
      double residual = differences(found).getLInfNorm();
      boolean positive = values(found).values().stream().allMatch(v -> v > 0);
      return residual < FITS && positive
          ? Optional.of(new Root(values(found), residual))
          : Optional.empty();
    } catch (MathIllegalStateException noRootFromHere) {
      return Optional.empty();
    }
  }

  private MultivariateJacobianFunction model() {
    return point -> new Pair<>(differences(point), jacobian(point));
  }

  private RealMatrix jacobian(RealVector point) {
    RealMatrix jacobian = new Array2DRowRealMatrix(equations.size(), unknowns.size());
    for (int i = 0; i < unknowns.size(); i++) {
      RealVector above = point.copy();
      above.addToEntry(i, STEP);
      RealVector below = point.copy();
      below.addToEntry(i, -STEP);
      RealVector slope = differences(above).subtract(differences(below));
      jacobian.setColumnVector(i, slope.mapDivide(2 * STEP));
    }
    return jacobian;
  }

  /** The differences of the sides by the size of the sides; 1 where a side has no value. */
  private RealVector differences(RealVector point) {
    Map<String, Double> values = new HashMap<>(known);
    values.putAll(values(point));
    RealVector differences = new ArrayRealVector(equations.size());
    for (int i = 0; i < equations.size(); i++) {
      double left = Approximate.of(equations.get(i).left(), values).value();
      double right = Approximate.of(equations.get(i).right(), values).value();
      double size = Math.abs(left) + Math.abs(right);
      double difference = (left - right) / size;
      differences.setEntry(i, size == 0 ? 0 : Double.isFinite(difference) ? difference : 1);
    }
    return differences;
  }

  /** Other unknowns than angles are searched by their logarithm. */
  private Map<String, Double> values(RealVector point) {
    Map<String, Double> values = new LinkedHashMap<>();
    for (int i = 0; i < unknowns.size(); i++) {
      double x = point.getEntry(i);
      values.put(unknowns.get(i), angles.contains(unknowns.get(i)) ? x : Math.exp(x));
    }
    return values;
  }
}
