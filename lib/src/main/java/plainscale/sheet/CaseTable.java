package plainscale.sheet;

import java.util.List;
import java.util.Optional;
import plainscale.algebra.Equation;
import plainscale.quantity.Shown;

/**
 * Cases side by side: a column for each, a row for each quantity and for each declared force, and
 * what holds of the forces in the cases. {@code changes} are the names that a case changes and what
 * they are there, as it was written.
 */
public record CaseTable(
    List<String> cases,
    List<Reworded> changes,
    List<Reworded> relations,
    List<Row> rows,
    List<Row> forces,
    List<Tie> ties,
    List<String> notes) {

  /** Keeps its own copies of the lists. */
  public CaseTable {
    cases = List.copyOf(cases);
    changes = List.copyOf(changes);
    relations = List.copyOf(relations);
    rows = List.copyOf(rows);
    forces = List.copyOf(forces);
    ties = List.copyOf(ties);
    notes = List.copyOf(notes);
  }

  /** A name or a relation as it is in one case only. */
  public record Reworded(String inCase, String name, Equation equation) {}

  /** A quantity in each case; an empty place has no value. */
  public record Row(Result.Label label, List<Optional<Shown>> values, Why why) {
    /** Keeps its own copy of the values. */
    public Row {
      values = List.copyOf(values);
    }
  }

  /** Why a row is as it is. */
  public enum Why {
    /** A case changes it. */
    CHANGED,
    /** It follows from what is changed. */
    DIFFERS,
    /** The same in all cases: it contains a change, which cancels. */
    CANCELS,
    /** The same in all cases: it contains no change. */
    NOT_CONTAINED
  }

  /**
   * Forces that are a pair, or look like one, with what was found in each case, and whether their
   * sizes are equal there.
   */
  public record Tie(List<Finding> found, List<Boolean> equal) {
    /** Keeps its own copies of the lists. */
    public Tie {
      found = List.copyOf(found);
      equal = List.copyOf(equal);
    }
  }
}
