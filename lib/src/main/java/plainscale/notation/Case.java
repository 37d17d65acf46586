package plainscale.notation;

import java.util.List;

/** One column of a comparison: its name and what it changes; without a change, the sheet itself. */
public record Case(Statement.Option name, List<Change> changes) {
  /** Keeps its own copy of the changes. */
  public Case {
    changes = List.copyOf(changes);
  }
}
