package plainscale.api;

import plainscale.quantity.Quantity;
import plainscale.sheet.Result;

/** A statement in the making; quantities of the program enter it under names of their own. */
final class Phrase {
  private Situation situation;

  Phrase(Situation situation) {
    this.situation = situation;
  }

  /** The name of a quantity in the statement. */
  String name(Quantity quantity) {
    String name = situation.freeName("value_");
    situation = situation.givenAside(name, quantity);
    return name;
  }

  /** The situation with the quantities that have entered. */
  Situation situation() {
    return situation;
  }

  <R extends Result> Answer<R> ask(String statement, Class<R> kind) {
    return situation.ask(statement, kind);
  }
}
