package plainscale.quantity;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What one source contributes to a combined uncertainty: its size in the coherent unit of the
 * result, and its share of the variance, which add up to 1 (JCGM 100:2008, 5.1.3 and H.1, table).
 * Sources of one name, such as readings that belong together, are one contribution.
 */
public record Contribution(String source, double uncertainty, double share) {

  /** The contributions to a quantity's uncertainty, the largest first; none if it has none. */
  public static List<Contribution> of(Quantity quantity) {
    double combined = quantity.uncertainty().standard();
    if (combined == 0) {
      return List.of();
    }
    Map<String, Double> squares = new LinkedHashMap<>();
    quantity
        .uncertainty()
        .derivatives()
        .forEach((source, d) -> squares.merge(source.name(), square(d, source), Double::sum));
    return squares.entrySet().stream()
        .map(
            entry -> {
              double part = Math.sqrt(entry.getValue());
              double ratio = part / combined;
              return new Contribution(entry.getKey(), part, ratio * ratio);
            })
        .filter(contribution -> contribution.uncertainty() > 0)
        .sorted(Comparator.comparingDouble(Contribution::uncertainty).reversed())
        .toList();
  }

  private static double square(double derivative, Source source) {
    return Math.pow(derivative * source.standard(), 2);
  }
}
