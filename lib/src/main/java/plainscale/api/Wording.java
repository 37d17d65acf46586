package plainscale.api;

import java.util.List;
import plainscale.sheet.Result;

/**
 * A value in the form that is asked for: a unit, a number of figures, full digits, words in a
 * language or a scale, roughly, as a share, or its order of magnitude.
 *
 * <pre>{@code
 * Wording n = show(quantity("8.68e12"));
 * check(n.inWords().phrase().equals("8.68 trillion"));
 * check(n.inWords("de").phrase().equals("8,68 Billionen"));
 * check(n.roughly().phrase().equals("nearly 9 trillion"));
 * check(n.figures(1).text().equals("9 × 10¹²"));
 * }</pre>
 */
public final class Wording implements Displayed {
  private final Situation situation;
  private final String formula;
  private final boolean labelled;
  private final String form;

  private Wording(Situation situation, String formula, boolean labelled, String form) {
    this.situation = situation;
    this.formula = formula;
    this.labelled = labelled;
    this.form = form;
  }

  static Wording of(Situation situation, String formula) {
    return new Wording(situation, formula, true, "");
  }

  static Wording ofValue(Situation situation, String name) {
    return new Wording(situation, name, false, "");
  }

  private Wording with(String more) {
    return new Wording(situation, formula, labelled, form + " " + more);
  }

  /** In a unit. */
  public Wording in(String unit) {
    return with("in " + unit);
  }

  /** To so many figures, whatever the inputs justify. */
  public Wording figures(int figures) {
    return with("to " + figures + (figures == 1 ? " figure" : " figures"));
  }

  /** In full digits. */
  public Wording inDigits() {
    return with("in digits");
  }

  /** In words, with digits before them. */
  public Wording inWords() {
    return with("in words");
  }

  /** In words of a language ({@code de}) or a scale ({@code long}), or both in that order. */
  public Wording inWords(String languageOrScale) {
    return with("in words " + languageOrScale);
  }

  /** In words only. */
  public Wording inFullWords() {
    return with("in full words");
  }

  /** In words only, of a language, a scale, or both. */
  public Wording inFullWords(String languageOrScale) {
    return with("in full words " + languageOrScale);
  }

  /** As a round number. */
  public Wording roughly() {
    return with("roughly");
  }

  /** A plain number as a share: per cent, parts per million, one part in so many. */
  public Wording inParts() {
    return with("in parts");
  }

  /** As an order of magnitude. */
  public Wording inOrders() {
    return with("in orders");
  }

  /** As it stands in a sentence. */
  public String phrase() {
    return situation.say("{" + formula + form + "}").text();
  }

  @Override
  public List<Result> results() {
    String statement = (labelled ? "show " : "") + formula + form;
    List<Result> results = situation.ask(statement, Result.class).results();
    return labelled ? results : Unlabelled.of(results);
  }

  @Override
  public String toString() {
    return Displays.text(this);
  }
}
