package plainscale.sheet;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plainscale.algebra.Compiled;
import plainscale.algebra.Cost;
import plainscale.algebra.Trials;
import plainscale.notation.Problem;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.units.UnitOfMeasure;

/** Trials of a quantity beside its linear result. */
final class Drawing {
  /** 95 % of a normal distribution lie within so many standard uncertainties. */
  private static final double COVERAGE_FACTOR = 1.959963984540054;

  /** A shortest interval is told of if it is this much shorter. */
  private static final double CLEARLY = 0.95;

  /** A difference of so many standard deviations is one. */
  private static final int SURE = 3;

  /** Figures of a mean whose trials are all the same. */
  private static final int FIGURES = 6;

  private final Showing showing;
  private final Quantity value;
  private final UnitOfMeasure unit;

  Drawing(Showing showing, Quantity value, UnitOfMeasure unit) {
    this.showing = showing;
    this.value = value;
    this.unit = unit;
  }

  Account.Drawn drawn(Compiled compiled, Statement.Trials plan, Cost cost) {
    Trials trials = Trials.run(compiled, new Trials.Plan(plan.count(), plan.seed()), cost);
    if (trials.count() < Statement.Trials.FEWEST) {
      String sentence =
          "Of the trials only %d have a value; the others have none, such as the root of a negative"
              + " number.";
      List<String> repairs = List.of("measure better, or take more trials");
      throw showing.problem(
          Problem.Kind.VALUE, sentence.formatted(trials.count()), cost.span(), repairs);
    }
    Shown mean = Shown.estimate(trials.mean(), standard(trials), unit, FIGURES);
    Trials.Interval symmetric = trials.symmetric();
    Trials.Interval linear = linear();
    return new Account.Drawn(
        plan.count(),
        plan.seed(),
        trials.without(),
        mean,
        ends(symmetric, mean),
        shorter(trials, symmetric, mean),
        ends(linear, mean),
        verdict(trials, symmetric, linear));
  }

  private static double standard(Trials trials) {
    double standard = trials.standard();
    return standard < Budgeting.DUST * Math.abs(trials.mean()) ? 0 : standard;
  }

  private Trials.Interval linear() {
    double estimate = value.value().doubleValue();
    double reach = COVERAGE_FACTOR * value.uncertainty().standard();
    return new Trials.Interval(estimate - reach, estimate + reach);
  }

  private static Account.Ends ends(Trials.Interval interval, Shown like) {
    return new Account.Ends(like.toSamePlace(interval.low()), like.toSamePlace(interval.high()));
  }

  private static Account.@Nullable Ends shorter(
      Trials trials, Trials.Interval symmetric, Shown mean) {
    Trials.Interval shortest = trials.shortest();
    return shortest.width() < CLEARLY * symmetric.width() ? ends(shortest, mean) : null;
  }

  /**
   * The ends are compared within half of the last digit that is shown of the standard uncertainty
   * (JCGM 101:2008, 7.9.2 and 8.1); how much they scatter from one run of trials to the next says
   * whether the comparison means anything.
   */
  private Account.Verdict verdict(Trials trials, Trials.Interval drawn, Trials.Interval linear) {
    double u = value.uncertainty().standard();
    double tolerance = Shown.halfStep(u > 0 ? u : standard(trials), unit);
    double off =
        Math.max(Math.abs(drawn.low() - linear.low()), Math.abs(drawn.high() - linear.high()));
    if (off > tolerance + SURE * trials.scatter()) {
      return Account.Verdict.DISAGREE;
    }
    return off <= tolerance && trials.scatter() <= tolerance
        ? Account.Verdict.AGREE
        : Account.Verdict.UNDECIDED;
  }
}
