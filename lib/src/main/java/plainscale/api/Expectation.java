package plainscale.api;

import plainscale.quantity.Quantity;
import plainscale.sheet.GuardResult;

/**
 * Where a value should lie, and why. What the uncertainty leaves open counts as inside; outside,
 * the usual slips are tried on what the value hangs on.
 *
 * <pre>{@code
 * Situation drop = given("h", "1.25 km").define("t", "sqrt(2*h/g_n)");
 * GuardResult.Expected told = drop.expect("t").because("from a table").below("1 s").result();
 * check(told.verdict() == GuardResult.Verdict.OUTSIDE);
 * }</pre>
 */
public final class Expectation {
  private final Situation situation;
  private final String formula;
  private final String why;

  private Expectation(Situation situation, String formula, String why) {
    this.situation = situation;
    this.formula = formula;
    this.why = why;
  }

  static Expectation of(Situation situation, String formula) {
    return new Expectation(situation, formula, "");
  }

  /** The same with the reason. */
  public Expectation because(String reason) {
    return new Expectation(situation, formula, reason);
  }

  /** Between two values, as {@code between("1 nC", "100 nC")}. */
  public Answer<GuardResult.Expected> between(String low, String high) {
    return ask("between " + low + " and " + high);
  }

  /** Between two values. */
  public Answer<GuardResult.Expected> between(Quantity low, Quantity high) {
    return between(Operand.of(low).written(), Operand.of(high).written());
  }

  /** Below a value. */
  public Answer<GuardResult.Expected> below(String limit) {
    return ask("below " + limit);
  }

  /** Below a value. */
  public Answer<GuardResult.Expected> below(Quantity limit) {
    return below(Operand.of(limit).written());
  }

  /** Above a value. */
  public Answer<GuardResult.Expected> above(String limit) {
    return ask("above " + limit);
  }

  /** Above a value. */
  public Answer<GuardResult.Expected> above(Quantity limit) {
    return above(Operand.of(limit).written());
  }

  /** Within a share or an amount of a value, as {@code about("50 nC", "20 %")}. */
  public Answer<GuardResult.Expected> about(String middle, String within) {
    return ask("about " + middle + " within " + within);
  }

  /** Within an amount of a value. */
  public Answer<GuardResult.Expected> about(Quantity middle, Quantity within) {
    return about(Operand.of(middle).written(), Operand.of(within).written());
  }

  @Override
  public String toString() {
    return "Where " + formula + " should lie is still to be said: between, below, above or about.";
  }

  private Answer<GuardResult.Expected> ask(String range) {
    return situation.ask(
        "expect " + formula + " " + range + Written.after(why), GuardResult.Expected.class);
  }
}
