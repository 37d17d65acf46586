package plainscale.quantity;

import java.util.Comparator;
import java.util.List;

/**
 * What one source contributes to a combined uncertainty: its size in the coherent unit of the
 * result, and its share of the variance, which add up to 1 (JCGM 100:2008, 5.1.3 and H.1, table).
 */
public record Contribution(String source, double uncertainty, double share) {

  /** The contributions to a quantity's uncertainty, the largest first; none if it has none. */
  public static List<Contribution> of(Quantity quantity) {
    double combined = quantity.uncertainty().standard();
    if (combined == 0) {
      return List.of();
    }
    return quantity.uncertainty().derivatives().entrySet().stream()
        .map(
            entry -> {
              double part = Math.abs(entry.getValue()) * entry.getKey().standard();
              double ratio = part / combined;
              return new Contribution(entry.getKey().name(), part, ratio * ratio);
            })
        .filter(contribution -> contribution.uncertainty() > 0)
        .sorted(Comparator.comparingDouble(Contribution::uncertainty).reversed())
        .toList();
  }
}
