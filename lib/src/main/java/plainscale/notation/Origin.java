package plainscale.notation;

import java.util.Set;

/** The law behind a relation, and which of the relation's names are angles by that law. */
public record Origin(String law, Set<String> angles) {
  /** Keeps its own copy of the names. */
  public Origin {
    angles = Set.copyOf(angles);
  }
}
