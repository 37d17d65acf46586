package plainscale.api;

import java.util.ArrayList;
import java.util.List;
import plainscale.sheet.Result;

/**
 * Several cases side by side: what is changed in each, and what follows.
 *
 * <pre>{@code
 * SideBySide throwing = given("v", "12 m/s").define("h", "v^2/(2 g_n)")
 *     .compare("on Earth").with("twice as fast", "v = 2*v").show("h");
 * check(throwing.text().contains("twice as fast"));
 * }</pre>
 */
public final class SideBySide implements Displayed {
  private final Situation situation;
  private final List<String> cases;
  private final List<String> shown;

  private SideBySide(Situation situation, List<String> cases, List<String> shown) {
    this.situation = situation;
    this.cases = List.copyOf(cases);
    this.shown = List.copyOf(shown);
  }

  static SideBySide of(Situation situation, String first) {
    return new SideBySide(situation, List.of(Written.quoted(first)), List.of());
  }

  /** And a case with these changes, each as {@code "m = 2*m"} or {@code "level: … = …"}. */
  public SideBySide with(String name, String... changes) {
    String said = changes.length == 0 ? "" : ": " + String.join(", ", changes);
    List<String> all = new ArrayList<>(cases);
    all.add(Written.quoted(name) + said);
    return new SideBySide(situation, all, shown);
  }

  /** Only these names or formulas, each as {@code "q in nC"}. */
  public SideBySide show(String... formulas) {
    return new SideBySide(situation, cases, List.of(formulas));
  }

  /** The answer of the sheet. */
  public Answer<Result.SideBySide> answer() {
    String statement =
        "compare "
            + String.join(" with ", cases)
            + Written.clause("show", String.join(", ", shown));
    return situation.ask(statement, Result.SideBySide.class);
  }

  /** The result as data. */
  public Result.SideBySide result() {
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
