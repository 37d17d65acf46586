package plainscale.api;

import java.util.ArrayList;
import java.util.List;
import plainscale.laws.Law;
import plainscale.laws.Laws;
import plainscale.sheet.Result;

/**
 * A law of physics as a relation, with names or formulas in place of its symbols: what each symbol
 * is, its unit, when the law holds and where it is published.
 *
 * <pre>{@code
 * LawUse swing = law("pendulum").with("T", "T_s").with("l", "s").as("swing");
 * Solution period = swing.solveFor("T_s").with("s", "0.750(2) m");
 * check(period.value().toString().equals("(1.7376 ± 0.0023) s"));
 * }</pre>
 */
public final class LawUse implements Displayed {
  private final String law;
  private final String own;
  private final List<String> replaced;
  private final String what;

  private LawUse(String law, String own, List<String> replaced, String what) {
    this.law = law;
    this.own = own;
    this.replaced = List.copyOf(replaced);
    this.what = what;
  }

  static LawUse of(String law) {
    LawUse use = new LawUse(law, law, List.of(), "");
    use.results(); // an unknown law is told here
    return use;
  }

  /** With a name or a formula in place of a symbol. */
  public LawUse with(String symbol, String formula) {
    List<String> all = new ArrayList<>(replaced);
    all.add(symbol + " = " + formula);
    return new LawUse(law, own, all, what);
  }

  /** With another name for the relation. */
  public LawUse as(String name) {
    return new LawUse(law, name, replaced, what);
  }

  /** With what it says here in words. */
  public LawUse described(String words) {
    return new LawUse(law, own, replaced, words);
  }

  /** The row of the table of laws. */
  public Law law() {
    return Laws.find(law).orElseThrow();
  }

  /** The situation that has only this relation, to go on with. */
  public Situation situation() {
    return Situation.NOTHING.use(this);
  }

  /** Solves it for an unknown. */
  public Solution solveFor(String unknown) {
    return situation().solveFor(unknown);
  }

  String relation() {
    return own;
  }

  String statement() {
    String as = own.equals(law) ? "" : own;
    return "use "
        + law
        + Written.clause("as", as)
        + Written.clause("with", String.join(", ", replaced))
        + Written.after(what);
  }

  @Override
  public List<Result> results() {
    return situation().results();
  }

  @Override
  public String toString() {
    return Displays.text(this);
  }
}
