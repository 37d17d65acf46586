package plainscale.notation;

import java.util.List;
import java.util.Set;

/** The words that the notation keeps for itself. */
public final class Keywords {
  /** Words that begin a statement. */
  public static final List<String> STATEMENTS =
      List.of("given", "show", "say", "contrast", "constants");

  /** Words that follow a formula in a statement. */
  public static final Set<String> ENDS_FORMULA = Set.of("in", "to", "with");

  /** Words inside a statement. */
  public static final List<String> INNER =
      List.of("in", "to", "with", "figures", "words", "digits", "textbook", "codata");

  private Keywords() {}

  /** Whether a name must not be used for a quantity. */
  public static boolean isReserved(String name) {
    return STATEMENTS.contains(name)
        || ENDS_FORMULA.contains(name)
        || Functions.find(name).isPresent();
  }
}
