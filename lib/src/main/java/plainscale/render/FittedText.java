package plainscale.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plainscale.data.ChiSquare;
import plainscale.data.FitQuality;
import plainscale.data.Weighting;
import plainscale.magnitude.Writing;
import plainscale.notation.DataStatement;
import plainscale.sheet.Cloud;
import plainscale.sheet.DataResult;

/** What there is to say about a curve through points. */
final class FittedText {
  private static final double UNLIKELY = 0.05;
  private static final double FAR_TOO_LIKELY = 0.95;
  private static final double CORRELATED = 0.3;

  private final DataResult.Fitted fitted;
  private final DataResult.Goodness goodness;
  private final Writing writing;

  FittedText(DataResult.Fitted fitted) {
    this.fitted = fitted;
    this.goodness = fitted.goodness();
    this.writing = fitted.writing();
  }

  /** What kind of curve. */
  String kind() {
    return switch (fitted.kind()) {
      case LINE -> "Straight line";
      case PROPORTIONAL -> "Line through the origin";
      case POWER -> "Power law";
      case EXPONENTIAL -> "Exponential";
    };
  }

  List<String> sentences() {
    List<String> lines = new ArrayList<>();
    lines.add(points());
    lines.add(weights());
    goodness
        .deviation()
        .ifPresent(
            s ->
                lines.add(
                    "Residual standard deviation (how far the points lie from the curve): %s."
                        .formatted(ValueText.number(s, writing))));
    if (goodness.quality().rSquared().isPresent()) {
      lines.add(rSquared());
    }
    goodness.quality().chiSquare().ifPresent(chi -> lines.addAll(chiSquare(chi)));
    if (Math.abs(goodness.correlation().orElse(0)) > CORRELATED) {
      lines.add(correlated());
    }
    if (goodness.deviation().isPresent()) {
      lines.add(far());
    }
    return lines;
  }

  private String points() {
    Cloud cloud = fitted.cloud();
    String count = DataSections.count(cloud.count(), "point", writing);
    return DataWords.leftOut(cloud.left(), writing)
        .map(left -> count + ". " + left)
        .orElse(count + "; no row is left out.");
  }

  private String weights() {
    String up = fitted.cloud().up().name();
    String across = fitted.cloud().across().name();
    boolean freedom = goodness.quality().freedom() > 0;
    if (goodness.weighting() == Weighting.NONE) {
      return freedom
          ? "All points count alike; how uncertain the values are follows from the scatter about the curve."
          : "The curve goes through all points, so nothing tells how uncertain its values are; that needs more points.";
    }
    String whose =
        goodness.weighting() == Weighting.Y
            ? up
            : "%s and %s (York's method)".formatted(up, across);
    return "The points are weighted by the uncertainties (1/u²) of %s, and these tell how uncertain the values are."
        .formatted(whose);
  }

  private String rSquared() {
    double share = goodness.quality().rSquared().orElseThrow();
    String about = goodness.quality().about() == FitQuality.About.MEAN ? "its mean" : "zero";
    String curve =
        fitted.kind() == DataStatement.Curve.LINE
                || fitted.kind() == DataStatement.Curve.PROPORTIONAL
            ? "line"
            : "curve";
    return "R² = %s: so much of the squares of %s about %s does the %s explain. That it is the right curve R² does not say; the residuals tell more."
        .formatted(DataWords.share(share, writing), fitted.cloud().up().name(), about, curve);
  }

  private List<String> chiSquare(ChiSquare chi) {
    if (chi.freedom() < 1) {
      return List.of();
    }
    double probability = chi.probability().orElse(1);
    String value =
        "χ² = %s for %s: as large or larger it comes by chance in %s of all cases."
            .formatted(
                DataWords.number(chi.value(), 3, writing),
                DataSections.count(chi.freedom(), "degree", writing) + " of freedom",
                DataWords.percent(probability, writing));
    String verdict =
        probability < UNLIKELY
            ? "The points scatter more than their uncertainties say, or it is not the right curve."
            : probability > FAR_TOO_LIKELY
                ? "The points scatter less than their uncertainties say; these may be too large."
                : "Scatter and uncertainties go together.";
    return List.of(value + " " + verdict);
  }

  private String correlated() {
    return "%s and %s hang together (correlation %s); what is computed from both keeps that."
        .formatted(
            fitted.parameters().get(0).name(),
            fitted.parameters().get(1).name(),
            DataWords.share(goodness.correlation().orElse(0), writing));
  }

  private String far() {
    DataResult.Left far = goodness.far();
    if (far.count() == 0) {
      return "No point lies further from the curve than twice the residual standard deviation.";
    }
    int more = far.count() - far.rows().size();
    String rest = more == 0 ? "" : " and " + DataSections.whole(more, writing) + " more";
    return "Further from the curve than twice the residual standard deviation: %s%s."
        .formatted(DataWords.rows(far.rows()).toLowerCase(Locale.ROOT), rest);
  }
}
