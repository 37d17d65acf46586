package plainscale.data;

import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;

/** Computes the quality of a fit from its residuals. */
final class FitQualities {
  private static final double DUST = 1e-14;

  private FitQualities() {}

  static FitQuality of(Model model, Points points, Solution solution) {
    int freedom = points.count() - model.symbols().size();
    boolean zero = model == Model.PROPORTIONAL;
    RealVector residuals = solution.residuals();
    double length = withoutDust(length(residuals), points);
    OptionalDouble deviation =
        freedom > 0 ? OptionalDouble.of(length / Math.sqrt(freedom)) : OptionalDouble.empty();
    RealVector standards = solution.standards();
    Optional<ChiSquare> chi =
        standards == null
            ? Optional.empty()
            : Optional.of(new ChiSquare(squared(residuals.ebeDivide(standards)), freedom));
    Centred y = zero ? points.plainY() : points.centredY();
    return new FitQuality(
        freedom,
        deviation,
        rSquared(y, solution, zero),
        zero ? FitQuality.About.ZERO : FitQuality.About.MEAN,
        chi);
  }

  /** What is left of values by their last binary digits is no scatter. */
  private static double withoutDust(double length, Points points) {
    double largest = points.plainY().scale();
    return length <= DUST * largest * Math.sqrt(points.count()) ? 0 : length;
  }

  private static OptionalDouble rSquared(Centred y, Solution solution, boolean aboutZero) {
    RealVector scaled = new ArrayRealVector(y.scaled());
    RealVector residuals = solution.residuals().mapDivide(y.scale());
    RealVector standards = solution.standards();
    if (standards != null) {
      RealVector weights = standards.mapDivide(standards.getMinValue()).map(u -> 1 / u);
      double mean = weights.ebeMultiply(weights).dotProduct(scaled) / squared(weights);
      scaled = scaled.mapSubtract(aboutZero ? 0 : mean).ebeMultiply(weights);
      residuals = residuals.ebeMultiply(weights);
    }
    double all = squared(scaled);
    return all == 0 ? OptionalDouble.empty() : OptionalDouble.of(1 - squared(residuals) / all);
  }

  private static double squared(RealVector vector) {
    return vector.dotProduct(vector);
  }

  /** Scaled, so that squares of 10⁻²⁰⁰ are not nothing. */
  private static double length(RealVector vector) {
    double scale = vector.getLInfNorm();
    return scale == 0 ? 0 : scale * vector.mapDivide(scale).getNorm();
  }
}
