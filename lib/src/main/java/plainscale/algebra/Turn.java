package plainscale.algebra;

import java.util.List;

/** What a move made of a line: the next line, or the end. */
sealed interface Turn {

  /** The line to go on with, and those that would have been as right. */
  record Next(Line line, List<Alternative> alternatives) implements Turn {
    static Next of(Line line) {
      return new Next(line, List.of());
    }
  }

  /**
   * Another line that follows too, and why it is not the one taken; empty if nothing tells. A sign
   * alone is a weaker reason than others.
   */
  record Alternative(Line line, String why, boolean onlyBySign) {
    Alternative(Line line, String why) {
      this(line, why, false);
    }

    static Alternative negative(Line line, String what) {
      return new Alternative(line, what + " would be negative.", true);
    }
  }

  /** There is nothing to go on with. */
  record End(Kind kind, String why) implements Turn {}

  /** Why there is nothing to go on with. */
  enum Kind {
    DONE,
    STUCK,
    DROPPED,
    CONTRADICTION,
    NOT_REAL
  }
}
