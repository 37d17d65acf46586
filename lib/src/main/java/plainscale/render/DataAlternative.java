package plainscale.render;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plainscale.magnitude.Writing;
import plainscale.quantity.Shown;
import plainscale.sheet.Cloud;
import plainscale.sheet.DataResult;
import plainscale.units.UnitOfMeasure;

/** What a plot shows in words, so that one can work with it without seeing it. */
final class DataAlternative {
  /** So many points are told one by one. */
  private static final int TOLD = 30;

  private static final double THROUGHOUT = 0.9;
  private static final double ON_THE_WHOLE = 0.5;
  private static final int PLACES_OF_A_CURVE = 9;

  private final Writing writing;

  DataAlternative(Writing writing) {
    this.writing = writing;
  }

  String of(DataResult.Counted counted) {
    UnitOfMeasure unit = counted.side().unit();
    String bins =
        counted.histogram().bins().stream()
            .map(
                bin ->
                    "%s to %s: %s"
                        .formatted(
                            number(bin.from().doubleValue()),
                            number(bin.to().doubleValue()),
                            DataSections.whole(bin.count(), writing)))
            .collect(Collectors.joining("; "));
    String reference =
        counted
            .against()
            .map(value -> " A dashed line stands at the reference value, " + shown(value) + ".")
            .orElse("");
    return "Histogram of %s of %s. Number of values by%s: %s. A line stands at the mean, %s.%s"
        .formatted(
            DataSections.count(counted.count(), "value", writing),
            counted.side().name(),
            unit.text().isEmpty() ? " value" : " " + counted.side().name() + " in " + unit.text(),
            bins,
            shown(counted.mean()),
            reference);
  }

  private String shown(Shown shown) {
    return ValueText.number(shown, writing);
  }

  private String number(double value) {
    return DataWords.brief(value, UnitOfMeasure.ONE, writing);
  }

  private String number(double value, DataResult.Side side) {
    return DataWords.brief(value, side.unit(), writing);
  }

  String of(DataResult.Fitted fitted) {
    List<String> parts = new ArrayList<>();
    parts.add(head(fitted.cloud().up(), fitted.cloud().across()));
    parts.addAll(points(fitted.cloud()));
    parts.add(
        "The fit is %s with %s."
            .formatted(
                fitted.formula().text(),
                fitted.parameters().stream()
                    .map(p -> p.name() + " = " + shown(p.value()))
                    .collect(Collectors.joining(" and "))));
    parts.add(residuals(fitted));
    return String.join(" ", parts);
  }

  private static String head(DataResult.Side up, DataResult.Side across) {
    return "Plot of %s upwards against %s across.".formatted(said(up), said(across));
  }

  private static String said(DataResult.Side side) {
    return side.unit().text().isEmpty() ? side.name() : side.name() + " in " + side.unit().text();
  }

  private List<String> points(Cloud cloud) {
    Cloud.Spot left = cloud.ends().get(0);
    Cloud.Spot right = cloud.ends().get(1);
    Cloud.Spot low = cloud.ends().get(2);
    Cloud.Spot high = cloud.ends().get(3);
    List<String> parts = new ArrayList<>();
    parts.add(
        "%s, %s from %s to %s; lowest %s at %s, highest %s at %s."
            .formatted(
                DataSections.count(cloud.count(), "point", writing),
                cloud.across().name(),
                number(left.x(), cloud.across()),
                number(right.x(), cloud.across()),
                number(low.y(), cloud.up()),
                number(low.x(), cloud.across()),
                number(high.y(), cloud.up()),
                number(high.x(), cloud.across())));
    if (cloud.every() > 1) {
      parts.add("One point in %s is drawn.".formatted(DataSections.whole(cloud.every(), writing)));
    }
    if (cloud.trend().isPresent()) {
      parts.add(trend(cloud, cloud.trend().getAsDouble()));
    }
    if (cloud.count() <= TOLD) {
      parts.add(oneByOne(cloud));
    }
    return parts;
  }

