package plainscale.data;

import plainscale.units.UnitOfMeasure;

/**
 * Fits lines and curves to points. Each throws {@link DataException} with a sentence where the
 * points do not determine the curve.
 */
public final class Fits {
  private Fits() {}

  /** The straight line y = b + m x; with {@link Weighting#BOTH} by York's method. */
  public static Fit line(Points points, Weighting weighting) {
    Solution solution =
        weighting == Weighting.BOTH ? York.line(points) : StraightLine.line(points, weighting);
    return new Fit(Model.LINE, weighting, points, solution);
  }

  /** The straight line y = b + m x, all points alike. */
  public static Fit line(Points points) {
    return line(points, Weighting.NONE);
  }

  /** The line through the origin y = m x. */
  public static Fit proportional(Points points, Weighting weighting) {
    refuseBoth(weighting);
    return new Fit(
        Model.PROPORTIONAL, weighting, points, StraightLine.throughOrigin(points, weighting));
  }

  /**
   * The power law y = a (x/x₁)^p by non-linear least squares in y itself, begun from the line
   * through the logarithms; what is reported is the non-linear fit. All x are positive, and all y
   * of one sign.
   */
  public static Fit power(Points points, Weighting weighting) {
    refuseBoth(weighting);
    return new Fit(Model.POWER, weighting, points, Growth.power(points, weighting));
  }

  /** The exponential y = a e^(b x), found in the same way; all y are of one sign. */
  public static Fit exponential(Points points, Weighting weighting) {
    refuseBoth(weighting);
    return new Fit(Model.EXPONENTIAL, weighting, points, Growth.exponential(points, weighting));
  }

  private static void refuseBoth(Weighting weighting) {
    if (weighting == Weighting.BOTH) {
      throw new DataException(
          "Uncertainties of both axes count in a straight line with an intercept only.",
          "weight by the uncertainties of y");
    }
  }

  static void refuseFewer(Points points, int needed) {
    if (points.count() < needed) {
      throw new DataException(
          "This curve needs %d points, and here %s."
              .formatted(needed, points.count() == 1 ? "is one" : "are " + points.count()));
    }
  }

  static void refuseOneX(Points points, Centred x) {
    if (x.isOneValue()) {
      throw new DataException(
          "All values of “%s” are equal, so they give no slope.".formatted(points.xName()));
    }
  }

  static void refuseScale(String name, UnitOfMeasure unit) {
    if (unit.isScale()) {
      throw new DataException(
          "“%s” in %s is a scale with its own zero; this curve needs amounts."
              .formatted(name, unit.text()),
          "write the column in K");
    }
  }
}
