package plainscale.notation;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How much of the forces on a body is told and drawn. */
public enum ForcesEdition {
  /** Sizes, components, sum, and the diagram to scale. */
  WHOLE,
  /** The same and what would balance them, as a dashed hint. */
  MISSING,
  /** For students: which way they go, without sizes. */
  DIRECTIONS,
  /** For students: squared paper with a dot. */
  DOT;

  /** The word after “with”; none for the whole. */
  static List<String> words() {
    return Arrays.stream(values()).filter(e -> e != WHOLE).map(ForcesEdition::word).toList();
  }

  private String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  static Optional<ForcesEdition> of(String word) {
    return Arrays.stream(values()).filter(e -> e != WHOLE && e.word().equals(word)).findFirst();
  }

  /** Whether sizes may be seen. */
  public boolean isOpen() {
    return this == WHOLE || this == MISSING;
  }
}
