package plainscale.api;

import java.util.List;
import plainscale.quantity.Quantity;
import plainscale.sheet.FieldResult;
import plainscale.sheet.Result;

/**
 * A body that is released in a field, at rest unless it is said to be moving: its way, and its
 * energies at the moments that matter. It is integrated from the force alone, so that the sum of
 * the energies checks it.
 *
 * <pre>{@code
 * Release fall = field("earth").sphere("5.97e24 kg", "6371 km", at("0 km", "0 km"))
 *     .release("1 kg", at("10000 km", "0 km")).moving(at("0 km/s", "7.0 km/s"));
 * check(Math.abs(fall.result().period().getAsDouble() - 1.472e4) < 10);
 * }</pre>
 */
public final class Release implements Displayed {
  private final Situation situation;
  private final String field;
  private final String charge;
  private final String body;
  private final String moving;
  private final String during;

  private Release(
      Situation situation, String field, String charge, String body, String moving, String during) {
    this.situation = situation;
    this.field = field;
    this.charge = charge;
    this.body = body;
    this.moving = moving;
    this.during = during;
  }

  static Release of(Situation situation, String field, Operand mass, At at) {
    Phrase phrase = new Phrase(situation);
    String body = " mass " + mass.in(phrase) + " at " + at.in(phrase);
    return new Release(phrase.situation(), field, "", body, "", "");
  }

  /** The same with a charge. */
  public Release charged(Quantity amount) {
    return charged(Operand.of(amount));
  }

  /** The same with a charge. */
  public Release charged(String amount) {
    return charged(Operand.of(amount));
  }

  private Release charged(Operand amount) {
    Phrase phrase = new Phrase(situation);
    String said = " charge " + amount.in(phrase);
    return new Release(phrase.situation(), field, said, body, moving, during);
  }

  /** The same with a velocity at the start. */
  public Release moving(At velocity) {
    Phrase phrase = new Phrase(situation);
    String said = " moving " + velocity.in(phrase);
    return new Release(phrase.situation(), field, charge, body, said, during);
  }

  /** The same, followed for that time. */
  public Release during(String time) {
    return new Release(situation, field, charge, body, moving, " for " + time);
  }

  /** The same, followed for that time. */
  public Release during(Quantity time) {
    return during(Operand.of(time).written());
  }

  /** The answer of the sheet. */
  public Answer<FieldResult.Released> answer() {
    String statement = "release" + charge + body + moving + " in " + field + during;
    return situation.ask(statement, FieldResult.Released.class);
  }

  /** The result as data: the way, the energies, the period if it comes back. */
  public FieldResult.Released result() {
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
