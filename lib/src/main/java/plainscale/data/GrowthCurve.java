package plainscale.data;

import java.util.stream.IntStream;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/**
 * The curve y = A e^(B t) through points, by Levenberg and Marquardt's method from the line through
 * (t, ln |y|), and a few steps of Gauss and Newton's at the end for the last digits.
 */
final class GrowthCurve {
  private static final int MOST_STEPS = 1000;
  private static final int LAST_STEPS = 5;

  private final double[] t;
  private final double[] y;
  private final StraightLine.Roots roots;

  GrowthCurve(double[] t, double[] y, StraightLine.Roots roots) {
    this.t = t;
    this.y = y;
    this.roots = roots;
  }

  /** A and B. */
  RealVector fitted() {
    RealVector found = optimized(throughLogarithms());
    for (int step = 0; step < LAST_STEPS; step++) {
      RealVector next = found.add(linear(found).solution());
      found = squares(next) < squares(found) ? next : found;
    }
    return found;
  }

  private RealVector throughLogarithms() {
    double[] logarithms = new double[y.length];
    double[][] design = new double[y.length][];
    for (int i = 0; i < y.length; i++) {
      logarithms[i] = Math.log(Math.abs(y[i]));
      design[i] = new double[] {1, t[i]};
    }
    RealVector line = LeastSquares.solve(design, logarithms).solution();
    double start = Math.signum(y[0]) * Math.exp(line.getEntry(0));
    return new ArrayRealVector(new double[] {start, line.getEntry(1)});
  }

  private RealVector optimized(RealVector start) {
    LeastSquaresProblem problem =
        new LeastSquaresBuilder()
            .start(start)
            .model(this::valueAndJacobian)
            .target(roots.times(y))
            .maxEvaluations(MOST_STEPS)
            .maxIterations(MOST_STEPS)
            .build();
    try {
      return new LevenbergMarquardtOptimizer().optimize(problem).getPoint();
    } catch (MathIllegalStateException e) {
      throw new DataException(
          "No curve of this kind is found through these points.", "draw them, and try another");
    }
  }

  private Pair<RealVector, RealMatrix> valueAndJacobian(RealVector p) {
    double[] values = IntStream.range(0, t.length).mapToDouble(i -> value(p, i)).toArray();
    return new Pair<>(
        new ArrayRealVector(roots.times(values), false),
        new Array2DRowRealMatrix(jacobian(p), false));
  }

  private double value(RealVector p, int place) {
    return p.getEntry(0) * Math.exp(p.getEntry(1) * t[place]);
  }

  private double[][] jacobian(RealVector p) {
    double[][] jacobian = new double[t.length][];
    for (int i = 0; i < t.length; i++) {
      double growth = roots.of(i) * Math.exp(p.getEntry(1) * t[i]);
      jacobian[i] = new double[] {growth, p.getEntry(0) * t[i] * growth};
    }
    return jacobian;
  }

  /** The curve replaced by its tangent at p: the next step, and the spread of p. */
  LeastSquares linear(RealVector p) {
    return LeastSquares.solve(jacobian(p), roots.times(residuals(p).toArray()));
  }

  /** y less the curve. */
  RealVector residuals(RealVector p) {
    return new ArrayRealVector(
        IntStream.range(0, t.length).mapToDouble(i -> y[i] - value(p, i)).toArray(), false);
  }

  private double squares(RealVector p) {
    double norm = new ArrayRealVector(roots.times(residuals(p).toArray()), false).getNorm();
    return Double.isNaN(norm) ? Double.POSITIVE_INFINITY : norm;
  }
}
