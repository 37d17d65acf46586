package plainscale.data;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Each result of a class beside the teacher's value: the z score of ISO 13528 (clause 9.4, from
 * memory), the difference over a spread that is the same for all.
 *
 * @param reference the teacher's value, in the unit of the column
 * @param spread what is one unit of the score, such as the standard deviation of the class
 * @param scores one for each value
 */
public record ClassScores(BigDecimal reference, double spread, List<Score> scores) {

  /** One result: its row, its value, what it differs, its score and what that says. */
  public record Score(
      int row,
      BigDecimal value,
      BigDecimal difference,
      OptionalDouble z,
      Agreement.Verdict verdict) {}

  /** Keeps its own copy. */
  public ClassScores {
    scores = List.copyOf(scores);
  }

  /** With the standard deviation of the class itself as the spread. */
  public static ClassScores of(Statistics of, BigDecimal reference) {
    return of(of.sample(), reference, of.deviation().orElse(0));
  }

  /** With a spread that was fixed beforehand; with none (0) there are differences only. */
  public static ClassScores of(Sample sample, BigDecimal reference, double spread) {
    List<Score> scores =
        IntStream.range(0, sample.count())
            .mapToObj(i -> score(sample.row(i), sample.value(i), reference, spread))
            .toList();
    return new ClassScores(reference, spread, scores);
  }

  private static Score score(int row, BigDecimal value, BigDecimal reference, double spread) {
    BigDecimal difference = value.subtract(reference);
    if (!(spread > 0)) {
      return new Score(row, value, difference, OptionalDouble.empty(), Agreement.Verdict.UNKNOWN);
    }
    double z = difference.doubleValue() / spread;
    return new Score(row, value, difference, OptionalDouble.of(z), Agreement.Verdict.of(z));
  }
}
