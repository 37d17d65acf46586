package plainscale.data;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Power laws and exponentials, both as {@code y = A e^(B t)}: t is ln x or x from its mean, scaled
 * like y to lie between −1 and 1.
 */
final class Growth {
  private Growth() {}

  static Solution power(Points points, Weighting weighting) {
    Fits.refuseFewer(points, 2);
    Fits.refuseScale(points.xName(), points.xUnit());
    IntStream.range(0, points.count()).forEach(i -> refuseNotPositive(points, i));
    Fits.refuseOneX(points, points.centredX());
    double[] logarithms =
        IntStream.range(0, points.count())
            .mapToDouble(i -> Math.log(points.x(i).doubleValue()))
            .toArray();
    double middle = StatUtils.mean(logarithms);
    double[] t = Arrays.stream(logarithms).map(v -> v - middle).toArray();
    return solve(points, weighting, middle, t);
  }

  static Solution exponential(Points points, Weighting weighting) {
    Fits.refuseFewer(points, 2);
    Centred x = points.centredX();
    Fits.refuseOneX(points, x);
    double[] t = Arrays.stream(x.scaled()).map(v -> v * x.scale()).toArray();
    return solve(points, weighting, x.centre().doubleValue(), t);
  }

  private static void refuseNotPositive(Points points, int place) {
    if (points.x(place).signum() <= 0) {
      throw new DataException(
          "A power law needs positive values of “%s”; in row %d stands %s."
              .formatted(points.xName(), points.row(place), written(points.x(place))));
    }
  }

  private static String written(BigDecimal value) {
    return value.toString().replace('-', '−');
  }

  /** A curve that never crosses zero cannot have values on both sides. */
  private static void refuseOtherSign(Points points) {
    Fits.refuseScale(points.yName(), points.yUnit());
    for (int i = 0; i < points.count(); i++) {
      if (points.y(i).signum() == 0 || points.y(i).signum() != points.y(0).signum()) {
        throw new DataException(
            "This curve needs values of “%s” of one sign, none of them zero; in row %d stands %s."
                .formatted(points.yName(), points.row(i), written(points.y(i))),
            "leave the row out, or subtract a background");
      }
    }
  }

  private static Solution solve(Points points, Weighting weighting, double middle, double[] t) {
    refuseOtherSign(points);
    double scale = Statistics.largest(t);
    double[] scaled = Arrays.stream(t).map(v -> v / scale).toArray();
    Centred y = points.plainY();
    StraightLine.Roots roots = StraightLine.Roots.of(points, weighting);
    GrowthCurve curve = new GrowthCurve(scaled, y.scaled(), roots);
    RealVector found = curve.fitted();
    LeastSquares last = curve.linear(found);
    double rate = found.getEntry(1) / scale;
    double start = found.getEntry(0) * y.scale() * Math.exp(-rate * middle);
    if (start == 0 || !Double.isFinite(start)) {
      throw new DataException(
          "The value of this curve where “%s” begins is beyond all numbers."
              .formatted(points.xName()),
          "count “%s” from a nearer zero, or in another unit".formatted(points.xName()));
    }
    double[][] derivatives = {
      {y.scale() * Math.exp(-rate * middle), -start * middle / scale},
      {0, 1 / scale}
    };
    return new Solution(
        new ArrayRealVector(new double[] {start, rate}),
        new Spread(last.factor()).times(roots.unit() / y.scale()).through(derivatives),
        curve.residuals(found).mapMultiply(y.scale()),
        roots.standards());
  }
}
