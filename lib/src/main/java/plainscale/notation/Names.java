package plainscale.notation;

import java.util.Collection;

/** What the reader must know of the sheet to tell a unit from a quantity. */
public interface Names {

  /** Whether this name stands for a quantity of the sheet or a constant of nature. */
  boolean isQuantity(String name);

  /** Whether the sheet itself defines the name; a constant of nature is none of these. */
  boolean isDefined(String name);

  /**
   * Whether the constant of this name and the unit of the same text mean the same amount (the
   * constant u, the unit u).
   */
  boolean isSameAsUnit(String name);

  /** What the name is, as in "a quantity of this sheet" or "a constant (Planck constant)". */
  String meaning(String name);

  /** All names, for the nearest one to a wrong name. */
  Collection<String> all();
}
