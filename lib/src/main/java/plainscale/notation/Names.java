package plainscale.notation;

import java.util.Collection;
import java.util.List;

/** What the reader must know of the sheet to tell a unit from a quantity. */
public interface Names {

  /** Where nothing has a name, so that what follows a number is always its unit. */
  Names NONE =
      new Names() {
        @Override
        public boolean isQuantity(String name) {
          return false;
        }

        @Override
        public boolean isDefined(String name) {
          return false;
        }

        @Override
        public boolean isSameAsUnit(String name) {
          return false;
        }

        @Override
        public String meaning(String name) {
          return "a name";
        }

        @Override
        public Collection<String> all() {
          return List.of();
        }
      };

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
