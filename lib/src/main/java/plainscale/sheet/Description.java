package plainscale.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plainscale.data.Agreement;
import plainscale.data.ClassScores;
import plainscale.data.NumberColumn;
import plainscale.data.Outliers;
import plainscale.data.Sample;
import plainscale.data.Statistics;
import plainscale.data.WeightedMean;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.units.Kinds;
import plainscale.units.UnitOfMeasure;

/** The statistics of a column as a result. */
final class Description {
  private static final int MOST_ROWS = 20;

  /** Quartiles divide the way between two values into quarters. */
  private static final int QUARTERS = 2;

  private final DataValues.Found found;
  private final Showing showing;
  private final Statistics statistics;
  private final UnitOfMeasure unit;

  Description(DataValues.Found found, Showing showing) {
    this.found = found;
    this.showing = showing;
    this.statistics = found.table().statistics(found.numbers());
    this.unit = found.numbers().unit();
  }

  /** Alone, or beside a reference value that may have a name. */
  DataResult described(@Nullable Quantity reference, String name) {
    return new DataResult.Described(
        found.numbers().name(),
        statistics.count(),
        Cloud.left(found.numbers()),
        entries(),
        List.of(far(Outliers.tukey(statistics)), far(Outliers.chauvenet(statistics))),
        weighted().orElse(null),
        reference == null ? null : beside(reference, name),
        showing.writing());
  }

  private List<DataResult.Entry> entries() {
    return List.of(
        entry(DataResult.Measure.MEAN, statistics.quantity().shown()),
        spread(DataResult.Measure.DEVIATION, statistics.deviation()),
        spread(DataResult.Measure.STANDARD, statistics.standard()),
        entry(DataResult.Measure.SMALLEST, asWritten(statistics.smallest())),
        entry(DataResult.Measure.LOWER_QUARTILE, between(statistics.lowerQuartile(), QUARTERS)),
        entry(DataResult.Measure.MEDIAN, between(statistics.median(), QUARTERS)),
        entry(DataResult.Measure.UPPER_QUARTILE, between(statistics.upperQuartile(), QUARTERS)),
        entry(DataResult.Measure.LARGEST, asWritten(statistics.largest())));
  }

  private static DataResult.Entry entry(DataResult.Measure measure, Shown value) {
    return new DataResult.Entry(measure, Optional.of(value));
  }

  private DataResult.Entry spread(DataResult.Measure measure, OptionalDouble value) {
    return new DataResult.Entry(
        measure,
        value.isEmpty() ? Optional.empty() : Optional.of(doubt(value.getAsDouble(), unit)));
  }

  /** A difference of readings; on a scale with its own zero it is in the unit of amounts. */
  static Shown doubt(double inUnit, UnitOfMeasure unit) {
    UnitOfMeasure amount = unit.isScale() ? Kinds.of(unit.kind()).unit() : unit;
    return Shown.doubt(inUnit * Math.abs(unit.factor().doubleValue()), amount);
  }

  private Shown asWritten(BigDecimal value) {
    return new Shown(value, null, unit);
  }

  /** What lies between two values has so many places more than they have, if it needs them. */
  private Shown between(double value, int more) {
    int places = Math.max(statistics.smallest().scale(), statistics.largest().scale());
    BigDecimal rounded =
        new BigDecimal(value).setScale(places + more, RoundingMode.HALF_EVEN).stripTrailingZeros();
    return asWritten(rounded.scale() < places ? rounded.setScale(places) : rounded);
  }

  private DataResult.Far far(Outliers outliers) {
    return new DataResult.Far(
        outliers.rule(),
        limit(outliers.low()),
        limit(outliers.high()),
        outliers.found().size(),
        outliers.found().stream()
            .limit(MOST_ROWS)
            .map(o -> new DataResult.InRow(o.row(), asWritten(o.value())))
            .toList());
  }

  private Shown limit(double value) {
    return Double.isInfinite(value) ? asWritten(statistics.mean()) : between(value, 1);
  }

  /** Only where every value has an uncertainty of its own. */
  private Optional<DataResult.Weighted> weighted() {
    NumberColumn column = found.numbers();
    boolean all =
        column.uncertainties().count() > 0
            && IntStream.rangeClosed(1, column.rows())
                .filter(column::has)
                .allMatch(row -> column.uncertainty(row).filter(u -> u.signum() > 0).isPresent());
    return all ? Optional.of(weighted(WeightedMean.of(Sample.of(column)))) : Optional.empty();
  }

  private static DataResult.Weighted weighted(WeightedMean mean) {
    return new DataResult.Weighted(
        mean.quantity().shown(),
        mean.widened().shown(),
        mean.chiSquare().birge(),
        mean.chiSquare().probability());
  }

  private DataResult.Beside beside(Quantity reference, String name) {
    Agreement agreement = Agreement.of(statistics.quantity(), reference);
    ClassScores scores = ClassScores.of(statistics, unit.fromCoherent(reference.value()));
    return new DataResult.Beside(
        name,
        reference.shown(),
        agreement.difference().shown(),
        agreement.zeta(),
        agreement.normalizedError(),
        agreement.verdict(),
        scores(scores));
  }

  private static DataResult.Scores scores(ClassScores scores) {
    int agree = (int) scored(scores, true).count();
    List<DataResult.Score> others =
        scored(scores, false)
            .limit(MOST_ROWS)
            .map(score -> new DataResult.Score(score.row(), score.z().orElseThrow()))
            .toList();
    int more = (int) scored(scores, false).count() - others.size();
    return new DataResult.Scores(agree, others, more);
  }

  private static Stream<ClassScores.Score> scored(ClassScores scores, boolean agree) {
    return scores.scores().stream()
        .filter(score -> score.z().isPresent())
        .filter(score -> (score.verdict() == Agreement.Verdict.AGREES) == agree);
  }
}
