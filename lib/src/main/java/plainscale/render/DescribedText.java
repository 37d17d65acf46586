package plainscale.render;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plainscale.data.Agreement;
import plainscale.data.Outliers;
import plainscale.magnitude.Writing;
import plainscale.quantity.Shown;
import plainscale.sheet.DataResult;

/** What there is to say about the statistics of a column. */
final class DescribedText {
  private static final double UNLIKELY = 0.05;

  private final DataResult.Described described;
  private final Writing writing;

  DescribedText(DataResult.Described described) {
    this.described = described;
    this.writing = described.writing();
  }

  List<String> sentences() {
    List<String> lines = new ArrayList<>();
    DataWords.leftOut(described.left(), writing).ifPresent(lines::add);
    boolean three = described.count() > 2;
    if (three) {
      described.far().forEach(far -> lines.add(far(far)));
    }
    if (three && described.far().stream().anyMatch(far -> far.count() > 0)) {
      lines.add("No value is left out for that; that needs a reason in the experiment.");
    }
    described.weighted().ifPresent(weighted -> lines.addAll(weighted(weighted)));
    described.beside().ifPresent(beside -> lines.addAll(beside(beside)));
    return lines;
  }

  private String far(DataResult.Far far) {
    String rule =
        far.rule() == Outliers.Rule.TUKEY
            ? "Beyond 1.5 times the distance of the quartiles (Tukey), below %s or above %s, "
            : "So far out that of as many values less than half a one would be (Chauvenet), below %s or above %s, ";
    String limits = rule.formatted(number(far.low()), number(far.high()));
    if (far.count() == 0) {
      return limits + "lies no value.";
    }
    String rows =
        far.first().stream()
            .map(value -> "row %d (%s)".formatted(value.row(), number(value.value())))
            .collect(Collectors.joining(", "));
    int more = far.count() - far.first().size();
    String rest = more == 0 ? "" : " and " + DataSections.whole(more, writing) + " more";
    return limits + (far.count() == 1 ? "lies " : "lie ") + rows + rest + ".";
  }

  private String number(Shown shown) {
    return ValueText.number(shown, writing);
  }

  private List<String> weighted(DataResult.Weighted weighted) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Each value weighted by its own uncertainty (1/u²), the mean is %s."
            .formatted(number(weighted.mean())));
    boolean scatters =
        weighted.birge().orElse(0) > 1 && weighted.probability().orElse(1) < UNLIKELY;
    if (weighted.birge().isPresent()) {
      String ratio = DataWords.number(weighted.birge().getAsDouble(), 2, writing);
      lines.add(
          scatters
              ? "The values scatter %s times as much as their uncertainties say (Birge ratio); with the scatter it is %s."
                  .formatted(ratio, number(weighted.widened()))
              : "Scatter and uncertainties go together (Birge ratio %s).".formatted(ratio));
    }
    return lines;
  }

  private List<String> beside(DataResult.Beside beside) {
    List<String> lines = new ArrayList<>();
    String named = beside.name().isEmpty() ? "" : beside.name() + " = ";
    String verdict =
        switch (beside.verdict()) {
          case AGREES -> "they agree";
          case DOUBTFUL -> "whether they agree is doubtful";
          case DISAGREES -> "they do not agree";
          case UNKNOWN -> "no uncertainty tells whether that is much";
        };
    String reference = named + number(beside.reference());
    String scores =
        beside.zeta().isEmpty()
            ? ""
            : "; ζ = %s, E_n = %s"
                .formatted(
                    DataWords.number(beside.zeta().getAsDouble(), 2, writing),
                    DataWords.number(beside.normalizedError().orElseThrow(), 2, writing));
    lines.add(
        "The mean less the reference value (%s) is %s%s: %s."
            .formatted(reference, number(beside.difference()), scores, verdict));
    if (beside.verdict() != Agreement.Verdict.UNKNOWN) {
      lines.add(
          "ζ is the difference over its standard uncertainty: up to 2 they agree, from 3 on they do not (ISO 13528).");
    }
    lines.addAll(scores(beside.scores()));
    return lines;
  }

  private List<String> scores(DataResult.Scores scores) {
    int all = scores.agree() + scores.others().size() + scores.more();
    if (all == 0) {
      return List.of();
    }
    String rows =
        scores.others().stream()
            .map(s -> "row %d (%s)".formatted(s.row(), DataWords.number(s.z(), 2, writing)))
            .collect(Collectors.joining(", "));
    String rest =
        scores.more() == 0 ? "" : " and " + DataSections.whole(scores.more(), writing) + " more";
    String others = rows.isEmpty() ? "" : "; further away: " + rows + rest;
    return List.of(
        "Of the single results %s of %s lie within two standard deviations of the reference value%s."
            .formatted(
                DataSections.whole(scores.agree(), writing),
                DataSections.whole(all, writing),
                others));
  }
}
