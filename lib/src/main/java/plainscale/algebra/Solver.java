package plainscale.algebra;

import java.util.List;

/** Derives an unknown from relations, step by step. */
public final class Solver {
  private Solver() {}

  /** The derivation of the unknown; the answer contains known names only. */
  public static Derivation solve(
      List<Relation> relations, String unknown, Known known, Budget budget) {
    return new Derivation(
        unknown, relations, List.of(), new Outcome.Bounded("There is no search yet."));
  }
}
