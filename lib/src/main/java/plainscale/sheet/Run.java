package plainscale.sheet;

import java.util.List;

/**
 * What running a cell gave: its results in order, mistakes among them, and the new results of
 * earlier cells that depend on what this cell changed.
 */
public record Run(List<Result> results, List<Update> updates, boolean fixed) {

  /** The new results of an earlier cell. */
  public record Update(String cellId, List<Result> results) {}

  /** The mistakes among the results. */
  public List<Result.Mistaken> mistakes() {
    return results.stream()
        .filter(Result.Mistaken.class::isInstance)
        .map(Result.Mistaken.class::cast)
        .toList();
  }

  /** Whether nothing is wrong. */
  public boolean ok() {
    return mistakes().isEmpty();
  }
}
