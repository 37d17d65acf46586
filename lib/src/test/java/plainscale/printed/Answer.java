package plainscale.printed;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * One printed answer: the name that holds it in the cell and the amount as printed, whose figures
 * are those that stand there. The note, if there is one, says why the printed number is not what
 * the example's own data give.
 */
record Answer(String name, Amount printed, Optional<Note> note) {

  /** A number and its unit as text; the unit of plain numbers is empty. */
  record Amount(BigDecimal number, String unit) {
    /** Reads {@code NUMBER UNIT}. */
    static Amount of(String text) {
      String[] parts = text.strip().split(" ", 2);
      return new Amount(new BigDecimal(parts[0]), parts.length > 1 ? parts[1].strip() : "");
    }

    @Override
    public String toString() {
      return unit.isEmpty() ? number.toString() : number + " " + unit;
    }
  }

  /** What the data really give, computed elsewhere with more figures, and the reason. */
  record Note(Amount recomputed, String reason) {}

  /** The same answer with a note. */
  Answer with(Note reason) {
    return new Answer(name, printed, Optional.of(reason));
  }

  /** The same answer without its note. */
  Answer withoutNote() {
    return new Answer(name, printed, Optional.empty());
  }

  @Override
  public String toString() {
    return name + " = " + printed;
  }
}