  private String trend(Cloud cloud, double trend) {
    String up = cloud.up().name();
    String across = cloud.across().name();
    double size = Math.abs(trend);
    String goes = trend > 0 ? "rises" : "falls";
    String words =
        size >= THROUGHOUT
            ? "%s %s with %s nearly throughout".formatted(up, goes, across)
            : size >= ON_THE_WHOLE
                ? "%s %s with %s on the whole".formatted(up, goes, across)
                : "%s shows no clear trend with %s".formatted(up, across);
    return "%s (rank correlation %s).".formatted(words, DataWords.number(trend, 2, writing));
  }

  private String oneByOne(Cloud cloud) {
    return "Points (%s, %s): %s."
        .formatted(
            said(cloud.across()),
            said(cloud.up()),
            cloud.spots().stream()
                .map(s -> "(%s, %s)".formatted(with(s.x(), s.ux()), with(s.y(), s.uy())))
                .collect(Collectors.joining(" ")));
  }

  private String with(double value, double standard) {
    return standard > 0 ? number(value) + " ± " + number(standard) : number(value);
  }

  private String residuals(DataResult.Fitted fitted) {
    List<Double> residuals = fitted.residuals();
    int most =
        IntStream.range(0, residuals.size())
            .reduce((a, b) -> Math.abs(residuals.get(b)) > Math.abs(residuals.get(a)) ? b : a)
            .orElse(0);
    long above = residuals.stream().filter(r -> r > 0).count();
    List<Double> ordered = byX(fitted);
    long changes =
        IntStream.range(1, ordered.size())
            .filter(i -> ordered.get(i) * ordered.get(i - 1) < 0)
            .count();
    return "Below it the residuals: the largest is %s in row %d; %s of %s lie above the curve, and from one %s to the next the sign changes %s."
        .formatted(
            DataWords.number(residuals.get(most), 2, fitted.cloud().up().unit(), writing),
            fitted.cloud().spots().get(most).row(),
            DataSections.whole((int) above, writing),
            DataSections.whole(residuals.size(), writing),
            fitted.cloud().across().name(),
            times((int) changes));
  }

  /** The residuals from left to right. */
  private static List<Double> byX(DataResult.Fitted fitted) {
    List<Cloud.Spot> spots = fitted.cloud().spots();
    return IntStream.range(0, spots.size())
        .boxed()
        .sorted(Comparator.comparingDouble(i -> spots.get(i).x()))
        .map(fitted.residuals()::get)
        .toList();
  }

  private String times(int count) {
    return count == 1 ? "once" : DataSections.whole(count, writing) + " times";
  }

  String of(DataResult.Plotted plotted) {
    List<String> parts = new ArrayList<>();
    parts.add(head(plotted.up(), plotted.across()));
    if (plotted.logs().x() || plotted.logs().y()) {
      parts.add(logs(plotted));
    }
    if (!plotted.curve().isEmpty()) {
      parts.add(curve(plotted));
    }
    plotted.points().ifPresent(cloud -> parts.addAll(points(cloud)));
    return String.join(" ", parts);
  }

  private static String logs(DataResult.Plotted plotted) {
    if (plotted.logs().x() && plotted.logs().y()) {
      return "Both axes are logarithmic; there a power law is a straight line.";
    }
    return plotted.logs().y()
        ? "The upright axis is logarithmic; there an exponential is a straight line."
        : "The lower axis is logarithmic.";
  }

  private String curve(DataResult.Plotted plotted) {
    List<DataResult.Step> curve = plotted.curve();
    int last = curve.size() - 1;
    String places =
        IntStream.range(0, PLACES_OF_A_CURVE)
            .map(i -> Math.round((float) last * i / (PLACES_OF_A_CURVE - 1)))
            .distinct()
            .mapToObj(i -> "(%s, %s)".formatted(number(curve.get(i).x()), number(curve.get(i).y())))
            .collect(Collectors.joining(" "));
    return "The curve goes through %s.".formatted(places);
  }
}
