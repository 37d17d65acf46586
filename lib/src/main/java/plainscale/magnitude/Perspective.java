package plainscale.magnitude;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import plainscale.table.Table;

/**
 * One line that makes a large count graspable, from the rules in perspectives.tsv: 8.7E+12 gives
 * "counting one each second would take about 280 thousand years". {@code source} is where the
 * yardstick's value was published.
 */
public record Perspective(Rule rule, BigDecimal times, String phrase, String source) {

  /** What the count is turned into. */
  public enum Rule {
    /** The time to count one each second. */
    COUNTING,
    /** The length of a row of so many things of one millimetre. */
    LENGTH,
    /** The share of each person alive. */
    SHARING,
    /** The paper that as many dots would fill. */
    PAGES
  }

  private static final int MOST_FIGURES = 3;
  private static final BigDecimal FEWEST_TIMES = BigDecimal.valueOf(2);
  private static final BigDecimal MOST_TIMES = BigDecimal.TEN.pow(6);
  private static final BigDecimal SHORT_IN_DIGITS = BigDecimal.TEN.pow(4);

  /** A row of the table: how many things make one of the yardstick, and the sentence. */
  private record Yardstick(Rule rule, BigDecimal size, String phrase, String source) {

    boolean suits(BigDecimal count) {
      return isPassed(count) && count.compareTo(size.multiply(MOST_TIMES)) < 0;
    }

    boolean isPassed(BigDecimal count) {
      return count.compareTo(size.multiply(FEWEST_TIMES)) >= 0;
    }

    Perspective of(BigDecimal count, int figures) {
      BigDecimal times = Figures.quotient(count, size, Math.min(MOST_FIGURES, figures));
      return new Perspective(rule, times, phrase, source);
    }
  }

  private static final List<Yardstick> TABLE =
      Table.read(Perspective.class, "perspectives.tsv").stream()
          .map(Perspective::yardstick)
          .toList();

  /** The first rule that turns the count into a number from 2 to a million, to three figures. */
  public static Optional<Perspective> of(BigDecimal count) {
    return of(count, count.precision());
  }

  /** The same for a count that is not rounded yet and has so many figures. */
  public static Optional<Perspective> of(BigDecimal count, int figures) {
    return Arrays.stream(Rule.values())
        .flatMap(rule -> yardsticks(rule).filter(y -> y.suits(count)))
        .findFirst()
        .map(y -> y.of(count, figures));
  }

  /** The line that a rule gives when it is asked for, for a rounded count. */
  public static Optional<Perspective> of(BigDecimal count, Rule rule) {
    return of(count, count.precision(), rule);
  }

  /**
   * The line that a rule gives when it is asked for: by the first yardstick that suits, else by the
   * largest, even if that is more than a million times too small. None for less than two of them.
   */
  public static Optional<Perspective> of(BigDecimal count, int figures, Rule rule) {
    return yardsticks(rule)
        .filter(y -> y.suits(count))
        .findFirst()
        .or(() -> yardsticks(rule).filter(y -> y.isPassed(count)).findFirst())
        .map(y -> y.of(count, figures));
  }

  private static Stream<Yardstick> yardsticks(Rule rule) {
    return TABLE.stream().filter(y -> y.rule() == rule);
  }

  /**
   * The line in a reader's words: "counting one each second would take about 280 thousand years".
   */
  public String text(Words words) {
    boolean few = times.compareTo(SHORT_IN_DIGITS) < 0;
    String number = few ? words.digits(times).text() : words.mixed(times).text();
    return Phrases.of(words.language()).say(phrase, number, Agreement.of(number, times, words));
  }

  private static Yardstick yardstick(Table.Row row) {
    return new Yardstick(
        Rule.valueOf(row.get("rule").toUpperCase(Locale.ROOT)),
        new BigDecimal(row.get("size")),
        row.get("phrase"),
        row.get("source"));
  }
}
