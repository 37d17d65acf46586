package plainscale.data;

import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * How uncertain the parameters of a fit are together: each is a sum of independent parts, so that
 * covariances and the uncertainty of the curve follow without differences of large numbers.
 */
public final class Spread {
  private final RealMatrix parts;

  /** Row i holds the standard uncertainties that the independent parts give to parameter i. */
  Spread(RealMatrix parts) {
    this.parts = parts.copy();
  }

  /** No uncertainty. */
  static Spread none(int parameters) {
    return new Spread(MatrixUtils.createRealMatrix(parameters, parameters));
  }

  /** How many independent parts there are. */
  int sources() {
    return parts.getColumnDimension();
  }

  /** What a part gives to a parameter. */
  double part(int parameter, int source) {
    return parts.getEntry(parameter, source);
  }

  /** The same, all that many times as large. */
  Spread times(double factor) {
    return new Spread(parts.scalarMultiply(factor));
  }

  /** The spread of other parameters that depend on these by that matrix of derivatives. */
  Spread through(double[][] derivatives) {
    return new Spread(MatrixUtils.createRealMatrix(derivatives).multiply(parts));
  }

  /** The standard uncertainty of a parameter. */
  public double standard(int parameter) {
    return length(parts.getRow(parameter));
  }

  /** The covariance of two parameters. */
  public double covariance(int one, int other) {
    return parts.getRowVector(one).dotProduct(parts.getRowVector(other));
  }

  /** The coefficient of correlation of two parameters; zero if one is certain. */
  public double correlation(int one, int other) {
    double both = standard(one) * standard(other);
    return both == 0
        ? 0
        : parts
            .getRowVector(one)
            .mapDivide(standard(one))
            .dotProduct(parts.getRowVector(other).mapDivide(standard(other)));
  }

  /** The standard uncertainty of what has these derivatives by the parameters. */
  double along(double[] gradient) {
    return length(parts.preMultiply(gradient));
  }

  private static double length(double[] parts) {
    double length = 0;
    for (double part : parts) {
      length = Math.hypot(length, part);
    }
    return length;
  }
}
