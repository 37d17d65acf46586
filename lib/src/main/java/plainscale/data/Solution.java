package plainscale.data;

import org.apache.commons.math3.linear.RealVector;
import org.jspecify.annotations.Nullable;

/**
 * What the numerics hand to a {@link Fit}: parameters in the units of the columns (without a
 * meaning if they are not finite), their spread for the residuals as weighted, and the residuals.
 *
 * @param values the parameters
 * @param spread their spread; without weights for residuals of variance one in the unit of y
 * @param residuals y less the curve, in the unit of y
 * @param standards what each residual is measured by, if the fit had weights
 */
record Solution(
    RealVector values, Spread spread, RealVector residuals, @Nullable RealVector standards) {}
