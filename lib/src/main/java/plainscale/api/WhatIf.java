package plainscale.api;

import java.util.ArrayList;
import java.util.List;
import plainscale.quantity.Quantity;
import plainscale.sheet.Result;

/**
 * Results before and after some names are changed, which of them stay, and why. If a derived
 * unknown is changed, its relations are turned round for what is asked for.
 *
 * <pre>{@code
 * WhatIf twice = given("l", "1.00 m").define("T", "2 π sqrt(l/g_n)").whatIf("l", "2*l");
 * check(twice.result().rows().size() == 2);
 * check(twice.show("T").text().contains("× 1.41"));
 * }</pre>
 */
public final class WhatIf implements Displayed {
  private final Situation situation;
  private final List<String> changes;
  private final List<String> shown;

  private WhatIf(Situation situation, List<String> changes, List<String> shown) {
    this.situation = situation;
    this.changes = List.copyOf(changes);
    this.shown = List.copyOf(shown);
  }

  static WhatIf of(Situation situation) {
    return new WhatIf(situation, List.of(), List.of());
  }

  private WhatIf changing(String change) {
    List<String> all = new ArrayList<>(changes);
    all.add(change);
    return new WhatIf(situation, all, shown);
  }

  /** And a name is what a formula says, in which it may stand itself: {@code and("d", "2*d")}. */
  public WhatIf and(String name, String formula) {
    return changing(name + " = " + formula);
  }

  /** And a name has another value; what counts is the value itself. */
  public WhatIf and(String name, Quantity value) {
    return changing(name + " = " + Operand.of(value).written());
  }

  /** And a relation says something else. */
  public WhatIf andRelation(String name, String equation) {
    return changing(name + ": " + equation);
  }

  /** Only these names or formulas, in place of all that is computed. */
  public WhatIf show(String... formulas) {
    return new WhatIf(situation, changes, List.of(formulas));
  }

  /** The answer of the sheet. */
  public Answer<Result.Compared> answer() {
    String statement =
        "what if " + String.join(", ", changes) + Written.clause("show", String.join(", ", shown));
    return situation.ask(statement, Result.Compared.class);
  }

  /** The result as data. */
  public Result.Compared result() {
    return answer().result();
  }

  @Override
  public List<Result> results() {
    return answer().results();
  }

  @Override
  public String toString() {
    return Displays.text(this);
  }
}
