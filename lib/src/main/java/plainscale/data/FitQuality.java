package plainscale.data;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How well a curve follows its points.
 *
 * @param freedom the degrees of freedom, points less parameters
 * @param deviation the standard deviation of the residuals in the unit of y, √(Σr²/freedom);
 *     nothing without a degree of freedom
 * @param rSquared the share of the squares of y that the curve explains, 1 − Σr²/Σy²; the squares
 *     are taken as {@code about} says, with the weights of the fit. Nothing if all y are equal. It
 *     does not tell whether the curve is the right one
 * @param about from where the squares of y are taken
 * @param chiSquare Σ(r/u)², if the fit had weights
 */
public record FitQuality(
    int freedom,
    OptionalDouble deviation,
    OptionalDouble rSquared,
    About about,
    Optional<ChiSquare> chiSquare) {

  /** From where the squares of y are taken. */
  public enum About {
    /** From the mean of y. */
    MEAN,
    /** From zero, for a line through the origin: never compare it with the other. */
    ZERO
  }
}
