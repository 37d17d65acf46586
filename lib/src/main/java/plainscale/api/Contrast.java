package plainscale.api;

import java.util.List;
import plainscale.magnitude.Ratio;
import plainscale.sheet.Result;

/**
 * Two to six quantities of one kind set against each other: in full digits on one decimal point, in
 * words, and by the ratio of the largest to the smallest.
 *
 * <pre>{@code
 * Contrast electrons = contrast(quantity("4.19e11"), quantity("8.13e23"));
 * check(electrons.text().contains("about 12 orders of magnitude"));
 * check(electrons.by("counting").text().contains("counting"));
 * }</pre>
 */
public final class Contrast implements Displayed {
  private final Situation situation;
  private final List<String> sides;
  private final String unit;
  private final String rule;
  private final String title;
  private final boolean labelled;

  private Contrast(
      Situation situation,
      List<String> sides,
      String unit,
      String rule,
      String title,
      boolean labelled) {
    this.situation = situation;
    this.sides = List.copyOf(sides);
    this.unit = unit;
    this.rule = rule;
    this.title = title;
    this.labelled = labelled;
  }

  static Contrast of(Situation situation, List<String> sides) {
    return new Contrast(situation, sides, "", "", "", true);
  }

  Contrast unlabelled() {
    return new Contrast(situation, sides, unit, rule, title, false);
  }

  /** The same with all of them in one unit. */
  public Contrast in(String other) {
    return new Contrast(situation, sides, other, rule, title, labelled);
  }

  /**
   * The same with another rule for the line of perspective: {@code counting}, {@code length},
   * {@code sharing} or {@code pages}.
   */
  public Contrast by(String other) {
    return new Contrast(situation, sides, unit, other, title, labelled);
  }

  /** The same with a title. */
  public Contrast titled(String other) {
    return new Contrast(situation, sides, unit, rule, other, labelled);
  }

  /** The answer of the sheet. */
  public Answer<Result.Contrasted> answer() {
    String statement =
        "contrast "
            + String.join(" with ", sides)
            + Written.clause("in", unit)
            + Written.clause("by", rule)
            + Written.after(title);
    Answer<Result.Contrasted> answer = situation.ask(statement, Result.Contrasted.class);
    return labelled ? answer : answer.unlabelled();
  }

  /** The result as data. */
  public Result.Contrasted result() {
    return answer().result();
  }

  /** The largest over the smallest. */
  public Ratio ratio() {
    return result().ratio();
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
