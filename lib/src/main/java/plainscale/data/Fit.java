package plainscale.data;

import java.util.List;

/**
 * A curve through points: its parameters with standard uncertainties and covariance, the residuals
 * and the uncertainty of the curve itself. Numbers are in the units of the columns.
 *
 * <p>Without weights the uncertainties come from the scatter of the points about the curve, with
 * the degrees of freedom as divisor. With weights they come from the stated uncertainties alone;
 * {@link #widened} takes the scatter into account.
 */
public final class Fit {
  private final Model model;
  private final Weighting weighting;
  private final Points points;
  private final Solution solution;
  private final Spread spread;
  private final FitQuality quality;
  private final List<Parameter> parameters;

  Fit(Model model, Weighting weighting, Points points, Solution solution) {
    this(model, weighting, points, solution, FitQualities.of(model, points, solution), 1);
  }

  private Fit(
      Model model,
      Weighting weighting,
      Points points,
      Solution solution,
      FitQuality quality,
      double widening) {
    this.model = model;
    this.weighting = weighting;
    this.points = points;
    this.solution = solution;
    this.quality = quality;
    double unit = weighting == Weighting.NONE ? quality.deviation().orElse(0) : widening;
    this.spread = solution.spread().times(unit);
    boolean known = weighting != Weighting.NONE || quality.freedom() > 0;
    this.parameters = FitParameters.of(model, points, solution.values(), known ? spread : null);
  }

  /** Which curve. */
  public Model model() {
    return model;
  }

  /** Which uncertainties counted. */
  public Weighting weighting() {
    return weighting;
  }

  /** The points. */
  public Points points() {
    return points;
  }

  /** The parameters in the order of {@link Model#symbols}. */
  public List<Parameter> parameters() {
    return parameters;
  }

  /** The parameter with that letter. */
  public Parameter parameter(String symbol) {
    return parameters.get(model.symbols().indexOf(symbol));
  }

  /** How uncertain the parameters are together, before units are converted. */
  public Spread spread() {
    return spread;
  }

  /** How well the curve follows the points. */
  public FitQuality quality() {
    return quality;
  }

  /** y less the curve at the point of that place, counted from 0. */
  public double residual(int place) {
    return solution.residuals().getEntry(place);
  }

  /** The curve at x. */
  public double at(double x) {
    return model.value(solution.values().toArray(), x);
  }

  /**
   * The standard uncertainty of the curve at x, for drawing a band (of the curve, not of another
   * reading); zero where no degree of freedom tells it.
   */
  public double standardAt(double x) {
    return spread.along(model.gradient(solution.values().toArray(), x));
  }

  /**
   * The same fit with all uncertainties multiplied by the Birge ratio, if there were weights and
   * the points scatter more than these say; its quantities have sources of their own.
   */
  public Fit widened() {
    double birge =
        quality.chiSquare().map(ChiSquare::birge).map(ratio -> ratio.orElse(1)).orElse(1.0);
    return new Fit(model, weighting, points, solution, quality, Math.max(1, birge));
  }
}
