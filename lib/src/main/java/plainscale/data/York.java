package plainscale.data;

import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;

/**
 * The straight line for points with uncertainties of both x and y, independent of one another: D.
 * York, N. M. Evensen, M. López Martínez and J. De Basabe Delgado, American Journal of Physics 72
 * (2004) 367. The letters are those of the article: U and V are x and y from the weighted centroid,
 * W the weights, β the corrections of U to the points adjusted to the line.
 */
final class York {
  private static final int MOST_STEPS = 500;
  private static final double CLOSE = 1e-15;

  private final double[] x;
  private final double[] y;
  private final double[] ux;
  private final double[] uy;

  private York(double[] x, double[] y, double[] ux, double[] uy) {
    this.x = x;
    this.y = y;
    this.ux = ux;
    this.uy = uy;
  }

  static Solution line(Points points) {
    Fits.refuseFewer(points, 2);
    Centred x = points.centredX();
    Centred y = points.centredY();
    Fits.refuseOneX(points, x);
    York york =
        new York(
            x.scaled(),
            y.scaled(),
            over(points.standardsOfX(), x.scale()),
            over(points.standardsOfY(), y.scale()));
    double start = StraightLine.line(points, Weighting.NONE).values().getEntry(1);
    double slope = york.slope(start * x.scale() / y.scale());
    return york.at(slope).solution(x, y);
  }

  private static double[] over(double[] values, double scale) {
    double[] over = values.clone();
    for (int i = 0; i < over.length; i++) {
      over[i] /= scale;
    }
    return over;
  }

  private double slope(double start) {
    double slope = start;
    for (int step = 0; step < MOST_STEPS; step++) {
      double next = at(slope).nextSlope();
      if (!Double.isFinite(next)) {
        break;
      }
      if (Math.abs(next - slope) <= CLOSE * Math.abs(next)) {
        return next;
      }
      slope = next;
    }
    throw new DataException(
        "With these uncertainties of both axes no line is found.",
        "weight by the uncertainties of y");
  }

  private Step at(double slope) {
    return new Step(slope);
  }

  /** The weights and the centroid for a slope. */
  private final class Step {
    private final double slope;
    private final double[] weights;
    private final double total;
    private final double meanX;
    private final double meanY;

    Step(double slope) {
      this.slope = slope;
      this.weights = new double[x.length];
      double sum = 0;
      double sumX = 0;
      double sumY = 0;
      for (int i = 0; i < x.length; i++) {
        weights[i] = 1 / (uy[i] * uy[i] + slope * slope * ux[i] * ux[i]);
        sum += weights[i];
        sumX += weights[i] * x[i];
        sumY += weights[i] * y[i];
      }
      this.total = sum;
      this.meanX = sumX / sum;
      this.meanY = sumY / sum;
    }

    private double beta(int i) {
      double u = x[i] - meanX;
      double v = y[i] - meanY;
      return weights[i] * (u * uy[i] * uy[i] + slope * v * ux[i] * ux[i]);
    }

    double nextSlope() {
      double above = 0;
      double below = 0;
      for (int i = 0; i < x.length; i++) {
        above += weights[i] * beta(i) * (y[i] - meanY);
        below += weights[i] * beta(i) * (x[i] - meanX);
      }
      return above / below;
    }

    Solution solution(Centred ofX, Centred ofY) {
      double intercept = meanY - slope * meanX;
      double[] residuals = new double[x.length];
      double[] standards = new double[x.length];
      for (int i = 0; i < x.length; i++) {
        residuals[i] = y[i] - intercept - slope * x[i];
        standards[i] = ofY.scale() / Math.sqrt(weights[i]);
      }
      return StraightLine.uncentred(
          ofX,
          ofY,
          new ArrayRealVector(new double[] {intercept, slope}),
          spread(),
          new ArrayRealVector(residuals),
          new ArrayRealVector(standards));
    }

    /** Height at the mean of the adjusted points and slope are independent of one another. */
    private Spread spread() {
      double adjusted = meanX + weightedMeanOfBeta();
      double squares = 0;
      for (int i = 0; i < x.length; i++) {
        squares += weights[i] * Math.pow(meanX + beta(i) - adjusted, 2);
      }
      double ofSlope = 1 / Math.sqrt(squares);
      double ofHeight = 1 / Math.sqrt(total);
      return new Spread(
          MatrixUtils.createRealMatrix(
              new double[][] {{ofHeight, -adjusted * ofSlope}, {0, ofSlope}}));
    }

    private double weightedMeanOfBeta() {
      double sum = 0;
      for (int i = 0; i < x.length; i++) {
        sum += weights[i] * beta(i);
      }
      return sum / total;
    }
  }
}
