package plainscale.data;

/** The fit of a model, by its name. */
final class Curves {
  private Curves() {}

  static Fit fit(Model model, Points points, Weighting weighting) {
    return switch (model) {
      case LINE -> Fits.line(points, weighting);
      case PROPORTIONAL -> Fits.proportional(points, weighting);
      case POWER -> Fits.power(points, weighting);
      case EXPONENTIAL -> Fits.exponential(points, weighting);
    };
  }
}
