package plainscale.data;

/** Which uncertainties of the points count in a fit. */
public enum Weighting {
  /** None: all points count alike, and their scatter about the curve tells how uncertain it is. */
  NONE,
  /** Those of y: weights 1/u²(y). The stated uncertainties tell how uncertain the curve is. */
  Y,
  /** Those of x and y, for a straight line only (York's method). */
  BOTH
}
