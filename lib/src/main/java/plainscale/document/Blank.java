package plainscale.document;

import java.util.Locale;
import java.util.Optional;

/**
 * How much of a cell an edition leaves to be filled in; each leaves at least what the last does.
 */
public enum Blank {
  /** All is shown. */
  NOTHING,
  /** Computed values are left to write; givens, relations and formulas are shown. */
  VALUES,
  /** Formulas too. */
  FORMULAS,
  /** Givens and relations too: only what is asked is shown. */
  ALL,
  /** The cell is not there. */
  CELL;

  /** The word for it in a lesson. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** What that word stands for. */
  public static Optional<Blank> named(String word) {
    return ByWord.find(values(), Blank::word, word);
  }
}
