package plainscale.data;

import java.math.BigDecimal;
import java.util.Arrays;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.stat.StatUtils;
import org.jspecify.annotations.Nullable;
import plainscale.quantity.Decimals;

/** Straight lines by linear least squares, in centred and scaled coordinates. */
final class StraightLine {
  private StraightLine() {}

  static Solution line(Points points, Weighting weighting) {
    Fits.refuseFewer(points, 2);
    Centred x = points.centredX();
    Fits.refuseOneX(points, x);
    Roots roots = Roots.of(points, weighting);
    double[] scaled = x.scaled();
    double[][] design = new double[scaled.length][];
    for (int i = 0; i < design.length; i++) {
      design[i] = new double[] {roots.of(i), roots.of(i) * scaled[i]};
    }
    Centred y = points.centredY();
    LeastSquares least = LeastSquares.solve(design, roots.times(y.scaled()));
    Spread spread = new Spread(least.factor()).times(roots.unit() / y.scale());
    return uncentred(
        x, y, least.solution(), spread, roots.over(least.residuals()), roots.standards());
  }

  static Solution throughOrigin(Points points, Weighting weighting) {
    Fits.refuseScale(points.xName(), points.xUnit());
    Fits.refuseScale(points.yName(), points.yUnit());
    Centred x = points.plainX();
    if (x.isOneValue()) {
      throw new DataException(
          "All values of “%s” are zero, so they give no slope.".formatted(points.xName()));
    }
    Roots roots = Roots.of(points, weighting);
    double[] scaled = roots.times(x.scaled());
    double[][] design =
        Arrays.stream(scaled).mapToObj(v -> new double[] {v}).toArray(double[][]::new);
    Centred y = points.plainY();
    LeastSquares least = LeastSquares.solve(design, roots.times(y.scaled()));
    double steep = y.scale() / x.scale();
    Spread spread = new Spread(least.factor()).times(roots.unit() / x.scale());
    return new Solution(
        least.solution().mapMultiply(steep),
        spread,
        roots.over(least.residuals()).mapMultiply(y.scale()),
        roots.standards());
  }

  /**
   * The line in the units of the columns from its height and slope in centred and scaled
   * coordinates; their spread is for y in scaled coordinates.
   */
  static Solution uncentred(
      Centred x,
      Centred y,
      RealVector line,
      Spread spread,
      RealVector residuals,
      @Nullable RealVector standards) {
    double steep = y.scale() / x.scale();
    double slope = line.getEntry(1) * steep;
    double intercept =
        y.centre()
            .add(new BigDecimal(line.getEntry(0) * y.scale()))
            .subtract(x.centre().multiply(new BigDecimal(slope)), Decimals.DIGITS)
            .doubleValue();
    double[][] derivatives = {
      {y.scale(), -x.centre().doubleValue() * steep},
      {0, steep}
    };
    return new Solution(
        new ArrayRealVector(new double[] {intercept, slope}),
        spread.through(derivatives),
        residuals.mapMultiply(y.scale()),
        standards);
  }

  /**
   * The roots of the weights, the largest being one.
   *
   * @param standards the uncertainties in the unit of y, or null where all points count alike
   * @param unit the uncertainty of weight one, in the unit of y
   */
  record Roots(@Nullable RealVector standards, double unit) {
    static Roots of(Points points, Weighting weighting) {
      if (weighting == Weighting.NONE) {
        return new Roots(null, 1);
      }
      double[] standards = points.standardsOfY();
      return new Roots(new ArrayRealVector(standards, false), StatUtils.min(standards));
    }

    double of(int place) {
      return standards == null ? 1 : unit / standards.getEntry(place);
    }

    double[] times(double[] values) {
      double[] times = values.clone();
      for (int i = 0; i < times.length; i++) {
        times[i] *= of(i);
      }
      return times;
    }

    RealVector over(RealVector values) {
      return standards == null ? values : values.ebeMultiply(standards).mapDivide(unit);
    }
  }
}
